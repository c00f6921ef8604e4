using Cavaxis.Planning.Configurations;
using Cavaxis.Planning.Needs;
using Cavaxis.Planning.Rules;
using Cavaxis.Quantities;

namespace Cavaxis.Planning.Plans;

/// <summary>One complete way of cannulating this patient, computed and explained.</summary>
/// <param name="Rank">1 for the first of the list.</param>
/// <param name="Configuration">How patient and circuit are connected.</param>
/// <param name="Name">In words.</param>
/// <param name="Flow">Flow the plan is sized for and why.</param>
/// <param name="Cannulae">The cannulae.</param>
/// <param name="Circuit">Pressures, speed and sweep at that flow.</param>
/// <param name="GasExchange">Oxygen.</param>
/// <param name="ProbabilityAllPortsInZone">Probability that every port of every cannula can be brought into its zone, and ports far enough apart, under imaging.</param>
/// <param name="ProbabilityAllPortsInZoneBlind">The same when each cannula is simply advanced to its planned depth.</param>
/// <param name="Findings">Stops, warnings and cautions, gravest first.</param>
/// <param name="Criteria">The ranking table's row.</param>
/// <param name="Score">Weighted mean of the points, 0 to 1.</param>
/// <param name="OnParetoFront">True when no other plan without a stop is at least as good in every weighted criterion and better in one.</param>
/// <param name="Explanation">Why it stands where it stands, in sentences.</param>
public sealed record CannulationPlan(
    int Rank,
    ConfigurationKind Configuration,
    string Name,
    FlowNeed Flow,
    IReadOnlyList<PlacedCannula> Cannulae,
    CircuitPoint Circuit,
    GasExchangeOutlook GasExchange,
    double ProbabilityAllPortsInZone,
    double ProbabilityAllPortsInZoneBlind,
    IReadOnlyList<PlanFinding> Findings,
    IReadOnlyList<CriterionValue> Criteria,
    double Score,
    bool OnParetoFront,
    IReadOnlyList<string> Explanation)
{
    /// <summary>The plan on the model of the circulation; null where it was not asked for or cannot be computed.</summary>
    public CirculationOutlook? Circulation { get; init; }

    /// <summary>Why there is no such outlook; empty when there is one.</summary>
    public string CirculationNote { get; init; } = string.Empty;

    /// <summary>How wire and cannulae go in; null where that was not tried.</summary>
    public InsertionGlance? Insertion { get; init; }

    /// <summary>What the arterial tree says of it; null where that was not computed, or nothing returns to an artery.</summary>
    public ArterialGlance? Arteries { get; init; }

    /// <summary>True when a finding forbids going ahead.</summary>
    public bool HasStop => Findings.Any(finding => finding.Grade == FindingGrade.Stop);

    /// <summary>Arterial saturation to be told, %: of the computed circulation where there is one, else between the limits of recirculation.</summary>
    /// <returns>The saturation of the blood that reaches heart and brain first.</returns>
    public Estimate SaturationPercent() => Circulation?.RightArmSaturationPercent ?? GasExchange.ArterialSaturationPercent;

    /// <summary>Oxygen delivery over consumption to be told, from the same model as the saturation.</summary>
    /// <returns>The ratio.</returns>
    public Estimate DeliveryToConsumption() => Circulation?.DeliveryToConsumption ?? GasExchange.DeliveryToConsumption;

    /// <summary>How many findings of a grade the plan carries.</summary>
    /// <param name="grade">The grade.</param>
    /// <returns>The count.</returns>
    public int CountOf(FindingGrade grade) => Findings.Count(finding => finding.Grade == grade);
}
