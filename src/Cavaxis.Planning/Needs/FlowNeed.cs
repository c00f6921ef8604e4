using Cavaxis.Quantities;

namespace Cavaxis.Planning.Needs;

/// <summary>The pump flow that a configuration is sized for.</summary>
/// <param name="FlowLPerMin">Flow with its uncertainty.</param>
/// <param name="Reason">Which need set it, in words with numbers.</param>
/// <param name="Candidates">Every need that was considered.</param>
public sealed record FlowNeed(Estimate FlowLPerMin, string Reason, IReadOnlyList<FlowCandidate> Candidates);
