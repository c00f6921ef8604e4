using Cavaxis.Circulation.Parameters;
using Cavaxis.Devices.Catalogue;
using Cavaxis.Planning.Case;
using Cavaxis.Planning.Configurations;
using Cavaxis.Planning.Plans;
using Cavaxis.Planning.Ranking;
using Cavaxis.Planning.Rules;
using Cavaxis.Planning.Search;

namespace Cavaxis.Planning.Outlook;

/// <summary>
/// The patients of a plan's outlook on the plan's circuit, so that a change can be asked of them before anything is placed: the same set
/// of patients who agree with the case, the same circuit and the same ports as <see cref="CannulationPlan.Circulation"/> stands on.
/// </summary>
/// <param name="Members">Patients on the circuit; none where there are none.</param>
/// <param name="Assumed">What was assumed about the patient beyond the case.</param>
/// <param name="Reason">Why there are none; empty where there are.</param>
public sealed record ConnectedPlan(IReadOnlyList<CirculationParameters> Members, IReadOnlyList<string> Assumed, string Reason)
{
    /// <summary>Connects.</summary>
    /// <param name="caseFile">The case that was planned.</param>
    /// <param name="catalogue">The devices that it was planned with.</param>
    /// <param name="rules">The rules that it was planned with.</param>
    /// <param name="options">The options that it was planned with.</param>
    /// <param name="plan">One of its plans.</param>
    /// <returns>The patients on the circuit, or why there are none.</returns>
    public static ConnectedPlan Of(CaseFile caseFile, DeviceCatalogue catalogue, RuleBook rules, PlanningOptions options, CannulationPlan plan)
    {
        ArgumentNullException.ThrowIfNull(caseFile);
        ArgumentNullException.ThrowIfNull(catalogue);
        ArgumentNullException.ThrowIfNull(rules);
        ArgumentNullException.ThrowIfNull(options);
        ArgumentNullException.ThrowIfNull(plan);
        PlanningContext context = new(caseFile, catalogue, rules, options);
        ConfigurationTable configuration = ConfigurationTable.Of(plan.Configuration);
        ConfigurationSearch search = new(context, configuration, new CriteriaScale(rules.Criteria, caseFile.Support.Goal, options.Weights));
        if (search.Best(options.PlansPerConfiguration).FirstOrDefault(c => Matches(c, plan)) is not Combination combination)
        {
            return new ConnectedPlan([], [], "the plan belongs to another state of the case");
        }

        PatientSet patients = PatientSetBuilder.Of(context);
        PlannedSupport planned = new(plan, combination, search);
        PlanCircuit circuit = new(context, configuration, search, combination);
        PlanPorts ports = new(context, planned);
        int count = patients.Members.Count;
        return new ConnectedPlan(
            [.. patients.Members.Select((member, m) => circuit.Connect(member, plan.Circuit.FlowLPerMin).With(ports.Of(PlanPorts.AnatomyOf(m, count, context.Samples.Count))))],
            patients.Assumed,
            patients.Reason);
    }

    private static bool Matches(Combination combination, CannulationPlan plan) => combination.Options.All(option => plan.Cannulae.Any(
        c => c.Role == option.Slot.Role && c.DeviceId == option.Cannula.Id && c.Side == option.Side));
}
