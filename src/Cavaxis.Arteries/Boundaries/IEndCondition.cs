namespace Cavaxis.Arteries.Boundaries;

/// <summary>
/// What stands at an open end of the network: a load, a source, or a model with a state of its own such as a heart. It is asked once in each
/// time step, answers with the flow, and moves its own state on by that step. An instance serves one end of one simulation.
/// </summary>
public interface IEndCondition
{
    /// <summary>The flow over one step. Must not allocate.</summary>
    /// <param name="end">The vessel's end in the middle of the step.</param>
    /// <param name="time">Start of the step, s.</param>
    /// <param name="timeStep">Length of the step, s.</param>
    /// <returns>Mean flow out of the network, m³/s; negative flow enters it.</returns>
    double FlowOut(in VesselEnd end, double time, double timeStep);

    /// <summary>Blood in the store of this end after the last step, m³; zero for an end without a store.</summary>
    double StoredVolume { get; }

    /// <summary>Mean flow over the last step that left the store for good, m³/s. Without a store it is not asked for.</summary>
    double OnwardFlow { get; }
}
