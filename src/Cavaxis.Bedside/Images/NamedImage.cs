using Cavaxis.Bedside.Courses;
using Cavaxis.Course.Events;
using Cavaxis.Records.Events;
using Cavaxis.Records.Faults;
using Cavaxis.Records.Patients;
using Cavaxis.Records.Store;

namespace Cavaxis.Bedside.Images;

/// <summary>An image that a record names as taken in, and which therefore lies beside it.</summary>
/// <param name="Patient">Whose.</param>
/// <param name="Id">Its hash.</param>
public sealed record NamedImage(Identifier Patient, string Id)
{
    /// <summary>Began the finding of such an entry before the record had a field for it; entries of that time stay as they were written.</summary>
    private const string EarlierMark = "Taken in: ";

    /// <summary>Whether with an entry an image was taken in.</summary>
    /// <param name="entry">The entry.</param>
    /// <returns>False for a measurement on an image, and for an examination without one.</returns>
    public static bool IsTakenIn(ImagingDone entry)
    {
        ArgumentNullException.ThrowIfNull(entry);
        return entry.Image?.FileSha256 is not null && (entry.IsTakenIn || entry.Finding.StartsWith(EarlierMark, StringComparison.Ordinal));
    }

    /// <summary>All images that a store names, of all programmes; those of withdrawn entries too, for nothing that was saved is lost.</summary>
    /// <param name="store">The store.</param>
    /// <returns>Each once.</returns>
    /// <exception cref="StoreFaultException">The store cannot be read.</exception>
    public static async Task<IReadOnlyList<NamedImage>> AllAsync(IEventStore store)
    {
        ArgumentNullException.ThrowIfNull(store);
        StreamReading read = await store.ReadKindAsync(EventKind.Of(CourseEventTable.Of<ImagingDone>().Text));
        return
        [
            .. read.Events.Where(static e => e.Stream.Area == PatientRecords.Area)
                .SelectMany(static e => EventTranslation.Entries([e]).Entries, static (written, entry) => (written.Stream.Id, Done: entry.Event as ImagingDone))
                .Where(static e => e.Done is not null && IsTakenIn(e.Done))
                .Select(static e => new NamedImage(e.Id, e.Done!.Image!.FileSha256!))
                .Distinct(),
        ];
    }
}
