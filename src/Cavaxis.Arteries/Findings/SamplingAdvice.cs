using Cavaxis.Anatomy.Body;

namespace Cavaxis.Arteries.Findings;

/// <summary>Which arm tells most about the blood of heart and brain, and why.</summary>
/// <param name="Arm">The arm to sample and to watch.</param>
/// <param name="InWords">Reason as sentences with numbers.</param>
/// <param name="HandMissesHeart">True where the saturation of that hand exceeds that of the heart muscle by more than three points: the hand cannot warn of it.</param>
public sealed record SamplingAdvice(BodySide Arm, string InWords, bool HandMissesHeart);
