using Cavaxis.Arteries.Numbers;
using Cavaxis.Arteries.Scaling;
using Cavaxis.Devices.Cannulae;
using Cavaxis.Devices.Hydraulics;
using Cavaxis.Quantities;
using static Cavaxis.Arteries.Numbers.ArterialConstant;

namespace Cavaxis.Arteries.Support;

/// <summary>
/// Flow of a distal perfusion cannula that branches off the return line: the pressure in the line before the arterial cannula drives it through side line and
/// cannula against the pressure in the superficial femoral artery, which its own flow raises.
/// </summary>
public static class PerfusionFlow
{
    /// <summary>The flow, L/min.</summary>
    /// <param name="steady">Resistances of the tree with the arterial cannula in it.</param>
    /// <param name="tree">The patient's tree.</param>
    /// <param name="placement">Where the arterial cannula lies.</param>
    /// <param name="entry">The arterial return.</param>
    /// <param name="perfusion">The distal perfusion cannula.</param>
    /// <param name="pumpLPerMin">Pump flow, both cannulae together, L/min.</param>
    /// <param name="rootPa">Mean pressure at the aortic root, Pa.</param>
    /// <returns>Flow through the distal perfusion cannula, 0 to a quarter of the pump flow.</returns>
    public static double LPerMin(
        SteadyTree steady, PatientTree tree, CannulaPlacement placement, ArterialReturn entry, Cannula perfusion, double pumpLPerMin, double rootPa)
    {
        ArgumentNullException.ThrowIfNull(steady);
        ArgumentNullException.ThrowIfNull(tree);
        ArgumentNullException.ThrowIfNull(placement);
        ArgumentNullException.ThrowIfNull(entry);
        ArgumentNullException.ThrowIfNull(perfusion);
        Fluid blood = new(tree.Beds.DensityKgPerM3, tree.Beds.ViscosityPaS);
        double Surplus(double side)
        {
            double main = pumpLPerMin - side;
            (_, double[] p) = steady.Solve(
                rootPa,
                (placement.TipSegment, main * UnitFactors.CubicMetresPerSecondPerLPerMin),
                (placement.PerfusionSegment, side * UnitFactors.CubicMetresPerSecondPerLPerMin));
            double line = Before(tree, p, placement.TipSegment, rootPa)
                + CannulaHydraulics.At(entry.Cannula, LumenPurpose.Return, main, blood).PressureDropPa;
            double need = Before(tree, p, placement.PerfusionSegment, rootPa)
                + CannulaHydraulics.At(perfusion, LumenPurpose.Return, side, blood).PressureDropPa + SideLine(side, blood);
            return line - need;
        }

        double low = 0;
        double high = 0.25 * pumpLPerMin;
        if (pumpLPerMin <= 0 || Surplus(0) <= 0)
        {
            return 0;
        }

        for (int i = 0; i < 40; i++)
        {
            double middle = 0.5 * (low + high);
            (low, high) = Surplus(middle) > 0 ? (middle, high) : (low, middle);
        }

        return 0.5 * (low + high);
    }

    private static double Before(PatientTree tree, double[] endPa, int segment, double rootPa)
    {
        int node = tree.Segments[segment].Table.From;
        for (int i = 0; i < endPa.Length; i++)
        {
            if (tree.Segments[i].Table.To == node)
            {
                return endPa[i];
            }
        }

        return rootPa;
    }

    private static double SideLine(double flowLPerMin, Fluid blood)
    {
        double diameter = ArterialNumbers.Value(PerfusionLineMm) * 1e-3;
        double length = ArterialNumbers.Value(PerfusionLineCm) * 1e-2;
        double velocity = flowLPerMin * UnitFactors.CubicMetresPerSecondPerLPerMin / (Math.PI * diameter * diameter / 4);
        double reynolds = blood.DensityKgPerM3 * velocity * diameter / blood.ViscosityPaS;
        double friction = reynolds < 1e-9 ? 0 : TubeFriction.DarcyFactor(reynolds) * length / diameter;
        return 0.5 * blood.DensityKgPerM3 * velocity * velocity * (friction + LossCoefficient.SharpEntrance + LossCoefficient.Exit);
    }
}
