namespace Cavaxis.Planning.Plans;

/// <summary>An input that the case does not give, and what was used instead.</summary>
/// <param name="Field">Field of the case file.</param>
/// <param name="UsedInstead">The assumption made, with its spread.</param>
/// <param name="Matters">What it changes.</param>
public sealed record MissingInput(string Field, string UsedInstead, string Matters);
