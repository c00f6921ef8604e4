using Cavaxis.Arteries.Network;

namespace Cavaxis.Arteries.Boundaries;

/// <summary>A cannula's tip: a flow given over time enters at one place, with blood of its own.</summary>
/// <param name="place">Where.</param>
/// <param name="flowIn">Flow into the artery at a time (s), m³/s; must not allocate.</param>
/// <param name="blood">What the blood carries.</param>
/// <param name="jetArea">Area of the opening along the artery, m²: blood enters with flow / area distally, or proximally where it is negative. Zero for blood that enters crosswise.</param>
public sealed class PointSource(NetworkPlace place, Func<double, double> flowIn, ITracerSource blood, double jetArea = 0) : ISideFlow
{
    /// <inheritdoc/>
    public IReadOnlyList<NetworkPlace> Places { get; } = [place];

    /// <inheritdoc/>
    public ITracerSource? Blood => blood;

    /// <inheritdoc/>
    public double StoreVolume => 0;

    /// <inheritdoc/>
    public double AxialVelocity(int place, double flowIn) => jetArea == 0 ? 0 : flowIn / jetArea;

    /// <inheritdoc/>
    public void Flows(double time, double timeStep, ReadOnlySpan<double> pressures, Span<double> flowsIn) => flowsIn[0] = flowIn(time + (0.5 * timeStep));
}
