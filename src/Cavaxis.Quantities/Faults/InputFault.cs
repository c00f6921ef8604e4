using System.Globalization;

namespace Cavaxis.Quantities.Faults;

/// <summary>One thing wrong with an input, told so that the person can mend it.</summary>
/// <param name="Code">Stable kind of fault.</param>
/// <param name="Field">Path of the field, such as <c>patient.heightCm</c>; the file name where the whole file is meant.</param>
/// <param name="Value">The value found, shortened, or "(nothing)".</param>
/// <param name="Accepted">What is accepted, with unit and bounds.</param>
/// <param name="Remedy">What to do about it.</param>
/// <param name="Line">Line in the file, from 1, where known.</param>
/// <param name="Column">Column in the line, from 1, where known.</param>
public sealed record InputFault(
    FaultCode Code, string Field, string Value, string Accepted, string Remedy, int? Line = null, int? Column = null)
{
    /// <summary>Longest part of a found value that is repeated to the person.</summary>
    public const int LongestShownValue = 60;

    /// <summary>
    /// A found value, shortened and without control or format characters, so that it can neither disturb a terminal nor turn the
    /// order of the line round (right-to-left overrides, zero-width characters, line separators).
    /// </summary>
    /// <param name="value">The text found.</param>
    /// <returns>Printable text of at most <see cref="LongestShownValue"/> characters and an ellipsis.</returns>
    public static string Shown(string value)
    {
        ArgumentNullException.ThrowIfNull(value);
        string head = value.Length <= LongestShownValue ? value : string.Concat(value.AsSpan(0, LongestShownValue), "…");
        return string.Create(head.Length, head, static (target, text) =>
        {
            for (int i = 0; i < text.Length; i++)
            {
                target[i] = IsPrintable(text[i]) ? text[i] : '?';
            }
        });
    }

    private static bool IsPrintable(char letter) => char.GetUnicodeCategory(letter) is not (UnicodeCategory.Control
        or UnicodeCategory.Format
        or UnicodeCategory.LineSeparator
        or UnicodeCategory.ParagraphSeparator
        or UnicodeCategory.Surrogate);

    /// <summary>One line: place, field, value, range and remedy.</summary>
    public override string ToString()
    {
        string place = Line is int line
            ? string.Create(CultureInfo.InvariantCulture, $"line {line}, column {Column ?? 1}: ")
            : string.Empty;
        return $"{place}{Field} is {Value}; accepted: {Accepted}. {Remedy}";
    }
}
