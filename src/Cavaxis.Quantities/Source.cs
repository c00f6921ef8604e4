namespace Cavaxis.Quantities;

/// <summary>Where a number, an equation or a rule comes from.</summary>
/// <param name="Citation">Authors, year and place of publication, or the reasoning where there is none.</param>
/// <param name="Certainty">How far the source was opened.</param>
public sealed record Source(string Citation, Certainty Certainty)
{
    /// <summary>The citation followed by its certainty in plain words, as reports print it.</summary>
    public override string ToString() => Citation == InWords(Certainty) ? Citation : $"{Citation} ({InWords(Certainty)})";

    /// <summary>The certainty in plain words.</summary>
    /// <param name="certainty">The certainty to name.</param>
    /// <returns>Words for a reader, such as "from memory".</returns>
    public static string InWords(Certainty certainty) => certainty switch
    {
        Certainty.Seen => "seen",
        Certainty.SeenSecondHand => "seen second hand",
        Certainty.Derived => "derived from seen values",
        Certainty.ClosedForm => "closed form",
        Certainty.FromMemory => "from memory",
        Certainty.CommonPractice => "common practice, no source",
        Certainty.Assumption => "assumption of this project",
        _ => throw new ArgumentOutOfRangeException(nameof(certainty), certainty, "Not a certainty."),
    };
}
