using Cavaxis.Devices.Cannulae;
using Cavaxis.Devices.Hydraulics;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Circulation.Axis;

/// <summary>From where cannulae lie to the shares of drainage and return (docs/models/recirculation.md). Continuous in every position.</summary>
public static class AxisPortsBuilder
{
    /// <summary>Reach of a hole along the vessel to either side, mm: about a vessel's radius, since a sink draws from all round.</summary>
    public const double SinkReachMm = 10;

    /// <summary>Shares from plain numbers.</summary>
    /// <param name="grid">The line of one anatomy.</param>
    /// <param name="drainage">Groups of holes, at least one with a share above zero.</param>
    /// <param name="venousReturn">The return port.</param>
    /// <returns>The shares.</returns>
    /// <exception cref="InputFaultException">A number is out of range or no hole drains.</exception>
    public static AxisPorts Of(AxisGrid grid, ReadOnlySpan<DrainageSite> drainage, ReturnSite venousReturn)
    {
        ArgumentNullException.ThrowIfNull(grid);
        Check(venousReturn);
        Span<double> drained = stackalloc double[AxisPorts.CellCount];
        Span<double> returned = stackalloc double[AxisPorts.CellCount];
        drained.Clear();
        returned.Clear();
        double sum = 0;
        foreach (DrainageSite site in drainage)
        {
            Require.InRange(site.Share, 0, 1e6, "share", "Give a share of flow that is not negative.");
            sum += site.Share;
        }

        Require.InRange(sum, 1e-12, 1e12, "drainage", "Give at least one group of holes that drains.");
        foreach (DrainageSite site in drainage)
        {
            Require.InRange(site.PositionMm, -1000, 2000, "positionMm", "Give arc length from the superior cavo-atrial junction in mm.");
            double reach = SinkReachMm + Require.InRange(site.HalfSpanMm, 0, 500, "halfSpanMm", "Give half the length of the holes in mm.");
            grid.Spread(site.PositionMm - reach, site.PositionMm + reach, site.Share / sum, drained);
        }

        ReturnJet.Deposit(grid, venousReturn, returned);
        return new AxisPorts(Whole(drained), Whole(returned));
    }

    /// <summary>Groups of drainage holes of a cannula that lies in place.</summary>
    /// <param name="cannula">The cannula.</param>
    /// <param name="tipMm">Position of its tip.</param>
    /// <param name="fromNeck">True when placed from the neck, false from the groin.</param>
    /// <param name="flowLPerMin">Flow.</param>
    /// <param name="fluid">Blood.</param>
    /// <returns>One site for each group of holes, hub side first.</returns>
    /// <exception cref="InputFaultException">The cannula does not drain, or the flow is out of range.</exception>
    public static DrainageSite[] DrainageOf(Cannula cannula, double tipMm, bool fromNeck, double flowLPerMin, Fluid fluid)
    {
        ArgumentNullException.ThrowIfNull(cannula);
        IReadOnlyList<double> shares = CannulaHydraulics.At(cannula, LumenPurpose.Drainage, flowLPerMin, fluid).HoleShares;
        IReadOnlyList<HoleGroup> groups = cannula.LumenFor(LumenPurpose.Drainage)!.HoleGroups;
        double towardsHub = fromNeck ? -1 : 1;
        return [.. groups.Select((g, i) => new DrainageSite(tipMm + (towardsHub * g.FromTipMm), 0.5 * g.SpanMm, shares[i]))];
    }

    /// <summary>
    /// The return port of a cannula that lies in place: its holes at their middle by flow; a lumen with holes on one side points across.
    /// </summary>
    /// <param name="cannula">The cannula.</param>
    /// <param name="tipMm">Position of its tip.</param>
    /// <param name="fromNeck">True when placed from the neck, false from the groin.</param>
    /// <param name="flowLPerMin">Flow.</param>
    /// <param name="fluid">Blood.</param>
    /// <param name="rotationDeg">Turn of a side port away from the tricuspid valve, degrees.</param>
    /// <param name="lateralDistanceToTricuspidMm">From the axis to the plane of the annulus, mm.</param>
    /// <param name="annulusRadiusMm">Radius of the annulus, mm.</param>
    /// <returns>The port.</returns>
    /// <exception cref="InputFaultException">The cannula does not return, or a number is out of range.</exception>
    public static ReturnSite ReturnOf(
        Cannula cannula,
        double tipMm,
        bool fromNeck,
        double flowLPerMin,
        Fluid fluid,
        double rotationDeg,
        double lateralDistanceToTricuspidMm,
        double annulusRadiusMm)
    {
        ArgumentNullException.ThrowIfNull(cannula);
        IReadOnlyList<double> shares = CannulaHydraulics.At(cannula, LumenPurpose.Return, flowLPerMin, fluid).HoleShares;
        IReadOnlyList<HoleGroup> groups = cannula.LumenFor(LumenPurpose.Return)!.HoleGroups;
        (double middle, double diameter, double across) = (0, 0, 0);
        for (int i = 0; i < groups.Count; i++)
        {
            middle += shares[i] * groups[i].FromTipMm;
            diameter += shares[i] * groups[i].DiameterMm;
            across += groups[i].Facing == HoleFacing.OneSide ? shares[i] : 0;
        }

        JetDirection axial = fromNeck ? JetDirection.TowardsFeet : JetDirection.TowardsHead;
        return new ReturnSite(
            tipMm + ((fromNeck ? -1 : 1) * middle), across > 0.5 ? JetDirection.TowardsTricuspid : axial, rotationDeg, diameter,
            lateralDistanceToTricuspidMm, annulusRadiusMm);
    }

    private static void Check(ReturnSite site)
    {
        Require.InRange(site.PositionMm, -1000, 2000, "positionMm", "Give arc length from the superior cavo-atrial junction in mm.");
        Require.InRange(site.RotationDeg, -180, 180, "rotationDeg", "Give the turn in degrees.");
        Require.InRange(site.DiameterMm, 0.5, 20, "diameterMm", "Give the diameter of the port in mm.");
        Require.InRange(site.LateralDistanceToTricuspidMm, 1, 150, "lateralDistanceToTricuspidMm", "Give the distance in mm.");
        Require.InRange(site.AnnulusRadiusMm, 1, 50, "annulusRadiusMm", "Give the radius in mm.");
    }

    private static Span<double> Whole(Span<double> shares)
    {
        double sum = 0;
        foreach (double share in shares)
        {
            sum += share;
        }

        for (int i = 0; i < shares.Length; i++)
        {
            shares[i] = Math.Min(1, shares[i] / sum);
        }

        return shares;
    }
}
