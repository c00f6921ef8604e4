using Cavaxis.Arteries.Network;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Arteries.Boundaries;

/// <summary>
/// A small stiff tube between two places of the network, such as a distal perfusion cannula: L dQ/dt = P(from) − P(to) − R Q, its blood one
/// well-mixed store.
/// </summary>
public sealed class LinearTube : ISideFlow
{
    private readonly double resistance;
    private readonly double inertance;

    /// <summary>A tube.</summary>
    /// <param name="from">One end.</param>
    /// <param name="to">The other; flow counts positive towards it.</param>
    /// <param name="resistance">R, Pa·s/m³.</param>
    /// <param name="inertance">L = density · length / area, kg/m⁴.</param>
    /// <param name="volume">Volume of its blood, m³.</param>
    /// <exception cref="InputFaultException">A number outside its range.</exception>
    public LinearTube(NetworkPlace from, NetworkPlace to, double resistance, double inertance, double volume)
    {
        Places = [from, to];
        this.resistance = Require.InRange(resistance, 0, 1e15, "tube.resistance (Pa·s/m³)", "Zero or more.");
        this.inertance = Require.InRange(inertance, 1e3, 1e12, "tube.inertance (kg/m⁴)", "Density times length over area.");
        StoreVolume = Require.InRange(volume, 1e-9, 1e-2, "tube.volume (m³)", "Length times area.");
    }

    /// <inheritdoc/>
    public IReadOnlyList<NetworkPlace> Places { get; }

    /// <inheritdoc/>
    public ITracerSource? Blood => null;

    /// <inheritdoc/>
    public double StoreVolume { get; }

    /// <summary>Flow at the end of the last step, m³/s.</summary>
    public double Flow { get; private set; }

    /// <inheritdoc/>
    public double AxialVelocity(int place, double flowIn) => 0;

    /// <inheritdoc/>
    public void Flows(double time, double timeStep, ReadOnlySpan<double> pressures, Span<double> flowsIn)
    {
        double next = (Flow + (timeStep / inertance * (pressures[0] - pressures[1]))) / (1 + (timeStep * resistance / inertance));
        flowsIn[0] = -next;
        flowsIn[1] = next;
        Flow = next;
    }
}
