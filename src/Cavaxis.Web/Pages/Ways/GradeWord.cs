using Cavaxis.Planning.Rules;

namespace Cavaxis.Web.Pages.Ways;

/// <summary>A grade as word and shape: never by colour alone.</summary>
/// <param name="Words">The word.</param>
/// <param name="Shape">A sign that differs in shape.</param>
/// <param name="Key">Name of its style.</param>
internal sealed record GradeWord(string Words, string Shape, string Key)
{
    /// <summary>The word of a grade.</summary>
    /// <param name="grade">The grade.</param>
    public static GradeWord Of(FindingGrade grade) => grade switch
    {
        FindingGrade.Stop => new("Stop", "■", "stop"),
        FindingGrade.Warning => new("Warning", "▲", "warn"),
        _ => new("Caution", "●", "note"),
    };

    /// <summary>How many there are, such as "1 stop" or "3 cautions".</summary>
    /// <param name="grade">The grade.</param>
    /// <param name="count">How many.</param>
    public static string Counted(FindingGrade grade, int count)
    {
        string word = Of(grade).Words.ToLowerInvariant();
        return string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{count} {word}{(count == 1 ? string.Empty : "s")}");
    }
}
