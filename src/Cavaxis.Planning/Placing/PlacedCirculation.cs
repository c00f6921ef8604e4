using System.Collections.Concurrent;
using Cavaxis.Circulation.Signals;
using Cavaxis.Circulation.Simulation;
using Cavaxis.Planning.Configurations;
using Cavaxis.Planning.Outlook;
using Cavaxis.Planning.Plans;
using Cavaxis.Planning.Search;
using Cavaxis.Quantities;

namespace Cavaxis.Planning.Placing;

/// <summary>
/// The patients of a plan on its circuit, with cannulae that are moved. Each computation goes on from the state of the one before, since
/// a hand moves a cannula by millimetres. May be used by many threads.
/// </summary>
internal sealed class PlacedCirculation
{
    private const int KeptPlaces = 4000;

    private readonly bool toVein;
    private readonly string reason;
    private readonly PlanPatients members;
    private readonly Lock whole = new();
    private readonly Lock middle = new();
    private readonly ConcurrentDictionary<string, PlacingCirculation> known = new(StringComparer.Ordinal);
    private readonly Lazy<int> middleMember;
    private IReadOnlyList<SettledState>? last;
    private SettledState? lastOfMiddle;

    /// <summary>Connects the patients to the circuit of the plan.</summary>
    /// <param name="context">The case.</param>
    /// <param name="patients">Patients who agree with it.</param>
    /// <param name="plan">The plan.</param>
    public PlacedCirculation(PlanningContext context, PatientSet patients, PlannedSupport plan)
    {
        toVein = plan.Configuration.Kind != SupportKind.VenoArterial;
        reason = patients.Reason;
        members = new PlanPatients(context, patients, plan);
        middleMember = new Lazy<int>(FindMiddle);
    }

    /// <summary>All patients.</summary>
    /// <param name="places">Depth and turn of every cannula on the axis.</param>
    /// <returns>Median and interval.</returns>
    public PlacingCirculation OfAll(IReadOnlyList<CannulaPlace> places) => Known("all", places, () =>
    {
        lock (whole)
        {
            last = CirculationSimulator.SettleForComparison(members.All(places), last);
            return Told(last, 2);
        }
    });

    /// <summary>The patient in the middle.</summary>
    /// <param name="places">Depth and turn of every cannula on the axis.</param>
    /// <returns>Numbers without interval.</returns>
    public PlacingCirculation OfMiddle(IReadOnlyList<CannulaPlace> places) => Known("middle", places, () =>
    {
        lock (middle)
        {
            int member = middleMember.Value;
            lastOfMiddle = CirculationSimulator.SettleForComparison([members.Of(member, places)], lastOfMiddle is { Settled: true } from ? [from] : null)[0];
            return Told([lastOfMiddle], 1);
        }
    });

    private PlacingCirculation Known(string who, IReadOnlyList<CannulaPlace> places, Func<PlacingCirculation> compute)
    {
        if (members.Count == 0)
        {
            return new PlacingCirculation(0, null, null, null, reason);
        }

        string key = who + string.Concat(places.Select(static p => FormattableString.Invariant($"/{p.Role}:{p.DepthCm:F2}:{p.TurnDeg:F1}")));
        if (known.TryGetValue(key, out PlacingCirculation? there))
        {
            return there;
        }

        if (known.Count >= KeptPlaces)
        {
            known.Clear();
        }

        return known.GetOrAdd(key, _ => compute());
    }

    /// <summary>The patient of whom the number that moving changes lies nearest the median of all, as planned.</summary>
    private int FindMiddle()
    {
        IReadOnlyList<SettledState> planned;
        lock (whole)
        {
            planned = last ??= CirculationSimulator.SettleForComparison(members.All());
        }

        CirculationQuantity counts = toVein ? CirculationQuantity.RecirculationPercent : CirculationQuantity.RightArmSaturationPercent;
        int[] settled = [.. Enumerable.Range(0, planned.Count).Where(m => planned[m].Settled).OrderBy(m => planned[m].RequireSummary()[counts])];
        int found = settled.Length == 0 ? 0 : settled[settled.Length / 2];
        lastOfMiddle = planned[found];
        return found;
    }

    private PlacingCirculation Told(IReadOnlyList<SettledState> states, int fewest)
    {
        CirculationSummary[] rest = [.. states.Where(static s => s.Settled).Select(static s => s.RequireSummary())];
        return rest.Length < fewest
            ? new PlacingCirculation(rest.Length, null, null, null, $"the circulation did not come to rest: {states.First(static s => !s.Settled).Reason}")
            : new PlacingCirculation(
                rest.Length,
                toVein ? Spread(rest, CirculationQuantity.RecirculationPercent) : null,
                Spread(rest, CirculationQuantity.RightArmSaturationPercent),
                Spread(rest, CirculationQuantity.DeliveryOverConsumption),
                string.Empty);
    }

    private static Estimate Spread(CirculationSummary[] members, CirculationQuantity quantity) => members.Length == 1
        ? Estimate.WithInterval(members[0][quantity], 0, members[0][quantity], members[0][quantity], Origin.Calculated)
        : Estimate.FromSamples([.. members.Select(m => m[quantity])], Origin.Calculated);
}
