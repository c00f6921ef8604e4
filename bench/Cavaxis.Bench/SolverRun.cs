namespace Cavaxis.Bench;

/// <summary>One integration of a patient.</summary>
/// <param name="Ms">Processor time of the integration, ms: unlike wall time it does not count what else the machine does meanwhile.</param>
/// <param name="Evaluations">Evaluations of the equations; one serves a whole row.</param>
/// <param name="State">State at the end, of the first patient of a row.</param>
internal sealed record SolverRun(double Ms, long Evaluations, double[] State);
