using System.Globalization;
using Cavaxis.Imaging.Calibration;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Cli.ImageVerbs;

/// <summary>Numbers and points as typed.</summary>
internal static class OptionNumbers
{
    private static readonly char[] BetweenPoints = [' ', ';'];

    /// <summary>A number, or null where none was given.</summary>
    /// <param name="option">Name of the option.</param>
    /// <param name="text">What was typed.</param>
    /// <returns>The number.</returns>
    /// <exception cref="InputFaultException">It is none.</exception>
    public static double? Number(string option, string? text) =>
        text is null ? null
        : double.TryParse(text, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double value) && double.IsFinite(value) ? value
        : throw Refused(option, text, "a number with a point for decimals", "Type the number alone, in the unit of the option's name.");

    /// <summary>A whole number from 1.</summary>
    /// <param name="option">Name of the option.</param>
    /// <param name="text">What was typed.</param>
    /// <param name="most">Largest accepted.</param>
    /// <returns>The number.</returns>
    /// <exception cref="InputFaultException">It is none, or larger.</exception>
    public static int Whole(string option, string text, int most) =>
        int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out int value) && value >= 1 && value <= most
            ? value
            : throw Refused(option, text, string.Create(CultureInfo.InvariantCulture, $"a whole number from 1 to {most}"), "Counted from 1.");

    /// <summary>Two numbers with a character between them.</summary>
    /// <param name="option">Name of the option.</param>
    /// <param name="text">What was typed.</param>
    /// <param name="between">Comma or equals sign.</param>
    /// <returns>Both.</returns>
    /// <exception cref="InputFaultException">They are none.</exception>
    public static (double First, double Second) Pair(string option, string text, char between)
    {
        string[] parts = text.Split(between);
        return parts.Length == 2 && Number(option, parts[0]) is double first && Number(option, parts[1]) is double second
            ? (first, second)
            : throw Refused(option, text, $"two numbers with {between} between them", "Such as 120.5,88 for a point: column, then row.");
    }

    /// <summary>Points, each a text of its own or several in one text.</summary>
    /// <param name="option">Name of the option.</param>
    /// <param name="texts">What was typed.</param>
    /// <returns>The points.</returns>
    /// <exception cref="InputFaultException">One is none.</exception>
    public static PixelPoint[] Points(string option, IEnumerable<string> texts) =>
    [
        .. texts.SelectMany(static text => text.Split(BetweenPoints, StringSplitOptions.RemoveEmptyEntries)).Select(text =>
        {
            (double x, double y) = Pair(option, text, ',');
            return new PixelPoint(x, y);
        }),
    ];

    /// <summary>The refusal of an option.</summary>
    /// <param name="option">Name of the option.</param>
    /// <param name="text">What was typed.</param>
    /// <param name="accepted">What is accepted.</param>
    /// <param name="remedy">What to do.</param>
    /// <returns>The exception.</returns>
    public static InputFaultException Refused(string option, string text, string accepted, string remedy) =>
        new(new InputFault(FaultCode.BadOption, option, InputFault.Shown(text), accepted, remedy));
}
