namespace Cavaxis.Reports.Charts;

/// <summary>A hatched band of uncertainty.</summary>
/// <param name="Name">The words at its end, such as "9 of 10 courses".</param>
/// <param name="Points">At least two places, in ascending order of X.</param>
public sealed record ChartBand(string Name, IReadOnlyList<BandPoint> Points);
