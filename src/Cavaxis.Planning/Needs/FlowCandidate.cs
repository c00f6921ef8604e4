using Cavaxis.Quantities;

namespace Cavaxis.Planning.Needs;

/// <summary>One reason for a flow.</summary>
/// <param name="Reason">What asks for it.</param>
/// <param name="FlowLPerMin">The flow it asks for.</param>
/// <param name="Source">Where the rule comes from.</param>
/// <param name="Used">True for the one that set the plan's flow.</param>
public sealed record FlowCandidate(string Reason, double FlowLPerMin, Source Source, bool Used);
