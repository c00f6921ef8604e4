using Cavaxis.Course.Observations;
using Cavaxis.Quantities;

namespace Cavaxis.Bedside.Fhir;

/// <summary>The LOINC code of a quantity.</summary>
/// <param name="Quantity">Which quantity.</param>
/// <param name="Code">The code.</param>
/// <param name="Display">What it means.</param>
/// <param name="Certainty">Seen where the code stands in the lists of FHIR R4's own package; from memory where no list could be opened.</param>
/// <param name="IsVitalSign">True where FHIR R4 holds it for a vital sign.</param>
/// <param name="Profile">Profile of FHIR R4 that it must follow; null for none.</param>
public sealed record LoincCode(ObservedQuantity Quantity, string Code, string Display, Certainty Certainty, bool IsVitalSign = false, string? Profile = null);
