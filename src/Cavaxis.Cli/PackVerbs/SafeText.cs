using Cavaxis.Quantities.Faults;

namespace Cavaxis.Cli.PackVerbs;

/// <summary>Text that a stranger wrote, for a terminal.</summary>
internal static class SafeText
{
    /// <summary>The text with nothing that steers a terminal or turns the order of a line round.</summary>
    /// <param name="text">The text.</param>
    /// <returns>Printable text on one line.</returns>
    public static string Of(string text) => string.Concat(text.ReplaceLineEndings(" ").Chunk(InputFault.LongestShownValue).Select(static part => InputFault.Shown(new string(part))));
}
