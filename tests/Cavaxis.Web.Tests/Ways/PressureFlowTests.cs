using System.Globalization;
using Cavaxis.Planning.Plans;
using Cavaxis.Planning.Rules;
using Cavaxis.Web.Pages.Ways;

namespace Cavaxis.Web.Tests.Ways;

public class PressureFlowTests
{
    public static TheoryData<int> Ranks => [.. PlannedCase.Result.Plans.Select(static p => p.Rank)];

    [Theory]
    [MemberData(nameof(Ranks))]
    public void The_operating_point_lies_on_the_curves_and_inside_the_plot(int rank)
    {
        CannulationPlan plan = PlannedCase.Result.Plans[rank - 1];
        PressureFlow chart = new(plan, RuleBookReader.BuiltIn);
        double x = chart.X(plan.Circuit.FlowLPerMin);
        Assert.InRange(x, PressureFlow.PlotLeft, PressureFlow.PlotRight);
        foreach ((string path, double pressure) in new[] { (chart.Inlet, plan.Circuit.InletPressureMmHg.Value), (chart.Return, plan.Circuit.ReturnPressureMmHg.Value) })
        {
            double y = chart.Y(pressure);
            Assert.InRange(y, PressureFlow.PlotTop, PressureFlow.PlotBottom);
            Assert.Equal(y, At(path, x), 3.0);
        }
    }

    [Theory]
    [MemberData(nameof(Ranks))]
    public void More_flow_costs_more_suction_and_more_pressure_and_both_limits_are_in_the_picture(int rank)
    {
        CannulationPlan plan = PlannedCase.Result.Plans[rank - 1];
        PressureFlow chart = new(plan, RuleBookReader.BuiltIn);
        AssertOrdered(Points(chart.Inlet).Select(static p => p.Y));
        AssertOrdered(Points(chart.Return).Select(static p => -p.Y));
        Assert.InRange(chart.Y(chart.InletLimit), PressureFlow.PlotTop + 1, PressureFlow.PlotBottom - 1);
        Assert.InRange(chart.Y(chart.ReturnLimit), PressureFlow.PlotTop + 1, PressureFlow.PlotBottom - 1);
        Assert.All(chart.PressureTicks, tick => Assert.InRange(chart.Y(tick), PressureFlow.PlotTop - 0.01, PressureFlow.PlotBottom + 0.01));
        Assert.True(chart.PressureTicks.Count() is >= 3 and <= 14);
        Assert.Contains(0.0, chart.FlowTicks);
    }

    private static void AssertOrdered(IEnumerable<double> values) => Assert.Equal(values.Order(), values);

    private static (double X, double Y)[] Points(string path) =>
        [.. path[2..].Split(" L ").Select(static p => p.Split(' ')).Select(static p => (double.Parse(p[0], CultureInfo.InvariantCulture), double.Parse(p[1], CultureInfo.InvariantCulture)))];

    private static double At(string path, double x)
    {
        (double X, double Y)[] points = Points(path);
        int after = Math.Clamp(Array.FindIndex(points, p => p.X >= x), 1, points.Length - 1);
        ((double x0, double y0), (double x1, double y1)) = (points[after - 1], points[after]);
        return y0 + ((y1 - y0) * (x - x0) / (x1 - x0));
    }
}
