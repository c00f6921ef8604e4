using Cavaxis.Planning.Plans;
using Cavaxis.Planning.Rules;
using Cavaxis.Reports.Charts;
using Cavaxis.Reports.Drawings;

namespace Cavaxis.Reports.PlanReports;

/// <summary>The pressure-flow chart of a plan with its operating point and limits.</summary>
public static class PressureChart
{
    /// <summary>Draws the chart.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="rules">The rule book, for the limits.</param>
    /// <returns>The drawing.</returns>
    public static Drawing Of(CannulationPlan plan, RuleBook rules)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(rules);
        CircuitPoint circuit = plan.Circuit;
        return new LineChart("Pressure over flow", Words(plan), new ChartAxis("Pump flow", "L/min", Low: 0), new ChartAxis("Pressure", "mmHg"))
            .With(new ChartSeries("before the pump", [.. circuit.PressureFlow.Select(p => new ChartPoint(p.FlowLPerMin, p.InletPressureMmHg))]))
            .With(new ChartSeries("after the lung", [.. circuit.PressureFlow.Select(p => new ChartPoint(p.FlowLPerMin, p.ReturnPressureMmHg))]))
            .With(new Threshold("usual inlet limit", rules[LimitName.InletPressureMmHg], ThresholdKind.Limit))
            .With(new Threshold("usual return limit", rules[LimitName.ReturnPressureMmHg], ThresholdKind.Limit))
            .With(new Threshold("flow needed", plan.Flow.FlowLPerMin.Value, ThresholdKind.Target, OnX: true))
            .With(new OperatingPoint(
                "inlet", circuit.FlowLPerMin, circuit.InletPressureMmHg.Value, YLow: circuit.InletPressureMmHg.Low, YHigh: circuit.InletPressureMmHg.High))
            .With(new OperatingPoint(
                "return", circuit.FlowLPerMin, circuit.ReturnPressureMmHg.Value, YLow: circuit.ReturnPressureMmHg.Low, YHigh: circuit.ReturnPressureMmHg.High))
            .Build();
    }

    /// <summary>The chart in words.</summary>
    /// <param name="plan">The plan.</param>
    /// <returns>One sentence.</returns>
    public static string Words(CannulationPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        CircuitPoint circuit = plan.Circuit;
        return FormattableString.Invariant(
            $"Calculated pressures over pump flow with this patient's blood. At {circuit.FlowLPerMin:F1} L/min {circuit.InletPressureMmHg.Value:F0} mmHg ({circuit.InletPressureMmHg.Low:F0} to {circuit.InletPressureMmHg.High:F0}) before the pump and {circuit.ReturnPressureMmHg.Value:F0} mmHg ({circuit.ReturnPressureMmHg.Low:F0} to {circuit.ReturnPressureMmHg.High:F0}) after the lung.");
    }
}
