using Cavaxis.Circulation.Parameters;
using Cavaxis.Planning.Plans;
using Cavaxis.Planning.Search;

namespace Cavaxis.Planning.Outlook;

/// <summary>
/// The patients who agree with the case on the circuit of one plan, each in an anatomy of its own: what the outlook of the plan, a moved
/// cannula and a what-if all start from. May be used by many threads.
/// </summary>
internal sealed class PlanPatients
{
    private readonly CirculationParameters[] members;
    private readonly PlanPorts ports;
    private readonly int samples;

    /// <summary>Connects them.</summary>
    /// <param name="context">The case.</param>
    /// <param name="patients">Patients who agree with it.</param>
    /// <param name="plan">The plan.</param>
    public PlanPatients(PlanningContext context, PatientSet patients, PlannedSupport plan)
    {
        Circuit = new PlanCircuit(context, plan);
        members = [.. patients.Members.Select(member => Circuit.Connect(member, plan.Plan.Circuit.FlowLPerMin))];
        ports = new PlanPorts(context, plan);
        samples = context.Samples.Count;
    }

    /// <summary>The circuit that they are on.</summary>
    public PlanCircuit Circuit { get; }

    /// <summary>How many there are.</summary>
    public int Count => members.Length;

    /// <summary>One of them.</summary>
    /// <param name="member">Which, from 0.</param>
    /// <param name="places">Cannulae that lie elsewhere than planned; null or empty for the plan as it is.</param>
    /// <returns>The numbers.</returns>
    public CirculationParameters Of(int member, IReadOnlyList<CannulaPlace>? places = null)
    {
        lock (ports)
        {
            return members[member].With(ports.Of(AnatomyOf(member), places));
        }
    }

    /// <summary>All of them.</summary>
    /// <param name="places">Cannulae that lie elsewhere than planned; null or empty for the plan as it is.</param>
    /// <returns>The numbers of each.</returns>
    public CirculationParameters[] All(IReadOnlyList<CannulaPlace>? places = null) => [.. Enumerable.Range(0, Count).Select(m => Of(m, places))];

    /// <summary>The anatomy of a member: the members are spread evenly over those that were sampled.</summary>
    private int AnatomyOf(int member) => ((2 * member) + 1) * samples / (2 * Count);
}
