using System.Collections.Immutable;
using Cavaxis.Circulation.Axis;
using Cavaxis.Devices.Hydraulics;

namespace Cavaxis.Planning.Running;

/// <summary>Shares of drainage and return of cannulae in one anatomy, for plans and for what runs alike (docs/models/recirculation.md).</summary>
/// <param name="grid">The axis cut into parts.</param>
/// <param name="tricuspidDistanceMm">From the axis to the plane of the tricuspid annulus, mm.</param>
/// <param name="annulusRadiusMm">Radius of the annulus, mm.</param>
/// <param name="blood">This patient's blood.</param>
internal sealed class CircuitPorts(AxisGrid grid, double tricuspidDistanceMm, double annulusRadiusMm, Fluid blood)
{
    private const double LeastFlowLPerMin = 0.05;

    /// <summary>The axis from landmarks of which measured ones may disagree a little with the order of the others: each is put at least where the one before is.</summary>
    /// <param name="confluenceMm">Brachiocephalic confluence, below zero.</param>
    /// <param name="tricuspidMm">Tricuspid centre.</param>
    /// <param name="icajMm">Inferior cavo-atrial junction.</param>
    /// <param name="hepaticMm">Hepatic veins.</param>
    /// <param name="renalMm">Renal veins.</param>
    /// <param name="iliacMm">Iliac confluence.</param>
    /// <returns>The grid.</returns>
    public static AxisGrid Grid(double confluenceMm, double tricuspidMm, double icajMm, double hepaticMm, double renalMm, double iliacMm)
    {
        double hepatic = Math.Max(icajMm, hepaticMm);
        double renal = Math.Max(hepatic, renalMm);
        return AxisGrid.Of(confluenceMm, Math.Clamp(tricuspidMm, 0, icajMm), icajMm, hepatic, renal, Math.Max(renal, iliacMm));
    }

    /// <summary>Shares of what a cannula drains.</summary>
    /// <param name="cannula">A cannula that drains.</param>
    /// <returns>Ten shares that sum to one.</returns>
    public ImmutableArray<double> Drainage(LyingCannula cannula) => AxisPortsBuilder.Of(
        grid, AxisPortsBuilder.DrainageOf(cannula.Cannula, cannula.TipMm, cannula.FromNeck, FlowOf(cannula), blood), NoReturn).Drainage;

    /// <summary>Shares of where the blood comes to rest that a cannula returns.</summary>
    /// <param name="cannula">A cannula that returns; null where nothing returns to a vein, and so its place does not matter.</param>
    /// <returns>Ten shares that sum to one.</returns>
    public ImmutableArray<double> VenousReturn(LyingCannula? cannula) => AxisPortsBuilder.Of(
        grid,
        [new DrainageSite(grid.TricuspidMm, 0, 1)],
        cannula is not { } c ? NoReturn : AxisPortsBuilder.ReturnOf(
            c.Cannula, c.TipMm, c.FromNeck, FlowOf(c), blood, c.RotationDeg, tricuspidDistanceMm, annulusRadiusMm)).VenousReturn;

    private ReturnSite NoReturn => new(grid.TricuspidMm, JetDirection.TowardsTricuspid, 0, 5, 30, 15);

    private static double FlowOf(LyingCannula cannula) => Math.Clamp(cannula.FlowLPerMin, LeastFlowLPerMin, CannulaHydraulics.HighestFlowLPerMin);
}
