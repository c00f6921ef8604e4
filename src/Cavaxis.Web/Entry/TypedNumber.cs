using System.Globalization;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using Cavaxis.Planning.Json;
using Cavaxis.Quantities;

namespace Cavaxis.Web.Entry;

/// <summary>
/// Reads what a person types into a number field: a number, with its error after ± or +-, with a unit after it where that is another than
/// the field's, or a question mark for not known. What it cannot read it hands on as text, for the case reader to name the fault.
/// </summary>
public static partial class TypedNumber
{
    /// <summary>Factor from a unit that may be typed to the unit of a field. 1 cmH2O = 98.0665 Pa and 1 mmHg = 133.322387415 Pa (ISO 80000-4).</summary>
    private static readonly Dictionary<(string Field, string Typed), double> Factors = new()
    {
        [("mm", "cm")] = 10,
        [("cm", "mm")] = 0.1,
        [("cm", "m")] = 100,
        [("kg", "g")] = 0.001,
        [("mmHg", "kPa")] = 1000 / UnitFactors.PascalsPerMmHg,
        [("mmHg", "cmH2O")] = 98.0665 / UnitFactors.PascalsPerMmHg,
        [("cmH2O", "mmHg")] = UnitFactors.PascalsPerMmHg / 98.0665,
        [("cmH2O", "mbar")] = 100 / 98.0665,
        [("g/dL", "g/L")] = 0.1,
        [("mL/min", "L/min")] = 1000,
        [("L/min", "mL/min")] = 0.001,
        [("mL", "L")] = 1000,
        [("", "%")] = 0.01,
        [("years", "months")] = 1.0 / 12,
        [("years", "weeks")] = 7 / 365.25,
        [("years", "days")] = 1 / 365.25,
    };

    /// <summary>Reads what was typed.</summary>
    /// <param name="text">The text.</param>
    /// <param name="unit">Unit of the field as it is written at the bedside.</param>
    /// <param name="withError">True where the field takes an error.</param>
    /// <returns>What is to be saved; null for an empty field.</returns>
    public static JsonNode? Read(string text, string unit, bool withError)
    {
        string trimmed = text.Trim();
        if (trimmed.Length == 0)
        {
            return null;
        }

        if (trimmed is "?" || trimmed.Equals(JsonName.Unknown, StringComparison.OrdinalIgnoreCase) || trimmed.Equals("not known", StringComparison.OrdinalIgnoreCase))
        {
            return JsonValue.Create(JsonName.Unknown);
        }

        Match match = Typed().Match(trimmed);
        if (!match.Success || FactorOf(match.Groups["unit"].Value, unit) is not double factor || Number(match.Groups["value"].Value) is not double value)
        {
            return JsonValue.Create(trimmed);
        }

        if (!match.Groups["sd"].Success)
        {
            return JsonValue.Create(Tidy(value * factor));
        }

        return withError && Number(match.Groups["sd"].Value) is double sd
            ? new JsonObject { ["value"] = Tidy(value * factor), ["sd"] = Tidy(sd * Math.Abs(factor)) }
            : JsonValue.Create(trimmed);
    }

    /// <summary>A saved value as it is shown in the field.</summary>
    /// <param name="saved">The value; null for none.</param>
    /// <returns>Text; empty for none and for not known.</returns>
    public static string Show(JsonNode? saved) => saved switch
    {
        null => string.Empty,
        JsonValue word when word.TryGetValue(out string? text) => text == JsonName.Unknown ? string.Empty : text,
        JsonValue number => number.ToJsonString(),
        JsonObject pair when pair["value"] is JsonNode value => pair["sd"] is JsonNode sd ? $"{value.ToJsonString()} ± {sd.ToJsonString()}" : value.ToJsonString(),
        _ => saved.ToJsonString(),
    };

    private static double? FactorOf(string typed, string unit)
    {
        if (typed.Length == 0 || Same(typed, unit))
        {
            return 1;
        }

        foreach (((string field, string other), double factor) in Factors)
        {
            if (field == unit && Same(typed, other))
            {
                return factor;
            }
        }

        return null;
    }

    private static bool Same(string typed, string unit) => typed.Replace(" ", string.Empty, StringComparison.Ordinal).Equals(unit, StringComparison.OrdinalIgnoreCase);

    /// <summary>A comma is taken for the decimal sign: numbers with thousands do not occur, and the field shows what was understood.</summary>
    private static double? Number(string text) =>
        double.TryParse(text.Replace(',', '.'), NumberStyles.Float, CultureInfo.InvariantCulture, out double value) && double.IsFinite(value) ? value : null;

    /// <summary>Drops the digits that a change of unit leaves behind.</summary>
    private static double Tidy(double value) => value == 0 ? 0 : double.Parse(value.ToString("G10", CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);

    [GeneratedRegex(@"^(?<value>[+-]?\d+([.,]\d+)?)\s*((±|\+/?-)\s*(?<sd>\d+([.,]\d+)?)\s*)?(?<unit>[%°A-Za-z/²]([A-Za-z0-9/²\s]*)?)?$", RegexOptions.CultureInvariant)]
    private static partial Regex Typed();
}
