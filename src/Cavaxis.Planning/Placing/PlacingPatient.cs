using Cavaxis.Devices.Catalogue;
using Cavaxis.Planning.Case;
using Cavaxis.Planning.Configurations;
using Cavaxis.Planning.Fit;
using Cavaxis.Planning.Information;
using Cavaxis.Planning.Outlook;
using Cavaxis.Planning.Plans;
using Cavaxis.Planning.Ranking;
using Cavaxis.Planning.Rules;
using Cavaxis.Planning.Search;
using Cavaxis.Planning.Steps;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Planning.Placing;

/// <summary>A patient prepared once, so that the cannulae of any plan can be moved and turned and the numbers follow. May be used by many threads.</summary>
public sealed class PlacingPatient
{
    private readonly PlanningContext context;
    private readonly PlanningOptions options;
    private readonly Lazy<PatientSet> patients;

    /// <summary>Prepares a patient. The circulation is fitted when it is first asked for.</summary>
    /// <param name="caseFile">The case.</param>
    /// <param name="catalogue">Devices.</param>
    /// <param name="rules">The rule book.</param>
    /// <param name="options">Number of anatomies and seed: those of the plans.</param>
    public PlacingPatient(CaseFile caseFile, DeviceCatalogue catalogue, RuleBook rules, PlanningOptions options)
    {
        ArgumentNullException.ThrowIfNull(caseFile);
        ArgumentNullException.ThrowIfNull(catalogue);
        ArgumentNullException.ThrowIfNull(rules);
        ArgumentNullException.ThrowIfNull(options);
        this.options = options;
        context = new PlanningContext(caseFile, catalogue, rules, options);
        patients = new Lazy<PatientSet>(() => PatientSetBuilder.Of(context));
    }

    /// <summary>A plan of this patient, to be moved.</summary>
    /// <param name="plan">A plan that was made from the same case, catalogue, rules and options.</param>
    /// <returns>The plan with its devices.</returns>
    /// <exception cref="ArgumentException">A cannula of the plan is not in the catalogue, or lacks a port that a rule speaks of.</exception>
    public PlanPlacing Of(CannulationPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return new PlanPlacing(context, patients, Support(plan));
    }

    /// <summary>The patients of a plan's outlook on the plan's circuit.</summary>
    /// <param name="plan">A plan that was made from the same case, catalogue, rules and options.</param>
    /// <returns>The patients, or why there are none.</returns>
    /// <exception cref="ArgumentException">A cannula of the plan is not in the catalogue, or lacks a port that a rule speaks of.</exception>
    public ConnectedPlan Connected(CannulationPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        PatientSet set = patients.Value;
        return new ConnectedPlan(new PlanPatients(context, set, Support(plan)).All(), set.Assumed, set.Reason);
    }

    private PlannedSupport Support(CannulationPlan plan)
    {
        ConfigurationTable configuration = ConfigurationTable.Of(plan.Configuration);
        CriteriaScale scale = new(context.Rules.Criteria, context.Case.Support.Goal, options.Weights);
        ConfigurationSearch search = new(context, configuration, scale);
        SlotOption[] devices = [.. plan.Cannulae.Select(cannula => Option(configuration, cannula))];
        Combination combination = new(
            devices, plan.Circuit.FlowLPerMin, plan.Circuit.InletPressureMmHg.Value, plan.Circuit.ReturnPressureMmHg.Value, 0, [], plan.Score, false);
        return new PlannedSupport(plan, combination, search);
    }

    /// <summary>The same result speaking of another plan: value of measurements and step list are those of the plan that is chosen.</summary>
    /// <param name="result">A result of the same case, catalogue, rules and options.</param>
    /// <param name="rank">Rank of the plan.</param>
    /// <returns>The result as planning with that rank gives it.</returns>
    /// <exception cref="InputFaultException">There is no plan of that rank.</exception>
    public PlanningResult Choose(PlanningResult result, int rank)
    {
        ArgumentNullException.ThrowIfNull(result);
        CannulationPlan plan = result.Plans[(int)Require.InRange(rank, 1, result.Plans.Count, "plan", "Choose the rank of a plan in the list.") - 1];
        return result with
        {
            ChosenPlan = rank,
            NextMeasurements = new NextMeasurements(context).Of(Support(plan).Combination),
            Steps = StepListBuilder.For(plan, context.Case),
        };
    }

    private SlotOption Option(ConfigurationTable configuration, PlacedCannula placed)
    {
        Devices.Cannulae.Cannula cannula = context.Catalogue.FindCannula(placed.DeviceId)
            ?? throw new ArgumentException($"The catalogue has no {placed.DeviceId}.", nameof(placed));
        RoleSlot slot = configuration.Slots.First(s => s.Role == placed.Role);
        DepthWindows? windows = null;
        if (VenousEntry.Reaches(slot.Route))
        {
            ZoneRule[] rules = [.. context.Rules.Zones.Where(r => r.Role == slot.Role && r.Configurations.Contains(configuration.Configuration))];
            windows = DepthWindows.Of(
                cannula, new VenousEntry(slot.Route, placed.Side), rules, context.Zones, context.Landmarks, context.LengthOutsideMm)
                ?? throw new ArgumentException($"{placed.DeviceId} lacks a port that a rule speaks of.", nameof(placed));
        }

        return new SlotOption(
            slot,
            cannula,
            placed.Side,
            placed.CannulaToVessel.Value,
            context.Pressure(cannula, Combination.PurposeOf(slot.Role)),
            slot.Role == CannulaRole.DualLumen ? context.Pressure(cannula, Devices.Cannulae.LumenPurpose.Return) : null,
            windows,
            0,
            0);
    }
}
