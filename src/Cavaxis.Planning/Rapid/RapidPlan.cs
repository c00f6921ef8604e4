using Cavaxis.Planning.Configurations;
using Cavaxis.Planning.Plans;
using Cavaxis.Quantities;

namespace Cavaxis.Planning.Rapid;

/// <summary>The shortest plan that is possible with what is known.</summary>
/// <param name="Configuration">How patient and circuit are connected.</param>
/// <param name="Name">In words.</param>
/// <param name="NeededFlowLPerMin">Flow needed; the interval holds all bodies that the patient may have.</param>
/// <param name="FlowReason">Which need set it.</param>
/// <param name="CarriedFlowLPerMin">Flow that these cannulae carry within the usual pressure limits.</param>
/// <param name="InletPressureMmHg">Pressure at the pump inlet.</param>
/// <param name="ReturnPressureMmHg">Pressure after the membrane lung.</param>
/// <param name="PumpSpeedPerMin">Speed of the catalogue's pump; null when it cannot.</param>
/// <param name="SweepGasLPerMin">Sweep gas; null when the lung cannot.</param>
/// <param name="Cannulae">The cannulae.</param>
/// <param name="ProbabilityAllPortsInZone">Probability, in the middle body, that every port can be brought into its zone under imaging.</param>
/// <param name="Findings">Stops, warnings and cautions of the plan, gravest first.</param>
/// <param name="Alternatives">Other plans in a few words, in the order of the ranking.</param>
public sealed record RapidPlan(
    ConfigurationKind Configuration, string Name, Estimate NeededFlowLPerMin, string FlowReason, double CarriedFlowLPerMin, Estimate InletPressureMmHg, Estimate ReturnPressureMmHg,
    Estimate? PumpSpeedPerMin, Estimate? SweepGasLPerMin, IReadOnlyList<RapidCannula> Cannulae, double ProbabilityAllPortsInZone, IReadOnlyList<PlanFinding> Findings,
    IReadOnlyList<string> Alternatives)
{
    /// <summary>True when a finding forbids going ahead.</summary>
    public bool HasStop => Findings.Any(static finding => finding.Grade == Rules.FindingGrade.Stop);
}
