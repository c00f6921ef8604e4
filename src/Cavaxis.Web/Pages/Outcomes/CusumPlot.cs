using System.Globalization;
using System.Text;
using Cavaxis.Course.Outcomes;

namespace Cavaxis.Web.Pages.Outcomes;

/// <summary>Places of a cumulative-sum chart on the screen: cases to the right, the sum upward, both to scale.</summary>
internal sealed class CusumPlot
{
    public const double Width = 720;
    public const double Height = 300;
    public const double PlotLeft = 52;
    public const double PlotRight = 708;
    public const double PlotTop = 14;
    public const double PlotBottom = 244;

    private readonly CusumChart chart;
    private readonly double top;

    /// <summary>Of a chart with at least one point.</summary>
    public CusumPlot(CusumChart chart)
    {
        this.chart = chart;
        top = Math.Max(chart.Setting.Limit, chart.Points.Max(static p => p.Score)) * 1.15;
        (ScoreTicks, CaseTicks) = (Ticks(top, 5), Ticks(chart.Points.Count, 8));
    }

    /// <summary>Sums that are marked at the side.</summary>
    public IReadOnlyList<double> ScoreTicks { get; }

    /// <summary>Cases that are marked at the foot.</summary>
    public IReadOnlyList<double> CaseTicks { get; }

    /// <summary>The line from case to case; after a signal it starts anew from 0.</summary>
    public string Line
    {
        get
        {
            StringBuilder path = new($"M {N(X(0))} {N(Y(0))}");
            foreach (CusumPoint point in chart.Points)
            {
                path.Append(CultureInfo.InvariantCulture, $" L {N(X(point.Index))} {N(Y(point.Score))}");
                if (point.Signalled)
                {
                    path.Append(CultureInfo.InvariantCulture, $" M {N(X(point.Index))} {N(Y(0))}");
                }
            }

            return path.ToString();
        }
    }

    /// <summary>The chart in words, for whoever does not see it.</summary>
    public string Words => string.Create(CultureInfo.InvariantCulture,
        $"Cumulative sum over {chart.Points.Count} cases: highest {chart.Points.Max(static p => p.Score):0.0}, last {chart.Points[^1].Score:0.0}, control limit {chart.Setting.Limit:0.0}; {Signals(chart)}.");

    /// <summary>Signals in words.</summary>
    public static string Signals(CusumChart chart) => chart.Points.Where(static p => p.Signalled).Select(static p => p.Index.ToString(CultureInfo.InvariantCulture)).ToArray() switch
    {
        [] => "no signal",
        [string one] => $"a signal at case {one}",
        string[] many => $"signals at cases {string.Join(", ", many)}",
    };

    /// <summary>Place of a case.</summary>
    public double X(double index) => PlotLeft + ((PlotRight - PlotLeft) * index / chart.Points.Count);

    /// <summary>Place of a sum.</summary>
    public double Y(double score) => PlotBottom - ((PlotBottom - PlotTop) * score / top);

    /// <summary>A number as SVG takes it.</summary>
    public static string N(double value) => value.ToString("0.##", CultureInfo.InvariantCulture);

    private static double[] Ticks(double end, int most)
    {
        double step = new[] { 1.0, 2, 5, 10, 20, 50, 100, 200, 500, 1000, 2000, 5000, 10_000, 20_000, 50_000, 100_000 }.First(s => end / s <= most || s == 100_000);
        return [.. Enumerable.Range(0, (int)(end / step) + 1).Select(i => i * step)];
    }
}
