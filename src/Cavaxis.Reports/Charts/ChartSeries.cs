namespace Cavaxis.Reports.Charts;

/// <summary>A line in a chart.</summary>
/// <param name="Name">The words at its end.</param>
/// <param name="Points">At least one point; joined in the order given.</param>
/// <param name="Markers">Whether each point carries a marker; for measured points rather than a calculated curve.</param>
/// <param name="Joined">Whether the points are joined by a line; otherwise they always carry markers.</param>
public sealed record ChartSeries(string Name, IReadOnlyList<ChartPoint> Points, bool Markers = false, bool Joined = true);
