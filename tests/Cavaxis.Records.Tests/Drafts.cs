using System.Globalization;
using Cavaxis.Records.Events;
using Cavaxis.Records.Store;

namespace Cavaxis.Records.Tests;

/// <summary>Invented events.</summary>
public static class Drafts
{
    public static Identifier Anna { get; } = Identifier.Of("anna");

    public static StreamName Patient(int number) => StreamName.Of(string.Create(CultureInfo.InvariantCulture, $"patient/p{number}"));

    public static EventDraft Observation(double value, DateTimeOffset? at = null, long? corrects = null) => new(
        EventKind.Of("observation.saturation"), CanonicalJson.Of(string.Create(CultureInfo.InvariantCulture, $"{{\"invented\":true,\"saturationPercent\":{value}}}")), at, corrects);

    public static AppendRequest To(int patient, long? expected, params EventDraft[] drafts) => new(Patient(patient), expected, Anna, drafts);

    /// <summary>A few patients' events, written one request after the other.</summary>
    public static async Task FillAsync(this IEventStore store, int events, int patients = 3)
    {
        for (int i = 0; i < events; i++)
        {
            Assert.IsType<Appended>(await store.AppendAsync(To(i % patients, null, Observation(50 + (i % 50)))));
        }
    }
}
