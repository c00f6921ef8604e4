namespace Cavaxis.Planning.Running;

/// <summary>One number of the arterial tree before and after a change.</summary>
/// <param name="Words">What it is.</param>
/// <param name="Unit">Its unit.</param>
/// <param name="Before">Mean over the beat before.</param>
/// <param name="After">Mean over the beat after.</param>
public sealed record ArterialChangeRow(string Words, string Unit, double Before, double After);
