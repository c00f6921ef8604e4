using Cavaxis.Anatomy.Body;

namespace Cavaxis.Bedside.Fhir;

/// <summary>What a bundle is made of: a plain record, whatever it was gathered from.</summary>
/// <param name="BundleId">Chance, new for each bundle: all identifiers in it are derived from this and from nothing of the patient.</param>
/// <param name="MadeAt">When it is made.</param>
/// <param name="LocalId">The patient's identifier in the record; null for a de-identified bundle, in which times are moved so that support starts at <see cref="FhirBundle.MovedStart"/>.</param>
/// <param name="SupportStart">Start of support.</param>
/// <param name="Sex">Sex; null where it is not told.</param>
/// <param name="Cannulae">Cannulae.</param>
/// <param name="Readings">Readings.</param>
public sealed record FhirRecord(
    Guid BundleId, DateTimeOffset MadeAt, string? LocalId, DateTimeOffset SupportStart, Sex? Sex, IReadOnlyList<FhirCannula> Cannulae, IReadOnlyList<FhirReading> Readings);
