using System.Globalization;
using Cavaxis.Cli.RecordVerbs;
using Cavaxis.Planning.Json;
using Cavaxis.Quantities;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Cli.CourseVerbs;

/// <summary>Reads the texts that verbs of the course take. Each that cannot be used is a fault that names the option.</summary>
internal static class OptionText
{
    private static readonly string[] Moments = ["yyyy-MM-dd'T'HH:mmzzz", "yyyy-MM-dd'T'HH:mm:sszzz", "yyyy-MM-dd'T'HH:mm'Z'", "yyyy-MM-dd'T'HH:mm:ss'Z'"];

    /// <summary>A number with a decimal point.</summary>
    /// <param name="text">As given; null for nothing.</param>
    /// <param name="option">Name of the option.</param>
    /// <param name="unit">Unit in which it is read.</param>
    /// <returns>The number; null for nothing.</returns>
    public static double? Number(string? text, string option, string unit) => text is null ? null : Needed(text, option, unit);

    /// <summary>A number with a decimal point.</summary>
    /// <param name="text">As given.</param>
    /// <param name="option">Name of the option.</param>
    /// <param name="unit">Unit in which it is read.</param>
    /// <returns>The number.</returns>
    public static double Needed(string text, string option, string unit) =>
        double.TryParse(text.Replace('−', '-'), NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double value) && double.IsFinite(value)
            ? value
            : throw Wrong(option, text, unit.Length == 0 ? "a number with a decimal point" : $"a number in {unit} with a decimal point", "Write the number alone, such as 4.2.");

    /// <summary>A number with its error.</summary>
    /// <param name="text">Such as 4.2±0.1; without an error 0 is taken.</param>
    /// <param name="option">Name of the option.</param>
    /// <param name="unit">Unit of both.</param>
    /// <returns>The number as measured.</returns>
    public static Estimate WithError(string text, string option, string unit)
    {
        (double value, double? sd) = Pair(text, option, unit);
        return Estimate.Normal(value, sd ?? 0, Origin.Measured);
    }

    /// <summary>A number and its error where one is given.</summary>
    /// <param name="text">Such as 4.2 or 4.2±0.1.</param>
    /// <param name="option">Name of the option.</param>
    /// <param name="unit">Unit of both.</param>
    /// <returns>Both.</returns>
    public static (double Value, double? Sd) Pair(string text, string option, string unit)
    {
        string[] parts = text.Split('±');
        double? sd = parts.Length == 2 ? Needed(parts[1].Trim(), option, unit) : null;
        return parts.Length <= 2 && !(sd < 0) ? (Needed(parts[0].Trim(), option, unit), sd) : throw Wrong(option, text, $"a number in {unit} with its standard deviation after ±", "Write it such as 4.2±0.1.");
    }

    /// <summary>A whole number.</summary>
    /// <param name="text">As given.</param>
    /// <param name="option">Name of the option.</param>
    /// <param name="low">Lowest.</param>
    /// <param name="high">Highest.</param>
    /// <returns>The number.</returns>
    public static int Whole(string text, string option, int low, int high) =>
        int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out int value) && value >= low && value <= high
            ? value
            : throw Wrong(option, text, string.Create(CultureInfo.InvariantCulture, $"a whole number from {low} to {high}"), "Give such a number.");

    /// <summary>A moment with its offset from UTC.</summary>
    /// <param name="text">As given; null for nothing.</param>
    /// <param name="option">Name of the option.</param>
    /// <returns>The moment; null for nothing.</returns>
    public static DateTimeOffset? Moment(string? text, string option) => text is null ? null
        : DateTimeOffset.TryParseExact(text, Moments, CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal, out DateTimeOffset moment) ? moment
        : throw Wrong(option, text, "date and time with offset from UTC, such as 2031-02-03T04:05+01:00", "Write the date, T, the time and the offset.");

    /// <summary>One of a list of words.</summary>
    /// <typeparam name="T">The list.</typeparam>
    /// <param name="text">As given.</param>
    /// <param name="option">Name of the option.</param>
    /// <returns>What the word stands for.</returns>
    public static T Choice<T>(string text, string option)
        where T : struct, Enum
    {
        int place = JsonName.WordsOf(typeof(T)).ToList().FindIndex(w => string.Equals(w, text, StringComparison.OrdinalIgnoreCase));
        return place >= 0
            ? Enum.GetValues<T>()[place]
            : throw new InputFaultException(new InputFault(FaultCode.NotAChoice, option, InputFault.Shown(text), string.Join(", ", JsonName.WordsOf(typeof(T))), "Give one of these."));
    }

    /// <summary>One of a list of words, where it is given.</summary>
    /// <typeparam name="T">The list.</typeparam>
    /// <param name="text">As given; null for nothing.</param>
    /// <param name="option">Name of the option.</param>
    /// <returns>What the word stands for; null for nothing.</returns>
    public static T? Maybe<T>(string? text, string option)
        where T : struct, Enum => text is null ? null : Choice<T>(text, option);

    /// <summary>One of a list of words that must be given.</summary>
    /// <typeparam name="T">The list.</typeparam>
    /// <param name="text">As given.</param>
    /// <param name="option">Name of the option.</param>
    /// <returns>What the word stands for.</returns>
    public static T Given<T>(string? text, string option)
        where T : struct, Enum => Choice<T>(VerbText.Given(text, option), option);

    /// <summary>A fault of an option.</summary>
    /// <param name="option">Name of the option.</param>
    /// <param name="found">What was given.</param>
    /// <param name="accepted">What is accepted.</param>
    /// <param name="remedy">What to do.</param>
    /// <param name="code">Kind of fault.</param>
    /// <returns>The fault, to be thrown.</returns>
    public static InputFaultException Wrong(string option, string found, string accepted, string remedy, FaultCode code = FaultCode.WrongKind) =>
        new(new InputFault(code, option, InputFault.Shown(found), accepted, remedy));
}
