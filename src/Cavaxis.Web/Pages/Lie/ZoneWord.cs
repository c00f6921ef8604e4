namespace Cavaxis.Web.Pages.Lie;

/// <summary>A probability of lying in a zone as word, shape and name of its pattern: never by colour alone.</summary>
/// <param name="Words">In words.</param>
/// <param name="Shape">A sign that differs in shape.</param>
/// <param name="Key">Name of its style.</param>
internal sealed record ZoneWord(string Words, string Shape, string Key)
{
    /// <summary>From here on a port counts as in its zone; the same share as in printed drawings.</summary>
    public const double Enough = 0.7;

    /// <summary>Below this it counts as out of it.</summary>
    public const double Few = 0.3;

    /// <summary>The word of a probability.</summary>
    /// <param name="probability">0 to 1.</param>
    public static ZoneWord Of(double probability) => probability switch
    {
        >= Enough => new("in its zone", "●", "in"),
        >= Few => new("may miss its zone", "◐", "maybe"),
        _ => new("out of its zone", "○", "out"),
    };
}
