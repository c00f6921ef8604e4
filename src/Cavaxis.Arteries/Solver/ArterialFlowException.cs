using System.Globalization;
using Cavaxis.Arteries.Network;

namespace Cavaxis.Arteries.Solver;

/// <summary>The flow left what the equations describe: it reached the speed of its waves, or a vessel emptied.</summary>
/// <param name="kind">What happened.</param>
/// <param name="place">Where.</param>
/// <param name="time">When, s.</param>
/// <param name="velocity">Velocity there, m/s.</param>
/// <param name="area">Area there, m².</param>
public sealed class ArterialFlowException(ArterialFlowFault kind, NetworkPlace place, double time, double velocity, double area)
    : Exception(string.Create(CultureInfo.InvariantCulture, $"{Words(kind)} in {place?.Segment} at {1000 * place?.Distance:F1} mm, {time:F4} s: velocity {velocity:G4} m/s, area {1e6 * area:G4} mm². Accepted: velocities below the wave speed in vessels that hold blood. Check flows, radii and bodies there."))
{
    /// <summary>What happened.</summary>
    public ArterialFlowFault Kind { get; } = kind;

    /// <summary>Where.</summary>
    public NetworkPlace Place { get; } = place;

    /// <summary>When, s.</summary>
    public double Time { get; } = time;

    private static string Words(ArterialFlowFault kind) => kind switch
    {
        ArterialFlowFault.Supercritical => "The blood reached the speed of its waves",
        ArterialFlowFault.Emptied => "The vessel emptied",
        _ => "The flow at this end has no solution",
    };
}
