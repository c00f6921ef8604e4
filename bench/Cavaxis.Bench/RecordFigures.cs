using System.Diagnostics;
using Cavaxis.Records.Chain;
using Cavaxis.Records.Engines;
using Cavaxis.Records.Events;
using Cavaxis.Records.Keeping;
using Cavaxis.Records.Store;

namespace Cavaxis.Bench;

/// <summary>The store of records with many invented observations: filling, one patient's trend, checking the whole chain, a backup.</summary>
internal static class RecordFigures
{
    private const int Patients = 50;
    private const int Kinds = 8;
    private const int Days = 60;
    private static readonly Identifier Who = Identifier.Of("bench");
    private static readonly DateTimeOffset Start = new(2031, 1, 1, 0, 0, 0, TimeSpan.Zero);

    /// <summary>Fills a store and prints what it takes.</summary>
    /// <param name="clock">The clock.</param>
    /// <param name="observations">So many in all, over 50 patients, eight kinds and 60 days.</param>
    /// <param name="setting">Where; null for a SQLite file in the folder for temporary files.</param>
    public static async Task PrintAsync(Clock clock, int observations, string? setting)
    {
        string folder = Directory.CreateTempSubdirectory("cavaxis-bench-").FullName;
        try
        {
            StoreAddress address = StoreAddress.Of(setting ?? Path.Combine(folder, "records.db"));
            using EventStore store = await EventStore.OpenAsync(address, TimeProvider.System);
            FigureTable table = new($"Records, {address.Engine}, {observations} observations", "work", "events", "wall ms", "median ms", "processor ms", "us of processor for each");
            Add(table, "fill, 1000 in a request", observations, await OnceAsync(() => FillAsync(store, observations)));

            DateTimeOffset from = Start.AddDays(Days - 30);
            Measure("trend of 30 days, one kind", new StreamQuery(Patient(7), 0, Kind(3), from));
            Measure("all of 30 days, eight kinds", new StreamQuery(Patient(7), 0, null, from));
            Measure("whole record of a patient", new StreamQuery(Patient(7)));

            Timing one = clock.Measure(() => store.AppendAsync(new AppendRequest(Patient(1), null, Who, Draft(1, Start))).GetAwaiter().GetResult());
            Add(table, "append of one", 1, one);
            ChainReport? report = null;
            Timing verify = await OnceAsync(async () => report = await StoreVerifier.VerifyAsync(address));
            Add(table, report!.IsWhole ? "verify" : "verify: BROKEN", report.Intact.Position, verify);
            Add(table, "backup", report.Intact.Position, await OnceAsync(() => StoreBackup.BackUpAsync(address, Path.Combine(folder, "backup.db"), TimeProvider.System)));
            table.Print();
            Console.WriteLine(FormattableString.Invariant($"Backup file: {new FileInfo(Path.Combine(folder, "backup.db")).Length / 1e6:F0} MB"));

            void Measure(string work, StreamQuery query)
            {
                int events = 0;
                Timing t = clock.Measure(() => events = store.ReadAsync(query).GetAwaiter().GetResult().Events.Count);
                Add(table, work, events, t);
            }
        }
        finally
        {
            Directory.Delete(folder, true);
        }
    }

    private static void Add(FigureTable table, string work, long events, Timing t) =>
        table.Add($"{work}", $"{events}", $"{t.WallMs:F1}", $"{t.MedianMs:F1}", $"{t.ProcessorMs:F1}", $"{t.ProcessorMs * 1e3 / Math.Max(1, events):F1}");

    /// <summary>Measures what is too long to repeat.</summary>
    private static async Task<Timing> OnceAsync(Func<Task> work)
    {
        TimeSpan busy = Environment.CpuUsage.TotalTime;
        Stopwatch watch = Stopwatch.StartNew();
        await work();
        return new Timing(watch.Elapsed.TotalMilliseconds, watch.Elapsed.TotalMilliseconds, (Environment.CpuUsage.TotalTime - busy).TotalMilliseconds, 0, 1);
    }

    private static StreamName Patient(int number) => StreamName.Of(FormattableString.Invariant($"patient/invented-{number}"));

    private static EventKind Kind(int number) => EventKind.Of($"observation.{(char)('a' + number)}");

    private static EventDraft Draft(int number, DateTimeOffset at) => new(
        Kind(number % Kinds), CanonicalJson.Of(FormattableString.Invariant($"{{\"invented\":true,\"note\":\"\",\"site\":\"return\",\"value\":{50 + (number % 400 / 10.0)}}}")), at);

    private static async Task FillAsync(EventStore store, int observations)
    {
        const int Together = 1000;
        int each = observations / Patients;
        for (int first = 0; first < each; first += Together)
        {
            for (int patient = 0; patient < Patients; patient++)
            {
                await store.AppendAsync(new AppendRequest(Patient(patient), null, Who, [.. Enumerable.Range(first, Math.Min(Together, each - first))
                    .Select(n => Draft(n, Start.AddDays(n * (double)Days / each)))]));
            }
        }
    }
}
