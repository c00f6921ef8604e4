using Cavaxis.Circulation.Calibration;
using Cavaxis.Circulation.Parameters;
using Cavaxis.Circulation.Signals;
using Cavaxis.Quantities;
using Cavaxis.Web.Pages.WhatIf;

namespace Cavaxis.Web.Tests.WhatIf;

/// <summary>Invented results in which chosen quantities move and all others stay.</summary>
internal static class ConditionFacts
{
    private const double Still = 20;

    /// <summary>A result.</summary>
    public static ReadingFacts Of(
        SupportSense sense, IReadOnlyList<ParameterChange> changes, double half, params IReadOnlyList<(CirculationQuantity Quantity, double Before, double After)> moved) =>
        new(sense, changes, [.. Enum.GetValues<CirculationQuantity>().Select(q =>
        {
            (CirculationQuantity _, double before, double after) = moved.LastOrDefault(m => m.Quantity == q) is { Before: not 0 } or { After: not 0 }
                ? moved.Last(m => m.Quantity == q)
                : (q, Still, Still);
            return new QuantityChange(q, Around(before, half), Around(after, half), Around(after - before, after == before ? 0 : half));
        })])
        {
            PresentValues = Enum.GetValues<CirculationParameter>().ToDictionary(static p => p, static _ => 1.0),
        };

    /// <summary>A result in which the conditions of a cause hold, made from their names.</summary>
    public static ReadingFacts Holding(ReadingRule rule, ReadingCause cause, bool rises)
    {
        List<(CirculationQuantity, double, double)> moved = [(rule.Quantity, Still, rises ? 30 : 10)];
        List<ParameterChange> changes = [];
        SupportSense sense = SupportSense.Both;
        foreach (string name in cause.Conditions.Select(static c => c.Name))
        {
            string[] words = name.Split(' ');
            switch (words)
            {
                case ["veno-venous"]: sense = SupportSense.Venous; break;
                case ["return", ..]: break;
                case ["more", string more, ..]: changes.Add(ParameterChange.To(Enum.Parse<CirculationParameter>(more), 2)); break;
                case ["less", string less, ..]: changes.Add(ParameterChange.To(Enum.Parse<CirculationParameter>(less), 0.5)); break;
                case [string up, "up"]: moved.Add((Enum.Parse<CirculationQuantity>(up), Still, 30)); break;
                case [string down, "down"]: moved.Add((Enum.Parse<CirculationQuantity>(down), Still, 10)); break;
                case [string fast, "outpaces", ..]: moved.Add((Enum.Parse<CirculationQuantity>(fast), Still, 30)); break;
                case [_, "not", ..]: break;
                default: throw new ArgumentException($"A condition that is not known here: {name}.", nameof(cause));
            }
        }

        return Of(sense, changes, 0.1, moved);
    }

    private static Estimate Around(double value, double half) => Estimate.WithInterval(value, half, value - half, value + half, Origin.Calculated);
}
