using Cavaxis.Quantities;

namespace Cavaxis.Course.RunSheets;

/// <summary>What a programme asks for at hard stops, with its reason. A programme may change it; who did and why then stands in the programme's own record.</summary>
/// <param name="TwoPersonHardStops">Whether a second person, not the one who writes, must have seen the evidence of a hard stop.</param>
/// <param name="Rationale">Why, in a sentence for the people who ask.</param>
/// <param name="Source">Where the rule comes from.</param>
public sealed record ProgrammeRules(bool TwoPersonHardStops, string Rationale, Source Source)
{
    /// <summary>Two persons at every hard stop: what holds where a programme has said nothing.</summary>
    public static ProgrammeRules Usual { get; } = new(
        true,
        "Whoever holds the wire sees what they expect to see; a second pair of eyes on the image before a step that cannot be undone costs a sentence.",
        new Source("common practice, no source", Certainty.CommonPractice));

    /// <summary>One person suffices, as a programme may decide for its own rooms.</summary>
    /// <param name="reason">Why the programme does without the second person.</param>
    /// <returns>The rules.</returns>
    public static ProgrammeRules OnePerson(string reason) => new(false, reason, new Source("decision of the programme", Certainty.Assumption));
}
