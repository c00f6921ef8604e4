using Cavaxis.Devices.Cannulae;
using Cavaxis.Planning.Configurations;
using Cavaxis.Planning.Fit;
using Cavaxis.Planning.Outlook;
using Cavaxis.Planning.Plans;
using Cavaxis.Planning.Rules;
using Cavaxis.Planning.Search;
using Cavaxis.Quantities;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Planning.Placing;

/// <summary>
/// A plan whose cannulae can be advanced, drawn back and turned: what changes for ports, zones, recirculation and saturation. At the
/// planned depths and no turn it says what the plan says. May be used by many threads.
/// </summary>
public sealed class PlanPlacing
{
    private readonly PlanningContext context;
    private readonly PlannedSupport support;
    private readonly Lazy<PlacedCirculation> circulation;

    internal PlanPlacing(PlanningContext context, Lazy<PatientSet> patients, PlannedSupport support)
    {
        (this.context, this.support) = (context, support);
        circulation = new Lazy<PlacedCirculation>(() => new PlacedCirculation(context, patients.Value, support));
    }

    /// <summary>The plan.</summary>
    public CannulationPlan Plan => support.Plan;

    /// <summary>The cannulae that can be moved, as planned.</summary>
    public IReadOnlyList<CannulaPlace> Planned =>
        [.. Plan.Cannulae.Where(static c => c.Fit is not null).Select(static c => new CannulaPlace(c.Role, c.Fit!.PlannedDepthCm.Value))];

    /// <summary>Greatest depth of a cannula: insertable length less the length left outside.</summary>
    /// <param name="role">Which cannula.</param>
    /// <returns>cm.</returns>
    public double DeepestCm(CannulaRole role) => Windows(role).DeepestMm / 10;

    /// <summary>Whether turning a cannula changes anything: it returns through a port at its side.</summary>
    /// <param name="role">Which cannula.</param>
    /// <returns>True where it does.</returns>
    public bool CanTurn(CannulaRole role) => Option(role).Cannula.LumenFor(LumenPurpose.Return)?.HoleGroups.Any(static g => g.Facing == HoleFacing.OneSide) == true;

    /// <summary>Where ports come to lie, and with which probability in their zones.</summary>
    /// <param name="places">The cannulae that are moved; the others stay as planned.</param>
    /// <returns>The fit.</returns>
    /// <exception cref="InputFaultException">A depth is below zero or beyond what the device allows, or a turn beyond 180 degrees.</exception>
    public PlacingFit Fit(IReadOnlyList<CannulaPlace> places)
    {
        CannulaPlace[] all = Checked(places);
        PlacedPorts[] cannulae = [.. all.Select(Ports)];
        SlotOption drain = support.Combination.Draining;
        SlotOption? back = support.Combination.InRole(CannulaRole.VenousReturn);
        CannulaPlace drainAt = all.First(p => p.Role == drain.Slot.Role);
        CannulaPlace? backAt = back is null ? null : all.First(p => p.Role == back.Slot.Role);
        int count = JointFit.CountBlind(
            drain.Windows!, 10 * drainAt.DepthCm, back?.Windows, 10 * (backAt?.DepthCm ?? 0), context.Landmarks, context.SeparationMm, Enters(all));
        return new PlacingFit(
            cannulae,
            (double)count / context.Samples.Count,
            Distance(drain, drainAt, back, backAt),
            back is null ? null : context.SeparationMm);
    }

    /// <summary>Recirculation and saturation on the patients who agree with the case, each in an anatomy of its own, as the plan tells them.</summary>
    /// <param name="places">The cannulae that are moved; the others stay as planned.</param>
    /// <returns>The numbers, or why there are none.</returns>
    /// <exception cref="InputFaultException">A depth is below zero or beyond what the device allows, or a turn beyond 180 degrees.</exception>
    public PlacingCirculation Circulation(IReadOnlyList<CannulaPlace> places) => circulation.Value.OfAll(Checked(places));

    /// <summary>
    /// The same on one of these patients alone, the one in the middle of them: soon enough to follow a hand. The numbers have no interval
    /// and differ from the median of all by what the patients differ.
    /// </summary>
    /// <param name="places">The cannulae that are moved; the others stay as planned.</param>
    /// <returns>The numbers, or why there are none.</returns>
    /// <exception cref="InputFaultException">A depth is below zero or beyond what the device allows, or a turn beyond 180 degrees.</exception>
    public PlacingCirculation CirculationOfMiddle(IReadOnlyList<CannulaPlace> places) => circulation.Value.OfMiddle(Checked(places));

