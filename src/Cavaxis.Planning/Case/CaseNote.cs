namespace Cavaxis.Planning.Case;

/// <summary>Something in a case that a person should look at again, though it can be true.</summary>
/// <param name="Field">Path of the field, such as <c>blood.arterialSaturationPercent</c>.</param>
/// <param name="Text">What is odd, with the numbers, and what to look at.</param>
public sealed record CaseNote(string Field, string Text);
