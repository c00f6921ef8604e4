using System.Text.Json.Nodes;
using Cavaxis.Bedside.Courses;
using Cavaxis.Course.Observations;
using Cavaxis.Planning.Json;
using Cavaxis.Web.CaseTexts;
using Cavaxis.Web.Entry;

namespace Cavaxis.Web.Pages.Run;

/// <summary>Readings of the course as fields of the case, to which the circulation is fitted.</summary>
internal static class CaseReadings
{
    /// <summary>Sections of the case in which a reading may have a field of its own name.</summary>
    private static readonly string[] Sections = ["observations", "running", "blood", "ventilation"];

    /// <summary>Readings whose field is named otherwise.</summary>
    private static readonly Dictionary<ObservedQuantity, string> Named = new()
    {
        [ObservedQuantity.PumpFlowLPerMin] = "running.flowLPerMin",
        [ObservedQuantity.PumpSpeedPerMin] = "running.speedPerMin",
        [ObservedQuantity.TemperatureCelsius] = "blood.temperatureC",
        [ObservedQuantity.RespiratoryRatePerMin] = "ventilation.ratePerMin",
        [ObservedQuantity.InspiredOxygenFraction] = "ventilation.inspiredOxygenFraction",
    };

    /// <summary>The case with the readings of now.</summary>
    /// <param name="draft">The case as it stands.</param>
    /// <param name="readings">The readings.</param>
    /// <returns>The case, and in words what changed.</returns>
    public static (CaseDraft Draft, IReadOnlyList<string> Changed) Into(CaseDraft draft, ReadingsAtHand readings)
    {
        List<string> changed = [];
        foreach (ReadingAtHand reading in readings.Read(Enum.GetValues<ObservedQuantity>()))
        {
            if (PathOf(reading.Quantity) is not string path || EntryForm.FieldOf(path) is not EntryField field || field.Path != path)
            {
                continue;
            }

            JsonNode value = field.Shape.Kind == FieldKind.Measurement && reading.SdGiven
                ? new JsonObject { ["value"] = reading.Value, ["sd"] = reading.Sd }
                : JsonValue.Create(reading.Value);
            JsonNode? before = draft.At(path);
            if (TypedNumber.Show(before) != TypedNumber.Show(value))
            {
                draft = draft.With(path, value);
                changed.Add(before is null ? $"{reading.Words} {TypedNumber.Show(value)}" : $"{reading.Words} {TypedNumber.Show(value)} (was {TypedNumber.Show(before)})");
            }
        }

        return (draft, changed);
    }

    private static string? PathOf(ObservedQuantity quantity) => Named.GetValueOrDefault(quantity)
        ?? Sections.Select(section => $"{section}.{JsonName.Of(quantity.ToString())}").FirstOrDefault(static path => EntryForm.FieldOf(path)?.Path == path);
}
