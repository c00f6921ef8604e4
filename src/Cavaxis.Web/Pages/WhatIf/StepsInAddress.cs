using System.Globalization;

namespace Cavaxis.Web.Pages.WhatIf;

/// <summary>Steps of the controls as part of an address, so that another question can go on with the same changes.</summary>
internal static class StepsInAddress
{
    private const int Most = 200;

    /// <summary>Writes the steps.</summary>
    /// <param name="steppers">The controls.</param>
    /// <returns>A query; empty where nothing is changed.</returns>
    public static string Write(IEnumerable<Stepper> steppers)
    {
        string steps = string.Join(',', steppers.Where(static s => s.IsChanged).Select(static s => string.Create(CultureInfo.InvariantCulture, $"{s.Control.Key}:{s.Steps}")));
        return steps.Length == 0 ? string.Empty : $"?steps={Uri.EscapeDataString(steps)}";
    }

    /// <summary>Reads them. An address can hold anything: what is no step is passed over.</summary>
    /// <param name="text">The value of the query; null for none.</param>
    /// <returns>Steps by the key of their control.</returns>
    public static IReadOnlyDictionary<string, int> Read(string? text)
    {
        Dictionary<string, int> steps = [];
        foreach (string part in (text ?? string.Empty).Split(',', StringSplitOptions.RemoveEmptyEntries))
        {
            string[] pair = part.Split(':');
            if (pair.Length == 2 && int.TryParse(pair[1], NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out int count) && Math.Abs(count) <= Most)
            {
                steps[pair[0]] = count;
            }
        }

        return steps;
    }
}
