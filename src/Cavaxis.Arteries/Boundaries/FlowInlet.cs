namespace Cavaxis.Arteries.Boundaries;

/// <summary>A flow given over time that enters the network, whatever the pressure.</summary>
/// <param name="flowIn">Flow into the network at a time (s), m³/s; must not allocate.</param>
public sealed class FlowInlet(Func<double, double> flowIn) : IEndCondition
{
    /// <inheritdoc/>
    public double StoredVolume => 0;

    /// <inheritdoc/>
    public double OnwardFlow => 0;

    /// <inheritdoc/>
    public double FlowOut(in VesselEnd end, double time, double timeStep) => -flowIn(time + (0.5 * timeStep));
}
