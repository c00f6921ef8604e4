using System.Globalization;
using Cavaxis.Planning.Json;

namespace Cavaxis.Planning.Rules;

/// <summary>Says where a rule book is looser than the built-in one. Tightening is free; loosening is written on every plan.</summary>
public static class RuleBookComparison
{
    /// <summary>The loosened rules.</summary>
    /// <param name="book">The rule book in use.</param>
    /// <returns>One sentence for each; empty for the built-in book and for stricter ones.</returns>
    public static IReadOnlyList<string> Loosened(RuleBook book)
    {
        ArgumentNullException.ThrowIfNull(book);
        RuleBook own = RuleBookReader.BuiltIn;
        if (ReferenceEquals(own, book))
        {
            return [];
        }

        string who = book.ChangedBy is null ? string.Empty : $" (changed by {book.ChangedBy}: {book.ChangeReason})";
        List<string> sentences = [];
        foreach (LimitRule limit in own.Limits)
        {
            double used = book[limit.Name];
            bool looser = limit.Stricter switch
            {
                StricterDirection.Lower => used > limit.Value,
                StricterDirection.Higher => used < limit.Value,
                _ => false,
            };
            if (looser)
            {
                sentences.Add(string.Create(
                    CultureInfo.InvariantCulture, $"limit {JsonName.Of(limit.Name.ToString())} is {used:G6} instead of {limit.Value:G6}{who}"));
            }
        }

        foreach (ZoneRule zone in own.Zones)
        {
            ZoneRule? used = book.Zones.FirstOrDefault(other => other.Id == zone.Id);
            if (used is null || IsWider(used, zone))
            {
                sentences.Add($"zone {zone.Id} is {(used is null ? "missing" : "wider or told by other landmarks")}{who}");
            }
        }

        foreach (FindingRule finding in own.Findings)
        {
            FindingRule? used = book.Findings.FirstOrDefault(other => other.Id == finding.Id);
            if (used is null || used.Grade < finding.Grade)
            {
                sentences.Add($"finding {finding.Id} is {(used is null ? "missing" : $"only a {JsonName.Of(used.Grade.ToString())}")}{who}");
            }
            else if (SpeaksLessOften(used, finding))
            {
                sentences.Add($"finding {finding.Id} asks for another fact or speaks of fewer routes or configurations{who}");
            }
        }

        return sentences;
    }

    private static bool IsWider(ZoneRule used, ZoneRule own) =>
        used.Role != own.Role
        || used.Part != own.Part
        || !string.Equals(used.Port, own.Port, StringComparison.Ordinal)
        || (own.ScalesWithHeight && !used.ScalesWithHeight)
        || used.FromLandmark != own.FromLandmark
        || used.ToLandmark != own.ToLandmark
        || used.FromOffsetMm < own.FromOffsetMm
        || used.ToOffsetMm > own.ToOffsetMm
        || own.Configurations.Except(used.Configurations).Any();

    private static bool SpeaksLessOften(FindingRule used, FindingRule own) =>
        used.Fact != own.Fact
        || used.State != own.State
        || LeavesOut(used.Routes, own.Routes)
        || LeavesOut(used.Configurations, own.Configurations);

    /// <summary>True when a list names fewer than another; an empty list means all.</summary>
    private static bool LeavesOut<T>(IReadOnlyList<T> used, IReadOnlyList<T> own) =>
        used.Count > 0 && (own.Count == 0 || own.Except(used).Any());
}
