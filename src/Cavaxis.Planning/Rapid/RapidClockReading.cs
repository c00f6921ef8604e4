namespace Cavaxis.Planning.Rapid;

/// <summary>What the clock says, in words; "unknown" where it was not given.</summary>
/// <param name="NoFlow">From collapse to the first compressions.</param>
/// <param name="CompressionsSoFar">Compressions so far.</param>
/// <param name="LowFlow">From the first compressions to support flow.</param>
/// <param name="NextLimits">Limits on low flow that lie ahead, with the minutes left, soonest first.</param>
/// <param name="PassedLimits">Limits that have gone by.</param>
public sealed record RapidClockReading(string NoFlow, string CompressionsSoFar, string LowFlow, IReadOnlyList<string> NextLimits, IReadOnlyList<string> PassedLimits);
