namespace Cavaxis.Arteries.Boundaries;

/// <summary>An end from which nothing comes back: as if the vessel went on, at rest at one pressure, for ever.</summary>
/// <param name="restPressure">That pressure, Pa.</param>
public sealed class NonReflectingEnd(double restPressure) : IEndCondition
{
    /// <inheritdoc/>
    public double StoredVolume => 0;

    /// <inheritdoc/>
    public double OnwardFlow => 0;

    /// <inheritdoc/>
    public double FlowOut(in VesselEnd end, double time, double timeStep)
    {
        // The invariant that comes from outside, U − 4c, is that of rest; with the one that arrives it fixes the wave speed.
        double rest = end.WaveSpeedAt(end.AreaAtPressure(restPressure));
        double here = end.WaveSpeedAt(end.Area);
        double speed = (end.VelocityOut + (4 * here) + (4 * rest)) / 8;
        double ratio = speed / here;
        double area = end.Area * ratio * ratio * ratio * ratio;
        return area * end.VelocityAt(area);
    }
}
