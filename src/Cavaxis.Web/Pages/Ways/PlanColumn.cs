using System.Globalization;
using Cavaxis.Planning.Plans;
using Cavaxis.Planning.Rules;
using Cavaxis.Quantities;

namespace Cavaxis.Web.Pages.Ways;

/// <summary>What stands in one column of the comparison.</summary>
/// <param name="plan">The plan.</param>
/// <param name="rules">Limits.</param>
internal sealed class PlanColumn(CannulationPlan plan, RuleBook rules)
{
    /// <summary>Rows of the table: heading, key of the explanation, and text for a plan.</summary>
    public static IReadOnlyList<(string Heading, string? Term, Func<PlanColumn, string> Text)> Rows { get; } =
    [
        ("Flow", "flow", static c => c.Flow),
        ("Pressure before the pump", "inlet-pressure", static c => c.Inlet),
        ("Pressure after the lung", "return-pressure", static c => c.Return),
        ("Arterial saturation", "saturation", static c => c.Saturation),
        ("Recirculation", "recirculation", static c => c.Recirculation),
        ("Oxygen delivery over consumption", "delivery", static c => c.Delivery),
        ("Every port in its zone", "fit", static c => c.Fit),
        ("Score", "score", static c => c.Score),
        ("Against the others", null, static c => c.Front),
    ];

    /// <summary>The cannulae, one sentence each.</summary>
    public IEnumerable<string> Cannulae => plan.Cannulae.Select(static c =>
        FormattableString.Invariant($"{c.OuterDiameterFrench:F0} Fr {PlainWords.Role(c.Role)}, {PlainWords.Vessel(c.Route, c.Side)}")
        + (c.Fit is null ? string.Empty : FormattableString.Invariant($", to {c.Fit.PlannedDepthCm.Value:F1} cm ({c.Fit.PlannedDepthCm.Low:F1} to {c.Fit.PlannedDepthCm.High:F1})")));

    private string Flow => string.Create(CultureInfo.InvariantCulture, $"{plan.Circuit.FlowLPerMin:F1} L/min, calculated; needed {plan.Flow.FlowLPerMin.Value:F1} ({plan.Flow.FlowLPerMin.Low:F1} to {plan.Flow.FlowLPerMin.High:F1})");

    private string Inlet => Told(plan.Circuit.InletPressureMmHg, "F0", "mmHg")
        + FormattableString.Invariant($"; limit {rules[LimitName.InletPressureMmHg]:F0}, {Beyond(plan.Circuit.InletMarginMmHg)}");

    private string Return => Told(plan.Circuit.ReturnPressureMmHg, "F0", "mmHg")
        + FormattableString.Invariant($"; limit {rules[LimitName.ReturnPressureMmHg]:F0}, {Beyond(plan.Circuit.ReturnMarginMmHg)}");

    private string Saturation => Told(plan.SaturationPercent(), "F0", "%");

    private string Recirculation => plan.Circulation is { } outlook
        ? outlook.RecirculationPercent is Estimate share ? Told(share, "F0", "%") : "none: no return to a vein"
        : string.Create(CultureInfo.InvariantCulture, $"between {plan.GasExchange.RecirculationFractionBounds.Low * 100:F0} and {plan.GasExchange.RecirculationFractionBounds.High * 100:F0} %; bounds, calculated");

    private string Delivery => Told(plan.DeliveryToConsumption(), "F1", "times");

    private string Fit => string.Create(CultureInfo.InvariantCulture, $"{plan.ProbabilityAllPortsInZone * 100:F0} % under imaging, {plan.ProbabilityAllPortsInZoneBlind * 100:F0} % by depth alone; calculated");

    private string Score => string.Create(CultureInfo.InvariantCulture, $"{plan.Score:F2} of 1, calculated");

    private string Front => plan.OnParetoFront ? "no other plan is as good in everything" : plan.HasStop ? "not compared: it carries a stop" : "another plan is at least as good in everything that counts";

    private static string Beyond(double marginMmHg) => FormattableString.Invariant($"{Math.Abs(marginMmHg):F0} {(marginMmHg >= 0 ? "within" : "beyond")} it");

    private static string Told(Estimate e, string format, string unit) => string.Create(CultureInfo.InvariantCulture,
        $"{e.Value.ToString(format, CultureInfo.InvariantCulture)} {unit} ({e.Low.ToString(format, CultureInfo.InvariantCulture)} to {e.High.ToString(format, CultureInfo.InvariantCulture)}), {Cavaxis.Planning.Json.JsonName.Of(e.Origin.ToString())}");
}
