namespace Cavaxis.Circulation.Solver;

/// <summary>What a run cost.</summary>
/// <param name="Steps">Accepted steps of all patients.</param>
/// <param name="Rejected">Rejected steps.</param>
/// <param name="Evaluations">Evaluations of the equations; one serves a whole row.</param>
/// <param name="Events">Valve events located.</param>
internal readonly record struct SolverCounts(long Steps, long Rejected, long Evaluations, long Events);
