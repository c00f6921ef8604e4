using Cavaxis.Planning.Plans;

namespace Cavaxis.Planning.Insertion;

/// <summary>Plans whose wires and cannulae were tried.</summary>
/// <param name="Planning">The planning result with a glance on each plan that was tried, and the predicted pitfalls at the steps of the chosen one.</param>
/// <param name="Chosen">The study of the chosen plan, with its paths; null where there is no plan.</param>
public sealed record TriedPlans(PlanningResult Planning, InsertionResult? Chosen);
