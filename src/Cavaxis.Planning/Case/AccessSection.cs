namespace Cavaxis.Planning.Case;

/// <summary>How the vessels are to be entered, where the person has decided it.</summary>
public sealed record AccessSection
{
    /// <summary>Where on the neck the jugular vein is entered.</summary>
    [Meaning("Where on the neck the jugular vein is entered.")]
    public NeckEntryHeight NeckEntry { get; init; }

    /// <summary>Length of the cannula left outside the skin for fixing, mm.</summary>
    [Meaning("Length of the cannula left outside the skin for fixing, mm.")]
    [Number(0, 150, "mm", UsualSd = 5)]
    public Measurement? LengthOutsideMm { get; init; }
}
