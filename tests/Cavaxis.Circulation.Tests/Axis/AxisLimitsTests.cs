using Cavaxis.Circulation.Axis;
using Cavaxis.Circulation.Equations;
using Cavaxis.Circulation.Lanes;
using Cavaxis.Circulation.Parameters;
using static Cavaxis.Circulation.Parameters.CirculationParameter;

namespace Cavaxis.Circulation.Tests.Axis;

public class AxisLimitsTests
{
    private const double Support = 60;
    private const double Output = 90;

    private static readonly double[] Vestibule = [0, 0, 0, 0, 1, 0, 0, 0, 0, 0];

    [Fact]
    public void Drain_and_return_in_one_part_give_support_over_support_plus_output()
    {
        double[] mark = Steady(Vestibule, Vestibule, 0, 0, 0, 1);
        Assert.Equal(Support / (Support + Output), mark[4], 1e-6);
    }

    [Fact]
    public void Return_beyond_the_way_to_the_valve_never_recirculates_without_exchange()
    {
        double[] drain = [0, 0, 0, 0, 0, 0.4, 0.3, 0.3, 0, 0];
        Assert.Equal(0, Drained(drain, Steady(drain, Vestibule, 0, 0, 0, 1)));
    }

    [Fact]
    public void The_mark_and_the_contents_tell_the_same_recirculation()
    {
        double[] drain = [0, 0.2, 0, 0.3, 0, 0.2, 0.3, 0, 0, 0];
        double[] back = [0, 0, 0.4, 0.4, 0.2, 0, 0, 0, 0, 0];
        double mark = Drained(drain, Steady(drain, back, 3, 10, 0, 1));
        double content = (Drained(drain, Steady(drain, back, 3, 10, 12, 20)) - 12) / (20 - 12);
        Assert.InRange(mark, 0.05, 0.95);
        Assert.Equal(mark, content, 1e-6);
    }

    [Fact]
    public void What_returns_leaves_by_the_drain_or_by_the_valve()
    {
        double[] drain = [0, 0.2, 0, 0.3, 0, 0.2, 0.3, 0, 0, 0];
        double[] mark = Steady(drain, [0, 0, 0.4, 0.4, 0.2, 0, 0, 0, 0, 0], 3, 10, 0, 1);
        Assert.Equal(Support, (Support * Drained(drain, mark)) + (Output * mark[4]), 1e-5);
    }

    private static double Drained(double[] drain, double[] content) => drain.Zip(content, static (d, c) => d * c).Sum();

    /// <summary>Ten contents at rest, at steady flows; native blood holds one content and returned blood another.</summary>
    private static double[] Steady(double[] drain, double[] back, double caval, double atrial, double native, double returned)
    {
        CirculationParameters set = CirculationParameters.Adult.With(
            (CavalMixingMlPerS, caval), (AtrialMixingMlPerS, atrial), (JetMixing, 0)).With(new AxisPorts(drain, back));
        FlowField<OneLane> f = new();
        for (int i = 0; i < AxisPorts.CellCount; i++)
        {
            f.Drained[i] = Of(Support * drain[i]);
            f.ReturnedTo[i] = Of(Support * back[i]);
        }

        double Net(int i) => Support * (back[i] - drain[i]);
        f.UpperVenousFlow = Of(30);
        f.HepaticFlow = Of(25);
        f.LowerVenousFlow = Of(30);
        f.CoronaryFlow = Of(5);
        f.VenousReturnFlow = Of(Support);
        f.SuperiorCavaFlow = Of(30 + Net(0) + Net(1));
        f.DiaphragmFlow = Of(55 + Net(7) + Net(8) + Net(9));
        f.ThoracicCavaFlow = Of(55 + Net(6) + Net(7) + Net(8) + Net(9));
        AxisTransport<OneLane> axis = new(new ModelConstants<OneLane>([set]));
        axis.SetFlows(f, Of(Output));
        OneLane[] c = [.. Enumerable.Repeat(Of(native), AxisPorts.CellCount)];
        OneLane[] rates = new OneLane[AxisPorts.CellCount];
        OneLane blood = Of(native);
        for (int step = 0; step < 50_000; step++)
        {
            axis.Rates(f, c, blood, blood, blood, blood, blood, Of(returned), rates);
            for (int i = 0; i < c.Length; i++)
            {
                double leaving = i == (int)AxisCell.Vestibule ? Output * c[i].Value : 0;
                c[i] = Of(c[i].Value + (0.002 * (rates[i].Value - leaving)));
            }
        }

        return [.. c.Select(static v => v.Value)];
    }

    private static OneLane Of(double value) => new(value);
}
