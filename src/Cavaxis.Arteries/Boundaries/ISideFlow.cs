using Cavaxis.Arteries.Network;

namespace Cavaxis.Arteries.Boundaries;

/// <summary>
/// What gives or takes blood at places inside the network: a pump's cannula, a side tube, a tube between two arteries. It is asked once in
/// each time step, answers with the flows, and moves its own state on by that step. An instance serves one simulation.
/// </summary>
public interface ISideFlow
{
    /// <summary>Where it opens into the network.</summary>
    IReadOnlyList<NetworkPlace> Places { get; }

    /// <summary>
    /// The blood that it gives. Null: what it gives comes out of a well-mixed store of its own, filled by what it takes elsewhere; its flows then sum to zero.
    /// </summary>
    ITracerSource? Blood { get; }

    /// <summary>Volume of that store, m³; not asked for where <see cref="Blood"/> is given.</summary>
    double StoreVolume { get; }

    /// <summary>Velocity along the artery (positive distally) with which blood enters at a place, m/s.</summary>
    /// <param name="place">Index in <see cref="Places"/>.</param>
    /// <param name="flowIn">Flow into the network there, m³/s.</param>
    /// <returns>Velocity.</returns>
    double AxialVelocity(int place, double flowIn);

    /// <summary>The flows over one step. Must not allocate.</summary>
    /// <param name="time">Start of the step, s.</param>
    /// <param name="timeStep">Length of the step, s.</param>
    /// <param name="pressures">Pressure in the artery at each place at the start of the step, Pa.</param>
    /// <param name="flowsIn">To be filled: mean flow into the network at each place, m³/s; negative flow leaves it.</param>
    void Flows(double time, double timeStep, ReadOnlySpan<double> pressures, Span<double> flowsIn);
}
