using Cavaxis.Planning.Configurations;

namespace Cavaxis.Bedside.Fhir;

/// <summary>A cannula that goes into a bundle: described by numbers, generic.</summary>
/// <param name="Name">Name in the record, such as "drainage"; unique in the bundle.</param>
/// <param name="Role">What it does.</param>
/// <param name="OuterDiameterFrench">Size, French; null where unknown.</param>
/// <param name="Site">Where it enters, in words without a name, such as "right femoral vein"; null where unknown.</param>
/// <param name="DepthCm">Depth at the skin, cm; null where unknown.</param>
/// <param name="PlacedAt">When it was placed.</param>
/// <param name="RemovedAt">When it was taken out; null where it lies.</param>
public sealed record FhirCannula(
    string Name, CannulaRole Role, double? OuterDiameterFrench, string? Site, double? DepthCm, DateTimeOffset PlacedAt, DateTimeOffset? RemovedAt);
