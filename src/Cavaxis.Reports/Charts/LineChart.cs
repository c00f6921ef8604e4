using Cavaxis.Reports.Drawings;

namespace Cavaxis.Reports.Charts;

/// <summary>
/// A chart of lines, bands, thresholds and marked points. Immutable: every <c>With</c> gives a new chart. Series differ by
/// line style, marker and label at their end as well as by colour.
/// </summary>
public sealed record LineChart
{
    /// <summary>Starts an empty chart.</summary>
    /// <param name="title">Short name, printed above the chart.</param>
    /// <param name="description">What the chart shows, in words, for those who cannot see it.</param>
    /// <param name="x">Horizontal axis.</param>
    /// <param name="y">Vertical axis.</param>
    public LineChart(string title, string description, ChartAxis x, ChartAxis y)
    {
        ArgumentNullException.ThrowIfNull(title);
        ArgumentNullException.ThrowIfNull(description);
        ArgumentNullException.ThrowIfNull(x);
        ArgumentNullException.ThrowIfNull(y);
        (Title, Description, X, Y) = (title, description, x, y);
    }

    /// <summary>Short name.</summary>
    public string Title { get; }

    /// <summary>What the chart shows, in words.</summary>
    public string Description { get; }

    /// <summary>Horizontal axis.</summary>
    public ChartAxis X { get; }

    /// <summary>Vertical axis.</summary>
    public ChartAxis Y { get; }

    /// <summary>Width of the whole drawing, mm.</summary>
    public double WidthMm { get; init; } = 174;

    /// <summary>Height of the whole drawing, mm.</summary>
    public double HeightMm { get; init; } = 92;

    /// <summary>Lines.</summary>
    public IReadOnlyList<ChartSeries> Series { get; init; } = [];

    /// <summary>Bands.</summary>
    public IReadOnlyList<ChartBand> Bands { get; init; } = [];

    /// <summary>Threshold lines.</summary>
    public IReadOnlyList<Threshold> Thresholds { get; init; } = [];

    /// <summary>Marked points.</summary>
    public IReadOnlyList<OperatingPoint> Points { get; init; } = [];

    /// <summary>The chart with one more line.</summary>
    /// <param name="series">The line.</param>
    /// <returns>A new chart.</returns>
    public LineChart With(ChartSeries series) => this with { Series = [.. Series, series] };

    /// <summary>The chart with one more band.</summary>
    /// <param name="band">The band.</param>
    /// <returns>A new chart.</returns>
    public LineChart With(ChartBand band) => this with { Bands = [.. Bands, band] };

    /// <summary>The chart with one more threshold.</summary>
    /// <param name="threshold">The threshold.</param>
    /// <returns>A new chart.</returns>
    public LineChart With(Threshold threshold) => this with { Thresholds = [.. Thresholds, threshold] };

    /// <summary>The chart with one more marked point.</summary>
    /// <param name="point">The point.</param>
    /// <returns>A new chart.</returns>
    public LineChart With(OperatingPoint point) => this with { Points = [.. Points, point] };

    /// <summary>Draws the chart.</summary>
    /// <returns>The drawing.</returns>
    /// <exception cref="ArgumentException">
    /// There is nothing to draw, a number is not finite, a series is empty, a band has fewer than two places or its low edge
    /// above its high edge, or a value is not above zero on a logarithmic axis.
    /// </exception>
    public Drawing Build() => new LineChartPainter(this).Paint();
}
