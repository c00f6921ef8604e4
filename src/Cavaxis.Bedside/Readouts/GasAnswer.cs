namespace Cavaxis.Bedside.Readouts;

/// <summary>Something computed from the last readings, or why it cannot be told.</summary>
/// <param name="What">What.</param>
/// <param name="Words">The number with unit, interval and origin, or that it cannot be told and why.</param>
/// <param name="IsTold">True where there is a number.</param>
public sealed record GasAnswer(string What, string Words, bool IsTold);
