using Cavaxis.Quantities.Faults;

namespace Cavaxis.Arteries.Boundaries;

/// <summary>
/// Three elements: R1 in series with C and R2 side by side. Integrated with the midpoint rule inside the end's own solution (second order). The blood
/// on its compliance is a well-mixed store, which gives back what it holds when flow turns.
/// </summary>
public sealed class Windkessel : IEndCondition
{
    private readonly double proximal;
    private readonly double distal;
    private readonly double compliance;
    private readonly double outPressure;
    private readonly double restVolume;

    /// <summary>A windkessel.</summary>
    /// <param name="proximal">R1, Pa·s/m³.</param>
    /// <param name="distal">R2, Pa·s/m³.</param>
    /// <param name="compliance">C, m³/Pa.</param>
    /// <param name="outPressure">Pressure behind R2, Pa.</param>
    /// <param name="initialPressure">Pressure on C at the start, Pa.</param>
    /// <param name="restVolume">Blood in the store when C carries no pressure, m³; null for what C would hold at 2 kPa.</param>
    /// <exception cref="InputFaultException">A number outside its range.</exception>
    public Windkessel(double proximal, double distal, double compliance, double outPressure, double initialPressure, double? restVolume = null)
    {
        this.proximal = Require.InRange(proximal, 0, 1e15, "windkessel.R1 (Pa·s/m³)", "Zero or more.");
        this.distal = Require.InRange(distal, 1, 1e15, "windkessel.R2 (Pa·s/m³)", "More than zero.");
        this.compliance = Require.InRange(compliance, 1e-18, 1e-3, "windkessel.C (m³/Pa)", "Use a resistance where there is no compliance.");
        this.outPressure = Require.InRange(outPressure, -1e5, 1e5, "windkessel.outPressure (Pa)", "Check the unit.");
        Pressure = Require.InRange(initialPressure, -1e5, 1e5, "windkessel.initialPressure (Pa)", "Check the unit.");
        this.restVolume = Require.InRange(restVolume ?? (2000 * compliance), 0, 1, "windkessel.restVolume (m³)", "Zero or more.");
    }

    /// <summary>Pressure on the compliance, Pa.</summary>
    public double Pressure { get; private set; }

    /// <inheritdoc/>
    public double StoredVolume => restVolume + (compliance * (Pressure - outPressure));

    /// <inheritdoc/>
    public double OnwardFlow { get; private set; }

    /// <inheritdoc/>
    public double FlowOut(in VesselEnd end, double time, double timeStep)
    {
        double half = timeStep / (2 * compliance);
        double weight = 1 / (1 + (half / distal));
        double flow = end.FlowInto(weight * (Pressure + (half * outPressure / distal)), proximal + (weight * half));
        double middle = weight * (Pressure + (half * (flow + (outPressure / distal))));
        OnwardFlow = (middle - outPressure) / distal;
        Pressure = (2 * middle) - Pressure;
        return flow;
    }
}
