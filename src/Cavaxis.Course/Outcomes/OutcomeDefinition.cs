namespace Cavaxis.Course.Outcomes;

/// <summary>What an outcome means and of whom it is counted.</summary>
/// <param name="Kind">Which.</param>
/// <param name="Words">Lower-case words.</param>
/// <param name="AppliesTo">Kinds of support that can have it.</param>
/// <param name="IsGood">True when more of it is better.</param>
/// <param name="Note">What has to be known to read its share; may be empty.</param>
public sealed record OutcomeDefinition(CountedOutcome Kind, string Words, IReadOnlyList<SupportKind> AppliesTo, bool IsGood, string Note);
