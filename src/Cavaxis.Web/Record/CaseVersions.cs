using System.Collections.Concurrent;
using Cavaxis.Records.Events;
using Cavaxis.Records.Patients;
using Cavaxis.Records.Store;
using Cavaxis.Web.Shelf;

namespace Cavaxis.Web.Record;

/// <summary>Versions of all cases, read once; a patient's further events are read on when they are asked for. Knows no person: whoever asks has been admitted before.</summary>
/// <param name="store">Where the events are.</param>
public sealed class CaseVersions(IEventStore store)
{
    private readonly ConcurrentDictionary<string, PatientCases> read = new(StringComparer.Ordinal);

    /// <summary>Told of each new version that this process saved: patient and number. May come on any thread.</summary>
    public event Action<string, long>? Changed;

    /// <summary>The versions of a patient as they are now.</summary>
    /// <param name="patient">The patient.</param>
    /// <returns>The versions.</returns>
    /// <exception cref="Records.Faults.StoreFaultException">The store cannot be read.</exception>
    /// <exception cref="Quantities.Faults.InputFaultException">An event does not hold.</exception>
    public async Task<PatientCases> OfAsync(Identifier patient)
    {
        ArgumentNullException.ThrowIfNull(patient);
        PatientCases before = read.GetValueOrDefault(patient.Text, PatientCases.None);
        StreamReading reading = await store.ReadAsync(new StreamQuery(StreamOf(patient), before.Version));
        if (reading.Events.Count == 0 && reading.Spoiled.Count == 0)
        {
            return before;
        }

        PatientCases after = before.With(patient.Text, reading);
        return read.AddOrUpdate(patient.Text, after, (_, there) => there.Version > after.Version ? there : after);
    }

    /// <summary>One version.</summary>
    /// <param name="patient">The patient.</param>
    /// <param name="number">Its number.</param>
    /// <returns>The version; null where there is none.</returns>
    /// <exception cref="Records.Faults.StoreFaultException">The store cannot be read.</exception>
    public async Task<CaseVersion?> ReadAsync(Identifier patient, long number)
    {
        PatientCases all = await OfAsync(patient);
        if (number == all.Newest?.Number || number < 1 || number > all.Notes.Count)
        {
            return number == all.Newest?.Number ? all.Newest : null;
        }

        // Versions lie where they were written: from this one to the next there is one event of the kind.
        long sequence = all.Notes[(int)number - 1].Sequence;
        StreamReading reading = await store.ReadAsync(new StreamQuery(StreamOf(patient), sequence - 1, PatientCases.Kind));
        return reading.Events is [RecordedEvent one, ..] && one.Sequence == sequence ? PatientCases.VersionOf(patient.Text, number, one) : null;
    }

    /// <summary>Tells the windows of a new version.</summary>
    internal void Tell(string patient, long number) => Changed?.Invoke(patient, number);

    /// <summary>The stream of a patient.</summary>
    internal static StreamName StreamOf(Identifier patient) => StreamName.In(PatientRecords.Area, patient);
}
