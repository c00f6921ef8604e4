using Cavaxis.Reports.Drawings;

namespace Cavaxis.Reports.Charts;

/// <summary>Carries values of the two axes to places on the paper.</summary>
/// <param name="Area">Where the values lie, mm.</param>
/// <param name="XTicks">Horizontal ticks.</param>
/// <param name="YTicks">Vertical ticks.</param>
/// <param name="XScale">Horizontal scale.</param>
/// <param name="YScale">Vertical scale.</param>
internal sealed record PlotFrame(Box Area, Ticks XTicks, Ticks YTicks, ChartScale XScale, ChartScale YScale)
{
    /// <summary>Place of a horizontal value, mm from the left.</summary>
    internal double AtX(double x) => Area.Left + (Area.Width * Fraction(x, XTicks, XScale));

    /// <summary>Place of a vertical value, mm from the top.</summary>
    internal double AtY(double y) => Area.Bottom - (Area.Height * Fraction(y, YTicks, YScale));

    /// <summary>Place of a pair of values.</summary>
    internal Point At(double x, double y) => new(AtX(x), AtY(y));

    private static double Fraction(double value, Ticks ticks, ChartScale scale) => scale == ChartScale.Logarithmic
        ? Math.Log(value / ticks.Low) / Math.Log(ticks.High / ticks.Low)
        : (value - ticks.Low) / (ticks.High - ticks.Low);
}
