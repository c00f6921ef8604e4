namespace Cavaxis.Arteries.Boundaries;

/// <summary>What stands at one open node.</summary>
/// <param name="Node">Name of the node.</param>
/// <param name="Condition">The condition; not shared with another end or simulation.</param>
/// <param name="Blood">What enters there, for a condition without a store of its own; null where nothing is known: then what the vessel holds at that end.</param>
public sealed record EndSpecification(string Node, IEndCondition Condition, ITracerSource? Blood = null);
