using System.Globalization;
using System.Text.RegularExpressions;
using Cavaxis.Circulation.Calibration;
using Cavaxis.Circulation.Signals;
using Cavaxis.Planning.Running;
using Cavaxis.Quantities;

namespace Cavaxis.Web.Pages.WhatIf;

/// <summary>Writes what changed and why, from the computed differences and the rules.</summary>
internal static partial class ReadingWriter
{
    /// <summary>Writes.</summary>
    /// <param name="facts">The result.</param>
    /// <returns>A sentence for each quantity that moves, or one that says that none does.</returns>
    public static IReadOnlyList<ReadingSentence> Write(ReadingFacts facts) => Write(facts, ReadingRules.All);

    /// <summary>Writes by given rules.</summary>
    /// <param name="facts">The result.</param>
    /// <param name="rules">The rules.</param>
    /// <returns>The sentences.</returns>
    public static IReadOnlyList<ReadingSentence> Write(ReadingFacts facts, IReadOnlyList<ReadingRule> rules) =>
        [.. rules.Where(r => r.Applies(facts.Support)).Select(r => One(facts, r)).OfType<ReadingSentence>()];

    /// <summary>A number at a precision that suits its quantity.</summary>
    /// <param name="quantity">Which.</param>
    /// <param name="value">Value.</param>
    /// <returns>Digits with a true minus.</returns>
    public static string Number(CirculationQuantity quantity, double value)
    {
        double least = ReadingTable.IsRead(quantity) ? ReadingTable.LeastOf(quantity) : Math.Abs(value) / 40;
        string text = value.ToString(least >= 0.5 ? "F0" : least >= 0.1 ? "F1" : "F2", CultureInfo.InvariantCulture);
        return text.Trim('-', '0', '.').Length == 0 ? text.TrimStart('-') : text.Replace('-', '−');
    }

    private static ReadingSentence? One(ReadingFacts facts, ReadingRule rule)
    {
        Sense way = facts.WayOf(rule.Quantity);
        if (way is Sense.Same or Sense.Unknown || facts.Row(rule.Quantity) is not { Before: Estimate before, After: Estimate after, Difference: Estimate difference })
        {
            return null;
        }

        ReadingCause? cause = (way == Sense.Up ? rule.Rises : rule.Falls).FirstOrDefault(c => c.Conditions.All(condition => condition.Holds(facts, rule.Quantity)));
        string verb = (way == Sense.Up, facts.IsSure(rule.Quantity)) switch
        {
            (true, true) => "rises",
            (false, true) => "falls",
            (true, false) => "probably rises",
            (false, false) => "probably falls",
        };
        string because = cause is null
            ? "; none of the chains of cause that are looked for holds by itself"
            : " because " + Braces().Replace(cause.Because, m => Values(facts, Enum.Parse<CirculationQuantity>(m.Groups[1].Value)));
        string text = $"{rule.Words} {verb} from {Number(rule.Quantity, before.Value)} to {Number(rule.Quantity, after.Value)}{Unit(rule.Quantity)}"
            + $" (by {Number(rule.Quantity, difference.Low)} to {Number(rule.Quantity, difference.High)} in nine tenths of the patients that fit){because}.";
        return new ReadingSentence(rule.Quantity, text, rule.LookNext, rule.Question, cause is not null);
    }

    private static string Values(ReadingFacts facts, CirculationQuantity quantity)
    {
        QuantityChange row = facts.Row(quantity);
        if (row is not { Before: Estimate before, After: Estimate after })
        {
            return "without a value";
        }

        (string from, string to) = (Number(quantity, before.Value), Number(quantity, after.Value));
        return from == to ? $"{to}{Unit(quantity)} as before" : $"{from} to {to}{Unit(quantity)}";
    }

    private static string Unit(CirculationQuantity quantity) => QuantityWords.UnitOf(quantity) is string unit and not "1" ? " " + unit : string.Empty;

    [GeneratedRegex(@"\{(\w+)\}")]
    private static partial Regex Braces();
}
