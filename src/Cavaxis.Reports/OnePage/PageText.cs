using Cavaxis.Reports.Drawings;

namespace Cavaxis.Reports.OnePage;

/// <summary>Text that has to find room. What is cut says so.</summary>
internal static class PageText
{
    /// <summary>Stands where a text was cut.</summary>
    public const string CutSign = " …";

    /// <summary>One line of a text.</summary>
    /// <param name="text">The text.</param>
    /// <param name="width">Room, mm.</param>
    /// <param name="pt">Size of the font.</param>
    /// <param name="bold">Bold face.</param>
    /// <returns>The text, or as much of it as there is room for and the sign.</returns>
    public static string Cut(string text, double width, double pt, bool bold) => Lines(text, width, pt, bold, 1)[0];

    /// <summary>The lines of a text.</summary>
    /// <param name="text">The text.</param>
    /// <param name="width">Room, mm.</param>
    /// <param name="pt">Size of the font.</param>
    /// <param name="bold">Bold face.</param>
    /// <param name="most">Lines that it may take.</param>
    /// <returns>At least one line.</returns>
    public static IReadOnlyList<string> Lines(string text, double width, double pt, bool bold, int most)
    {
        IReadOnlyList<string> all = TextMetrics.Wrapped(PrintableText.OneLine(text), width, pt, bold);
        if (all.Count <= most)
        {
            return all;
        }

        string last = all[most - 1];
        while (last.Length > 0 && TextMetrics.WidthMm(last + CutSign, pt, bold) > width)
        {
            last = last[..^(last.Length > 1 && char.IsLowSurrogate(last[^1]) ? 2 : 1)].TrimEnd();
        }

        return [.. all.Take(most - 1), last + CutSign];
    }
}
