using System.Globalization;

namespace Cavaxis.Course.Imports;

/// <summary>
/// Cells of a file as faults show them. A text that a spreadsheet would take for a formula, or that is more than a plain word or number, is told by its
/// length alone, so that a list of faults can be copied anywhere.
/// </summary>
internal static class CellWords
{
    private const int Longest = 41;

    private const string Between = " .,:_/%+-";

    /// <summary>A cell, shown or told.</summary>
    public static string Shown(string cell) => cell.Length == 0
        ? "(nothing)"
        : IsPlain(cell) ? cell : string.Create(CultureInfo.InvariantCulture, $"(a text of {cell.Length} characters)");

    /// <summary>A letter or number first, a minus before a number alone, then nothing but what words, numbers and times are made of.</summary>
    private static bool IsPlain(string cell)
    {
        int first = cell[0] == '-' ? 1 : 0;
        return cell.Length <= Longest && cell.Length > first
            && (char.IsAsciiDigit(cell[first]) || (first == 0 && char.IsAsciiLetter(cell[0])))
            && cell.AsSpan(first).IndexOfAnyExcept(Allowed) < 0;
    }

    private static System.Buffers.SearchValues<char> Allowed { get; } =
        System.Buffers.SearchValues.Create("ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789" + Between);
}
