namespace Cavaxis.Course.Outcomes;

/// <summary>One case of a chart, in the order of time.</summary>
/// <param name="Risk">Expected risk of the event, 0 to 1, ends left out.</param>
/// <param name="Happened">True when it happened.</param>
public readonly record struct CusumCase(double Risk, bool Happened);
