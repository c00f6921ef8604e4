using Cavaxis.Circulation.Lanes;

namespace Cavaxis.Circulation.Solver;

/// <summary>Sees every accepted step of a row of patients.</summary>
/// <typeparam name="T">One patient or a row of them.</typeparam>
internal interface IStepWitness<T>
    where T : unmanaged, ILane<T>
{
    /// <summary>A step was taken. The integrator offers its dense output until the next step.</summary>
    /// <param name="integrator">The integrator.</param>
    /// <param name="from">Start of the step of each patient, s; equal to the end where the patient did not move.</param>
    /// <param name="to">End of the step of each patient, s.</param>
    void Step(LaneIntegrator<T> integrator, ReadOnlySpan<double> from, ReadOnlySpan<double> to);
}
