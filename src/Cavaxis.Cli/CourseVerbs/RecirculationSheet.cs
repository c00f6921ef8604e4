using System.Globalization;
using Cavaxis.Bedside.Courses;
using Cavaxis.Course.GasExchange;
using Cavaxis.Quantities;

namespace Cavaxis.Cli.CourseVerbs;

/// <summary>Recirculation by every method, with its error.</summary>
internal static class RecirculationSheet
{
    /// <summary>What is shown.</summary>
    /// <param name="found">By readings of the record; null where there are none.</param>
    /// <param name="injected">By areas that were given with the verb; null where none were.</param>
    /// <returns>What is shown.</returns>
    public static Shown Of(RunningRecirculation? found, RecirculationMeasurement? injected)
    {
        List<string> lines = found is null && injected is null ? ["Recirculation cannot be told: nothing of the circuit was read in the last 6 h."] : [];
        foreach (RecirculationMeasurement one in new[] { found?.BySaturation, found?.ByContent, found?.Corrected, found?.ByDilution, injected }.OfType<RecirculationMeasurement>())
        {
            lines.Add(one.Percent is Estimate percent ? $"{one.Words} ({CourseWords.Number(percent, "%", "0")})" : one.Words);
            lines.AddRange(one.Cautions.Select(static c => $"     {c}"));
        }

        if (found is { Missing.Count: > 0 })
        {
            lines.Add($"By blood gases it cannot be told: not read within 1 h of each other in the last 6 h: {string.Join(", ", found.Missing)}.");
        }

        lines.AddRange(found?.Used.Select(static r => $"  used: {CourseWords.Of(r)}") ?? []);
        if (found?.BySaturation is not null)
        {
            lines.Add(string.Create(CultureInfo.InvariantCulture, $"  sources: {string.Join("; ", BloodGasRecirculation.Sources.Select(static s => s.ToString()))}."));
        }

        lines.Add(CourseWords.Caution);
        return new Shown(new { caution = CourseWords.Caution, byReadings = found, byInjections = injected }, lines);
    }
}
