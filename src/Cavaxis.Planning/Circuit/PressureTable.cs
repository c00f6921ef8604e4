using Cavaxis.Devices.Cannulae;
using Cavaxis.Devices.Hydraulics;
using Cavaxis.Quantities;

namespace Cavaxis.Planning.Circuit;

/// <summary>
/// Pressure drop of one lumen over flow with this patient's blood, tabulated once so that thousands of combinations can be
/// compared. Between the points drop over flow is taken as straight. Plans that are shown are computed without the table.
/// </summary>
internal sealed class PressureTable
{
    private static readonly double[] Flows = [0.05, 0.1, 0.2, 0.4, 0.7, 1, 1.5, 2, 2.5, 3, 3.5, 4, 4.5, 5, 5.5, 6, 7, 8, 9];
    private readonly double[] resistance = new double[Flows.Length];

    /// <summary>Tabulates a lumen.</summary>
    /// <param name="cannula">The cannula.</param>
    /// <param name="purpose">Drainage or return.</param>
    /// <param name="blood">This patient's blood.</param>
    public PressureTable(Cannula cannula, LumenPurpose purpose, Fluid blood)
    {
        for (int i = 0; i < Flows.Length; i++)
        {
            double drop = CannulaHydraulics.At(cannula, purpose, Flows[i], blood).PressureDropPa;
            resistance[i] = drop / UnitFactors.PascalsPerMmHg / Flows[i];
        }
    }

    /// <summary>Pressure drop at a flow.</summary>
    /// <param name="flowLPerMin">Flow, not negative.</param>
    /// <returns>Drop in mmHg.</returns>
    public double DropMmHg(double flowLPerMin)
    {
        int above = Array.BinarySearch(Flows, flowLPerMin);
        if (above >= 0)
        {
            return resistance[above] * flowLPerMin;
        }

        above = Math.Clamp(~above, 1, Flows.Length - 1);
        double share = (flowLPerMin - Flows[above - 1]) / (Flows[above] - Flows[above - 1]);
        return double.Lerp(resistance[above - 1], resistance[above], share) * flowLPerMin;
    }
}
