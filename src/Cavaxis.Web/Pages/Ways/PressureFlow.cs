using System.Globalization;
using Cavaxis.Planning.Plans;
using Cavaxis.Planning.Rules;

namespace Cavaxis.Web.Pages.Ways;

/// <summary>Lays out the pressure-flow chart of a plan from the points that the plan carries.</summary>
internal sealed class PressureFlow
{
    /// <summary>Width of the picture.</summary>
    public const double Width = 460;

    /// <summary>Height of the picture.</summary>
    public const double Height = 280;

    private const double Left = 58;
    private const double Right = 16;
    private const double Top = 14;
    private const double Bottom = 44;
    private readonly double mostFlow;
    private readonly double low;
    private readonly double high;
    private readonly CircuitPoint circuit;

    /// <summary>Lays the chart out.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="rules">Limits.</param>
    public PressureFlow(CannulationPlan plan, RuleBook rules)
    {
        circuit = plan.Circuit;
        InletLimit = rules[LimitName.InletPressureMmHg];
        ReturnLimit = rules[LimitName.ReturnPressureMmHg];
        mostFlow = circuit.PressureFlow.Max(static p => p.FlowLPerMin);

        // Beyond the limits the curves say nothing that anyone may use; a little more is shown so that the crossing is seen.
        low = Math.Floor(Math.Min(InletLimit, circuit.InletPressureMmHg.Low) * 1.25 / 50) * 50;
        high = Math.Ceiling(Math.Max(ReturnLimit, circuit.ReturnPressureMmHg.High) * 1.15 / 50) * 50;
    }

    /// <summary>Limit of the pressure before the pump, mmHg.</summary>
    public double InletLimit { get; }

    /// <summary>Limit of the pressure after the lung, mmHg.</summary>
    public double ReturnLimit { get; }

    /// <summary>Left edge of the plot.</summary>
    public static double PlotLeft => Left;

    /// <summary>Right edge of the plot.</summary>
    public static double PlotRight => Width - Right;

    /// <summary>Upper edge of the plot.</summary>
    public static double PlotTop => Top;

    /// <summary>Lower edge of the plot.</summary>
    public static double PlotBottom => Height - Bottom;

    /// <summary>Pressure before the pump.</summary>
    public string Inlet => Path(static p => p.InletPressureMmHg);

    /// <summary>Pressure after the lung.</summary>
    public string Return => Path(static p => p.ReturnPressureMmHg);

    /// <summary>Flows on the axis.</summary>
    public IEnumerable<double> FlowTicks => Enumerable.Range(0, (int)mostFlow + 1).Where(f => mostFlow <= 4 || f % 2 == 0).Select(static f => (double)f);

    /// <summary>Pressures on the axis.</summary>
    public IEnumerable<double> PressureTicks
    {
        get
        {
            double step = high - low > 400 ? 100 : 50;
            return Enumerable.Range((int)Math.Ceiling(low / step), (int)Math.Floor((high - low) / step) + 1).Select(i => i * step).Where(p => p <= high);
        }
    }

    /// <summary>Place of a flow.</summary>
    public double X(double flow) => Left + (flow / mostFlow * (Width - Left - Right));

    /// <summary>Place of a pressure.</summary>
    public double Y(double pressure) => Height - Bottom - ((Math.Clamp(pressure, low, high) - low) / (high - low) * (Height - Top - Bottom));

    /// <summary>A number for an attribute.</summary>
    public static string N(double value) => value.ToString("0.#", CultureInfo.InvariantCulture);

    private string Path(Func<PressureFlowPoint, double> pressure) => "M " + string.Join(" L ", circuit.PressureFlow
        .Where(p => pressure(p) >= low && pressure(p) <= high)
        .Select(p => $"{N(X(p.FlowLPerMin))} {N(Y(pressure(p)))}"));
}
