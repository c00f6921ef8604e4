using Cavaxis.Anatomy.Body;
using Cavaxis.Devices.Catalogue;
using Cavaxis.Planning.Case;
using Cavaxis.Planning.Plans;
using Cavaxis.Planning.Rules;
using Cavaxis.Planning.Search;
using Cavaxis.Quantities;

namespace Cavaxis.Planning.Rapid;

/// <summary>
/// The planner with few anatomies, few configurations and without the circulation. The plan is found for the middle body; the same devices
/// are planned again in the small and the large body that the patient may have, and the intervals hold all three.
/// </summary>
/// <param name="catalogue">Devices.</param>
/// <param name="rules">The rule book.</param>
internal sealed class RapidPlanner(DeviceCatalogue catalogue, RuleBook rules)
{
    /// <summary>Anatomies of each body. Nine tenths of 400 leave an interval's ends to twenty anatomies each.</summary>
    public const int Anatomies = 400;

    private const double IntervalToSd = 2 * Estimate.NormalQuantile95;

    /// <summary>Plans.</summary>
    /// <param name="input">What is known.</param>
    /// <param name="body">The size.</param>
    /// <param name="leading">The situation that says what support is for.</param>
    /// <returns>The plan, or null, with what the planner says beside it.</returns>
    public (RapidPlan? Plan, PlanningResult Middle) Of(RapidInput input, RapidBody body, SituationRule leading)
    {
        PlanningOptions options = new() { Anatomies = Anatomies, Seed = input.Seed, PlansPerConfiguration = 1, Configurations = leading.Configurations, Brief = true };
        PlanningResult middle = Planner.Plan(CaseOf(input, body.Middle, leading, []), catalogue, rules, options);
        if (middle.Plans.Count == 0)
        {
            return (null, middle);
        }

        CannulationPlan best = middle.Plans[0];
        PlanningOptions same = options with { Configurations = [best.Configuration] };
        string[] devices = [.. best.Cannulae.Select(static c => c.DeviceId).Distinct(StringComparer.Ordinal)];
        CannulationPlan[] all = [best, .. new[] { body.Small, body.Large }.SelectMany(other => Planner.Plan(CaseOf(input, other, leading, devices), catalogue, rules, same).Plans.Take(1))];
        return (new RapidPlan(
            best.Configuration,
            best.Name,
            Over(best.Flow.FlowLPerMin, all.Select(static p => p.Flow.FlowLPerMin)),
            best.Flow.Reason,
            best.Circuit.FlowLPerMin,
            Over(best.Circuit.InletPressureMmHg, all.Select(static p => p.Circuit.InletPressureMmHg)),
            Over(best.Circuit.ReturnPressureMmHg, all.Select(static p => p.Circuit.ReturnPressureMmHg)),
            best.Circuit.PumpSpeedPerMin,
            best.Circuit.SweepGasLPerMin,
            [.. best.Cannulae.Select(cannula => Cannula(cannula, all, input.Vessels))],
            best.ProbabilityAllPortsInZone,
            best.Findings,
            [.. middle.Plans.Skip(1).Select(static p => $"{p.Name}: {string.Join(", ", p.Cannulae.Select(static c => FormattableString.Invariant($"{c.OuterDiameterFrench:0.#} Fr {PlainWords.Role(c.Role)}")))}{(p.HasStop ? " (carries a hard stop)" : string.Empty)}")]), middle);
    }

    private static RapidCannula Cannula(PlacedCannula cannula, CannulationPlan[] all, IReadOnlyList<VesselEntry> vessels)
    {
        PlacedCannula[] same = [.. all.SelectMany(plan => plan.Cannulae.Where(other => other.Role == cannula.Role))];
        VesselName vessel = AccessVessels.NameOf(cannula.Route);
        return new RapidCannula(
            cannula.Role, cannula.DeviceId, cannula.Description, cannula.OuterDiameterFrench, cannula.Route, cannula.Side,
            vessels.Any(entry => entry.Vessel == vessel && entry.Side == cannula.Side),
            Over(cannula.VesselDiameterMm, same.Select(static c => c.VesselDiameterMm)),
            Over(cannula.CannulaToVessel, same.Select(static c => c.CannulaToVessel)),
            cannula.Fit is null ? null : Over(cannula.Fit.PlannedDepthCm, same.Select(static c => c.Fit).OfType<CannulaFit>().Select(static f => f.PlannedDepthCm)),
            cannula.FlowLPerMin);
    }

    /// <summary>The middle body's value with an interval that holds the intervals of all bodies.</summary>
    private static Estimate Over(Estimate middle, IEnumerable<Estimate> all)
    {
        Estimate[] bodies = [.. all];
        double low = bodies.Min(static e => e.Low);
        double high = bodies.Max(static e => e.High);
        return Estimate.WithInterval(middle.Value, Math.Max(middle.Sd, (high - low) / IntervalToSd), low, high, middle.Origin);
    }

    private static CaseFile CaseOf(RapidInput input, BodyHabitus body, SituationRule leading, IReadOnlyList<string> devices) => new()
    {
        CavaxisCase = CaseFile.CurrentVersion,
        Title = leading.Title,
        Patient = new PatientSection { AgeYears = body.AgeYears, Sex = body.Sex, HeightCm = body.HeightCm, WeightKg = body.WeightKg },
        Support = new SupportSection { Goal = leading.Goal },
        Vessels = input.Vessels,
        DevicesOnHand = devices,
    };
}
