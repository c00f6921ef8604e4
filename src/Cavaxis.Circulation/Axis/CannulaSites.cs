using Cavaxis.Devices.Cannulae;
using Cavaxis.Devices.Hydraulics;

namespace Cavaxis.Circulation.Axis;

/// <summary>Where the holes of a cannula lie along the axis when its tip does, and how much of the flow each group takes.</summary>
public static class CannulaSites
{
    /// <summary>Groups of drainage holes.</summary>
    /// <param name="cannula">The cannula.</param>
    /// <param name="tipMm">Position of the tip along the axis.</param>
    /// <param name="fromNeck">True when the cannula comes from the neck, so that its holes lie above the tip.</param>
    /// <param name="flowLPerMin">Flow.</param>
    /// <param name="blood">The blood.</param>
    /// <returns>Sites whose shares sum to one.</returns>
    /// <exception cref="Quantities.Faults.InputFaultException">The cannula has no drainage lumen.</exception>
    public static DrainageSite[] Drainage(Cannula cannula, double tipMm, bool fromNeck, double flowLPerMin, Fluid blood)
    {
        ArgumentNullException.ThrowIfNull(cannula);
        IReadOnlyList<double> shares = CannulaHydraulics.At(cannula, LumenPurpose.Drainage, flowLPerMin, blood).HoleShares;
        double away = fromNeck ? -1 : 1;
        return [.. cannula.LumenFor(LumenPurpose.Drainage)!.HoleGroups.Select(
            (group, i) => new DrainageSite(tipMm + (away * group.FromTipMm), 0.5 * group.SpanMm, shares[i]))];
    }

    /// <summary>The return port: the side port of a dual-lumen cannula, the end of any other.</summary>
    /// <param name="cannula">The cannula.</param>
    /// <param name="tipMm">Position of the tip along the axis.</param>
    /// <param name="fromNeck">True when the cannula comes from the neck.</param>
    /// <param name="rotationDeg">Turn of a side port away from the valve.</param>
    /// <returns>The port.</returns>
    public static ReturnSite Return(Cannula cannula, double tipMm, bool fromNeck, double rotationDeg)
    {
        ArgumentNullException.ThrowIfNull(cannula);
        Lumen lumen = cannula.LumenFor(LumenPurpose.Return)
            ?? throw new ArgumentException("The cannula has no return lumen.", nameof(cannula));
        double away = fromNeck ? -1 : 1;
        double area = lumen.HoleGroups.Sum(g => g.Count * g.DiameterMm * g.DiameterMm);
        if (cannula.Family == CannulaFamily.BicavalDualLumen)
        {
            HoleGroup port = lumen.HoleGroups.MaxBy(g => g.Count * g.DiameterMm * g.DiameterMm)!;
            return new ReturnSite(tipMm + (away * port.FromTipMm), ReturnDirection.TowardsTricuspid, Math.Sqrt(area), rotationDeg);
        }

        // Holes along the last centimetres and the end work as one jet from their middle; it is no wider than the bore allows.
        double middle = area > 0 ? lumen.HoleGroups.Sum(g => g.FromTipMm * g.Count * g.DiameterMm * g.DiameterMm) / area : 0;
        double bore = lumen.Segments[^1].InnerDiameterMm;
        return new ReturnSite(
            tipMm + (away * middle), fromNeck ? ReturnDirection.TowardsFeet : ReturnDirection.TowardsHead, Math.Min(bore, Math.Sqrt(Math.Max(area, 1))));
    }
}
