using Cavaxis.Anatomy.Axis;
using Cavaxis.Anatomy.Sampling;
using Cavaxis.Circulation.Axis;
using Cavaxis.Planning.Configurations;
using Cavaxis.Planning.Fit;
using Cavaxis.Planning.Plans;
using Cavaxis.Planning.Rules;
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
    /// <summary>Shares in one anatomy.</summary>
    /// <param name="anatomy">Which sample.</param>
    /// <returns>The shares.</returns>
    public AxisPorts Of(int anatomy)
    {
        CavalGeometry geometry = Geometry(anatomy);
        SlotOption drain = plan.Combination.Draining;
        SlotOption? back = drain.Slot.Role == CannulaRole.DualLumen ? drain : plan.Combination.InRole(CannulaRole.VenousReturn);
        DrainageSite[] sites = CannulaSites.Drainage(
            drain.Cannula, TipMm(drain, anatomy), FromNeck(drain), Math.Max(0.05, plan.Plan.Circuit.FlowLPerMin), context.Blood);
        ReturnSite? site = back is null ? null : CannulaSites.Return(back.Cannula, TipMm(back, anatomy), FromNeck(back), 0);
        return PortShares.Of(geometry, sites, site);
    }

    private static bool FromNeck(SlotOption option) => option.Slot.Route == AccessRoute.Jugular;

    private CavalGeometry Geometry(int i)
    {
        AxisLandmarks l = context.Landmarks;
        AxisSamples s = context.Samples;
        double length = l.Of(Landmark.Icaj)[i];
        return new CavalGeometry(
            -l.Of(Landmark.BrachiocephalicConfluence)[i],
            length,
            l.Of(Landmark.HepaticVein)[i],
            Math.Max(l.Of(Landmark.HepaticVein)[i] + 5, l.Of(Landmark.RenalVein)[i]),
            l.Of(Landmark.TricuspidCentre)[i],
            s[AxisDimension.TricuspidDistance][i],
            s[AxisDimension.TricuspidDiameter][i] / 2);
    }

    private double TipMm(SlotOption option, int anatomy)
    {
        VenousEntry entry = new(option.Slot.Route, option.Side);
        PlacedCannula placed = plan.Plan.Cannulae.First(c => c.Role == option.Slot.Role);
        double depthMm = 10 * (placed.Fit?.PlannedDepthCm.Value ?? 0);
        double planned = Median(context.Landmarks.Skin(entry)) + (entry.Direction * depthMm);
        ReadOnlySpan<double> reference = context.Landmarks.Of(FromNeck(option) ? Landmark.Scaj : Landmark.Icaj);
        return planned - Median(reference) + reference[anatomy];
    }

    private static double Median(ReadOnlySpan<double> values)
    {
        double[] sorted = values.ToArray();
        Array.Sort(sorted);
        return sorted[sorted.Length / 2];
    }
}
