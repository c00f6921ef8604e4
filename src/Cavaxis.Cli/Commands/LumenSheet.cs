using Cavaxis.Devices.Cannulae;
using Cavaxis.Devices.Hydraulics;
using Cavaxis.Quantities;

namespace Cavaxis.Cli.Commands;

/// <summary>One lumen with its holes and its pressure over flow.</summary>
/// <param name="Purpose">Drainage or return.</param>
/// <param name="HoleGroups">Hole groups from the hub to the tip.</param>
/// <param name="Points">Pressure over flow.</param>
public sealed record LumenSheet(LumenPurpose Purpose, IReadOnlyList<HoleGroup> HoleGroups, IReadOnlyList<LumenPoint> Points)
{
    private static readonly double[] AdultFlows = [1, 2, 3, 4, 5, 6];
    private static readonly double[] ChildFlows = [0.2, 0.5, 0.8, 1.2, 1.6, 2];

    /// <summary>The sheet of a lumen.</summary>
    /// <param name="cannula">The cannula.</param>
    /// <param name="lumen">One of its lumens.</param>
    /// <param name="blood">The blood.</param>
    /// <returns>The sheet.</returns>
    public static LumenSheet Of(Cannula cannula, Lumen lumen, Fluid blood)
    {
        ArgumentNullException.ThrowIfNull(cannula);
        ArgumentNullException.ThrowIfNull(lumen);
        double[] flows = cannula.OuterDiameterFrench < 15 ? ChildFlows : AdultFlows;
        return new LumenSheet(lumen.Purpose, lumen.HoleGroups, [.. flows.Select(flow =>
        {
            LumenFlow state = CannulaHydraulics.At(cannula, lumen.Purpose, flow, blood);
            double drop = state.PressureDropPa / UnitFactors.PascalsPerMmHg;
            return new LumenPoint(flow, Estimate.Normal(drop, drop * state.RelativeSd, Origin.Calculated), state.HoleShares);
        })]);
    }
}
