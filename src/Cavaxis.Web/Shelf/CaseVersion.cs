namespace Cavaxis.Web.Shelf;

/// <summary>One saved version of a case. Nothing on the shelf is overwritten: each saved value makes a version.</summary>
/// <param name="Id">Identifier of the patient.</param>
/// <param name="Number">1 for the first version, one more for each that follows.</param>
/// <param name="SavedAt">When it was saved.</param>
/// <param name="Change">What was changed, in words; such as "blood.haemoglobinGPerDl".</param>
/// <param name="Json">The case as text. It is a JSON object; its values may still have faults.</param>
public sealed record CaseVersion(string Id, long Number, DateTimeOffset SavedAt, string Change, string Json);
