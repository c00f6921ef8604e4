using Cavaxis.Bedside.Courses;
using Cavaxis.Course.Observations;
using Cavaxis.Quantities;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Cli.CourseVerbs;

/// <summary>Reads readings. Whoever writes one says its unit, so that none is taken for another.</summary>
internal static class ReadingText
{
    /// <summary>Description of options that take readings.</summary>
    public const string Words = "What was read: \"QUANTITY=VALUE UNIT\", such as \"pumpFlowLPerMin=4.2±0.1 L/min\"; may be given several times.";

    /// <summary>One reading of its parts.</summary>
    /// <param name="key">Key of the quantity.</param>
    /// <param name="value">Value, with its standard deviation after ± where it is known.</param>
    /// <param name="unit">Unit.</param>
    /// <param name="option">Where it stands.</param>
    /// <param name="origin">How the number came to be.</param>
    /// <param name="method">How it was read.</param>
    /// <returns>The reading.</returns>
    /// <exception cref="InputFaultException">No such quantity, another unit, no number or out of range.</exception>
    public static Reading Of(string key, string value, string unit, string option, Origin origin = Origin.Measured, string? method = null)
    {
        QuantityDefinition of = QuantityTable.Find(key) ?? throw OptionText.Wrong(
            option, key, "a quantity such as pumpFlowLPerMin; docs/course-verbs.md lists them", Nearest(key), FaultCode.NotAChoice);
        if (unit != of.Unit && unit != of.Ucum)
        {
            throw OptionText.Wrong(option, unit.Length == 0 ? "(no unit)" : unit, of.Unit == of.Ucum ? of.Unit : $"{of.Unit} or {of.Ucum}", $"Give the {of.Words} in that unit.", FaultCode.NotAChoice);
        }

        (double number, double? sd) = OptionText.Pair(value, option, of.Unit);
        return QuantityTable.Check(of.Quantity, number, option) is InputFault fault
            ? throw new InputFaultException(fault)
            : new Reading { Quantity = of.Quantity, Value = number, Sd = sd, Method = ReadingOrigin.MethodOf(origin, method) };
    }

    /// <summary>Readings of options.</summary>
    /// <param name="texts">As given.</param>
    /// <param name="option">Name of the option.</param>
    /// <returns>The readings.</returns>
    /// <exception cref="InputFaultException">Every one that cannot be used.</exception>
    public static IReadOnlyList<Reading> All(IReadOnlyList<string> texts, string option)
    {
        List<Reading> readings = [];
        List<InputFault> faults = [];
        foreach (string text in texts)
        {
            try
            {
                string[] parts = text.Split('=', 2, StringSplitOptions.TrimEntries);
                string[] measure = parts.Length == 2 ? parts[1].Split(' ', 2, StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries) : [];
                readings.Add(measure.Length > 0
                    ? Of(parts[0], measure[0], measure.Length == 2 ? measure[1] : "1", option)
                    : throw OptionText.Wrong(option, text, "QUANTITY=VALUE UNIT", "Write it such as \"pumpFlowLPerMin=4.2 L/min\".", FaultCode.MalformedText));
            }
            catch (InputFaultException wrong)
            {
                faults.AddRange(wrong.Faults);
            }
        }

        return faults.Count == 0 ? readings : throw new InputFaultException(faults);
    }

    private static string Nearest(string key)
    {
        if (key.Length > InputFault.LongestShownValue)
        {
            return "Give one of these.";
        }

        string nearest = QuantityTable.All.Select(static d => d.Key).MinBy(k => EditDistance.Between(k.ToUpperInvariant(), key.ToUpperInvariant()))!;
        return EditDistance.Between(nearest.ToUpperInvariant(), key.ToUpperInvariant()) <= nearest.Length / 3 ? $"Did you mean {nearest}?" : "Give one of these.";
    }
}
