using System.Globalization;
using System.Text.RegularExpressions;

namespace Cavaxis.Course.Imports;

/// <summary>
/// Cells of a file as faults show them. A text that a spreadsheet would take for a formula, or that is more than a plain word or number, is told by its
/// length alone, so that a list of faults can be copied anywhere.
/// </summary>
internal static partial class CellWords
{
    /// <summary>A cell, shown or told.</summary>
    public static string Shown(string cell) => cell.Length == 0
        ? "(nothing)"
        : Plain().IsMatch(cell) ? cell : string.Create(CultureInfo.InvariantCulture, $"(a text of {cell.Length} characters)");

    [GeneratedRegex(@"\A(-?[0-9]|[A-Za-z])[A-Za-z0-9 .,:_/%+-]{0,39}\z", RegexOptions.CultureInvariant)]
    private static partial Regex Plain();
}
