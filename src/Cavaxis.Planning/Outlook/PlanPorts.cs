using Cavaxis.Anatomy.Axis;
using Cavaxis.Circulation.Axis;
using Cavaxis.Planning.Configurations;
using Cavaxis.Planning.Fit;
using Cavaxis.Planning.Plans;
using Cavaxis.Planning.Rules;
using Cavaxis.Planning.Running;
using Cavaxis.Planning.Search;

namespace Cavaxis.Planning.Outlook;

/// <summary>
/// Where the ports of a plan come to lie in each sampled anatomy. Under imaging a cannula is set against the atrium and not by depth: the
/// tip keeps its planned distance from the cavo-atrial junction that it comes in by, in every anatomy.
/// </summary>
/// <param name="context">The case.</param>
/// <param name="plan">The plan.</param>
internal sealed class PlanPorts(PlanningContext context, PlannedSupport plan)
{
    private readonly Dictionary<SlotOption, double> skinFromJunctionMm = new(ReferenceEqualityComparer.Instance);

    /// <summary>Shares in one anatomy.</summary>
    /// <param name="anatomy">Which sample.</param>
    /// <param name="places">Cannulae that lie elsewhere than planned; null or empty for the plan as it is.</param>
    /// <returns>The shares.</returns>
    public AxisPorts Of(int anatomy, IReadOnlyList<CannulaPlace>? places = null)
    {
        AxisLandmarks l = context.Landmarks;
        AxisGrid grid = CircuitPorts.Grid(
            l.Of(Landmark.BrachiocephalicConfluence)[anatomy], l.Of(Landmark.TricuspidCentre)[anatomy], l.Of(Landmark.Icaj)[anatomy],
            l.Of(Landmark.HepaticVein)[anatomy], l.Of(Landmark.RenalVein)[anatomy], l.Of(Landmark.IliacConfluence)[anatomy]);
        CircuitPorts ports = new(
            grid, context.Samples[AxisDimension.TricuspidDistance][anatomy], context.Samples[AxisDimension.TricuspidDiameter][anatomy] / 2, context.Blood);
        SlotOption drain = plan.Combination.Draining;
        SlotOption? back = drain.Slot.Role == CannulaRole.DualLumen ? drain : plan.Combination.InRole(CannulaRole.VenousReturn);
        double flow = plan.Plan.Circuit.FlowLPerMin;
        return new AxisPorts(
            ports.Drainage(Lying(drain, flow, anatomy, places)).AsSpan(),
            ports.VenousReturn(back is null ? null : Lying(back, plan.Search.FlowThrough(back.Slot.Role, flow), anatomy, places)).AsSpan());
    }

    private LyingCannula Lying(SlotOption option, double flowLPerMin, int anatomy, IReadOnlyList<CannulaPlace>? places)
    {
        CannulaPlace? moved = places?.FirstOrDefault(place => place.Role == option.Slot.Role);
        double depthCm = moved?.DepthCm ?? plan.Plan.Cannulae.First(c => c.Role == option.Slot.Role).Fit?.PlannedDepthCm.Value ?? 0;
        return new(option.Cannula, TipMm(option, 10 * depthCm, anatomy), FromNeck(option), flowLPerMin, moved?.TurnDeg ?? 0);
    }

    private static bool FromNeck(SlotOption option) => option.Slot.Route == AccessRoute.Jugular;

    /// <summary>Position of the tip: its distance from the junction, which is one for all anatomies, put to the junction of this one.</summary>
    private double TipMm(SlotOption option, double depthMm, int anatomy)
    {
        VenousEntry entry = new(option.Slot.Route, option.Side);
        ReadOnlySpan<double> junction = context.Landmarks.Of(FromNeck(option) ? Landmark.Scaj : Landmark.Icaj);
        if (!skinFromJunctionMm.TryGetValue(option, out double skin))
        {
            skin = Median(context.Landmarks.Skin(entry)) - Median(junction);
            skinFromJunctionMm.Add(option, skin);
        }

        return skin + (entry.Direction * depthMm) + junction[anatomy];
    }

    private static double Median(ReadOnlySpan<double> values)
    {
        double[] sorted = values.ToArray();
        Array.Sort(sorted);
        return sorted[sorted.Length / 2];
    }
}
