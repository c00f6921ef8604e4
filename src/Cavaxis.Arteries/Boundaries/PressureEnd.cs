namespace Cavaxis.Arteries.Boundaries;

/// <summary>A pressure given over time at an end.</summary>
/// <param name="pressure">Pressure at a time (s), Pa; must not allocate.</param>
public sealed class PressureEnd(Func<double, double> pressure) : IEndCondition
{
    /// <inheritdoc/>
    public double StoredVolume => 0;

    /// <inheritdoc/>
    public double OnwardFlow => 0;

    /// <inheritdoc/>
    public double FlowOut(in VesselEnd end, double time, double timeStep) => end.FlowAtPressure(pressure(time + (0.5 * timeStep)));
}