    private SlotOption Option(CannulaRole role) => support.Combination.InRole(role)
        ?? throw new ArgumentException($"The plan has no cannula for {PlainWords.Role(role)}.", nameof(role));

    private DepthWindows Windows(CannulaRole role) => Option(role).Windows
        ?? throw new ArgumentException($"The cannula for {PlainWords.Role(role)} does not reach the axis.", nameof(role));

    private CannulaPlace[] Checked(IReadOnlyList<CannulaPlace> places)
    {
        ArgumentNullException.ThrowIfNull(places);
        foreach (CannulaPlace place in places)
        {
            Require.InRange(place.DepthCm, 0, DeepestCm(place.Role), "depthCm", "Choose a depth that the device reaches.");
            Require.InRange(place.TurnDeg, -180, 180, "turnDeg", "Give the turn in degrees.");
        }

        return [.. Planned.Select(planned => places.FirstOrDefault(place => place.Role == planned.Role) ?? planned)];
    }

    private PlacedPorts Ports(CannulaPlace place)
    {
        DepthWindows windows = Windows(place.Role);
        double[] tips = new double[context.Samples.Count];
        ReadOnlySpan<double> skin = context.Landmarks.Skin(windows.Entry);
        for (int i = 0; i < tips.Length; i++)
        {
            tips[i] = skin[i] + (windows.Entry.Direction * 10 * place.DepthCm);
        }

        return new PlacedPorts(
            place,
            FitSummary.Thinned(tips),
            [.. windows.Rules.Select(rule => FitSummary.Position(windows, 10 * place.DepthCm, place.TurnDeg, rule, context.Zones, context.Landmarks))]);
    }

    /// <summary>Whether the turned side jets still enter the valve; null where nothing is turned that could miss it.</summary>
    private Predicate<int>? Enters(CannulaPlace[] places)
    {
        (CannulaPlace Place, DepthWindows Windows, ZoneRule Rule, double FromTipMm)[] jets =
        [
            .. from place in places
               where place.TurnDeg != 0
               let windows = Windows(place.Role)
               from rule in windows.Rules
               where rule.Part == PortPart.JetAim
               select (place, windows, rule, PortExtent.Of(windows.Cannula, rule)!.Value.MiddleFromTipMm),
        ];
        return jets.Length == 0 ? null : anatomy => jets.All(jet => TurnedJet.Enters(
            context.Landmarks.Skin(jet.Windows.Entry)[anatomy] + (jet.Windows.Entry.Direction * ((10 * jet.Place.DepthCm) - jet.FromTipMm)),
            context.Zones.From(jet.Rule)[anatomy],
            context.Zones.To(jet.Rule)[anatomy],
            context.Landmarks.RotationWindowDeg[anatomy],
            jet.Place.TurnDeg));
    }

    private Estimate? Distance(SlotOption drain, CannulaPlace drainAt, SlotOption? back, CannulaPlace? backAt)
    {
        if (drain.Slot.Role == CannulaRole.DualLumen)
        {
            double port = JointFit.ReturnPortFromTip(drain.Cannula);
            double nearest = drain.Cannula.LumenFor(LumenPurpose.Drainage)!.HoleGroups.Min(g => Math.Abs(g.FromTipMm - port) - (g.SpanMm / 2));
            return Estimate.WithInterval(nearest, 0, nearest, nearest, Origin.Calculated);
        }

        if (back is null || backAt is null)
        {
            return null;
        }

        (DepthWindows d, DepthWindows r) = (drain.Windows!, back.Windows!);
        ReadOnlySpan<double> drainSkin = context.Landmarks.Skin(d.Entry);
        ReadOnlySpan<double> backSkin = context.Landmarks.Skin(r.Entry);
        double fixedMm = (d.Entry.Direction * 10 * drainAt.DepthCm) - (r.Entry.Direction * ((10 * backAt.DepthCm) - JointFit.ReturnPortFromTip(back.Cannula)));
        double[] apart = new double[drainSkin.Length];
        for (int i = 0; i < apart.Length; i++)
        {
            apart[i] = drainSkin[i] - backSkin[i] + fixedMm;
        }

        return FitSummary.Thinned(apart);
    }
}
