using Cavaxis.Course.Explanations.Knowledge;

namespace Cavaxis.Course.Explanations.Reasoning;

/// <summary>Probability of a cause among those that are known here.</summary>
/// <param name="Cause">Which.</param>
/// <param name="Words">Its words.</param>
/// <param name="Probability">0 to 1; those of a list sum to one.</param>
public sealed record CauseOdds(CauseOfChange Cause, string Words, double Probability);
