namespace Cavaxis.Reports.Charts;

/// <summary>Collects and checks all values that an axis must cover.</summary>
internal static class ChartValues
{
    /// <summary>Values along the horizontal axis.</summary>
    internal static IEnumerable<double> OfX(LineChart chart) =>
    [
        .. chart.Series.SelectMany(s => s.Points.Select(p => p.X)),
        .. chart.Bands.SelectMany(b => b.Points.Select(p => p.X)),
        .. chart.Thresholds.Where(t => t.OnX).Select(t => t.Value),
        .. chart.Points.SelectMany(p => Present(p.X, p.XLow, p.XHigh)),
        .. Present(chart.X.Low, chart.X.High),
    ];

    /// <summary>Values along the vertical axis.</summary>
    internal static IEnumerable<double> OfY(LineChart chart) =>
    [
        .. chart.Series.SelectMany(s => s.Points.Select(p => p.Y)),
        .. chart.Bands.SelectMany(b => b.Points.SelectMany(p => Present(p.Low, p.High))),
        .. chart.Thresholds.Where(t => !t.OnX).Select(t => t.Value),
        .. chart.Points.SelectMany(p => Present(p.Y, p.YLow, p.YHigh)),
        .. Present(chart.Y.Low, chart.Y.High),
    ];

    /// <summary>Ticks that cover checked values.</summary>
    /// <param name="axis">The axis.</param>
    /// <param name="values">All its values.</param>
    /// <param name="wanted">About how many ticks.</param>
    /// <returns>The ticks.</returns>
    /// <exception cref="ArgumentException">No value, one not finite, or one not above zero on a logarithmic axis.</exception>
    internal static Ticks TicksFor(ChartAxis axis, IEnumerable<double> values, int wanted)
    {
        double[] all = [.. values];
        if (all.Length == 0)
        {
            throw new ArgumentException($"The chart has no value along {axis.Name}.");
        }

        if (Array.Exists(all, v => !double.IsFinite(v)))
        {
            throw new ArgumentException($"A value along {axis.Name} is not finite.");
        }

        bool logarithmic = axis.Scale == ChartScale.Logarithmic;
        return logarithmic && Array.Exists(all, v => v <= 0)
            ? throw new ArgumentException($"A value along {axis.Name} is not above zero, but its scale is logarithmic.")
            : logarithmic ? Ticks.Logarithmic(all.Min(), all.Max()) : Ticks.Linear(all.Min(), all.Max(), wanted);
    }

    /// <summary>Checks what the ticks cannot see.</summary>
    /// <param name="chart">The chart.</param>
    /// <exception cref="ArgumentException">An empty series, a band too short or turned round.</exception>
    internal static void Check(LineChart chart)
    {
        foreach (ChartSeries series in chart.Series.Where(s => s.Points.Count == 0))
        {
            throw new ArgumentException($"The series {series.Name} is empty.");
        }

        foreach (ChartBand band in chart.Bands.Where(b => b.Points.Count < 2 || b.Points.Any(p => p.Low > p.High)))
        {
            throw new ArgumentException($"The band {band.Name} needs two places with the low edge below the high edge.");
        }
    }

    private static IEnumerable<double> Present(params double?[] values) => values.OfType<double>();
}
