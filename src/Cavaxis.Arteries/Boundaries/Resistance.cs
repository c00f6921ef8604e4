using Cavaxis.Quantities.Faults;

namespace Cavaxis.Arteries.Boundaries;

/// <summary>A pure resistance to a fixed pressure.</summary>
public sealed class Resistance : IEndCondition
{
    private readonly double resistance;
    private readonly double outPressure;

    /// <summary>A resistance.</summary>
    /// <param name="resistance">Resistance, Pa·s/m³.</param>
    /// <param name="outPressure">Pressure behind it, Pa.</param>
    /// <exception cref="InputFaultException">A number outside its range.</exception>
    public Resistance(double resistance, double outPressure)
    {
        this.resistance = Require.InRange(resistance, 0, 1e15, "resistance (Pa·s/m³)", "Zero or more.");
        this.outPressure = Require.InRange(outPressure, -1e5, 1e5, "resistance.outPressure (Pa)", "Check the unit.");
    }

    /// <inheritdoc/>
    public double StoredVolume => 0;

    /// <inheritdoc/>
    public double OnwardFlow => 0;

    /// <inheritdoc/>
    public double FlowOut(in VesselEnd end, double time, double timeStep) => end.FlowInto(outPressure, resistance);
}
