using Cavaxis.Circulation.Calibration;
using Cavaxis.Planning.Running;
using Cavaxis.Quantities;

namespace Cavaxis.Web.Pages.WhatIf;

/// <summary>A row of the table of bands, ready to be drawn.</summary>
/// <param name="Words">What it is.</param>
/// <param name="Unit">Unit.</param>
/// <param name="Before">Median before.</param>
/// <param name="BeforeBand">Interval before.</param>
/// <param name="After">Median after.</param>
/// <param name="AfterBand">Interval after.</param>
/// <param name="Difference">Difference with its interval.</param>
/// <param name="Way">The way in a word: rises, falls, probably, same.</param>
/// <param name="Bars">Places of the two bands in hundredths of the width; null where there are no values.</param>
public sealed record BandRow(
    string Words, string Unit, string Before, string BeforeBand, string After, string AfterBand, string Difference, string Way, BandBars? Bars)
{
    /// <summary>The row of a quantity.</summary>
    /// <param name="row">Its bands.</param>
    /// <param name="facts">The result that it belongs to.</param>
    internal static BandRow Of(QuantityChange row, ReadingFacts facts)
    {
        string words = QuantityWords.Of(row.Quantity);
        string named = char.ToUpperInvariant(words[0]) + words[1..];
        string unit = QuantityWords.UnitOf(row.Quantity) is string u and not "1" ? u : string.Empty;
        if (row is not { Before: Estimate before, After: Estimate after, Difference: Estimate difference })
        {
            return new BandRow(named, unit, "–", string.Empty, "–", string.Empty, "–", $"no value: {QuantityWords.NotDefined(row.Quantity)}", null);
        }

        string Text(double value) => ReadingWriter.Number(row.Quantity, value);
        string Signed(double value) => value > 0 && !Text(value).All(static c => c is '0' or '.') ? "+" + Text(value) : Text(value);
        string way = facts.WayOf(row.Quantity) switch
        {
            Sense.Up => facts.IsSure(row.Quantity) ? "▲ rises" : "△ probably rises",
            Sense.Down => facts.IsSure(row.Quantity) ? "▼ falls" : "▽ probably falls",
            _ => "= hardly changes",
        };
        return new BandRow(
            named, unit, Text(before.Value), $"{Text(before.Low)} to {Text(before.High)}", Text(after.Value), $"{Text(after.Low)} to {Text(after.High)}",
            $"{Signed(difference.Value)} ({Signed(difference.Low)} to {Signed(difference.High)})", way, BandBars.Of(before, after));
    }
}
