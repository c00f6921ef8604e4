namespace Cavaxis.Quantities;

/// <summary>How far a source was opened before its number was used.</summary>
public enum Certainty
{
    /// <summary>The number was read in the source itself, its abstract or its table.</summary>
    Seen,

    /// <summary>The number was read in a page that quotes the source.</summary>
    SeenSecondHand,

    /// <summary>The number follows by arithmetic from numbers that were seen.</summary>
    Derived,

    /// <summary>A closed form, a definition or exact theory.</summary>
    ClosedForm,

    /// <summary>Remembered; the source was not opened.</summary>
    FromMemory,

    /// <summary>A fact of the trade with no source.</summary>
    CommonPractice,

    /// <summary>An assumption of this project, to be overridden by a measurement.</summary>
    Assumption,
}
