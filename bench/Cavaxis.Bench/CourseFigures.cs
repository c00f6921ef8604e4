using System.Collections.Immutable;
using System.Diagnostics;
using System.Globalization;
using System.Text;
using Cavaxis.Bedside.Courses;
using Cavaxis.Course.Events;
using Cavaxis.Course.Imports;
using Cavaxis.Course.Observations;
using Cavaxis.Planning.Case;
using Cavaxis.Records.Access;
using Cavaxis.Records.Engines;
using Cavaxis.Records.Events;
using Cavaxis.Records.Patients;
using Cavaxis.Records.Store;

namespace Cavaxis.Bench;

/// <summary>Courses in a record with many invented observations: one patient's trend of 30 days, the list of patients, taking a file in.</summary>
internal static class CourseFigures
{
    private const int Patients = 50;
    private const int Days = 60;
    private const int Together = 1000;
    private const int FileRows = 10_000;
    private static readonly DateTimeOffset Start = new(2024, 1, 1, 0, 0, 0, TimeSpan.Zero);
    private static readonly Identifier Programme = Identifier.Of("bench");
    private static readonly Person Someone = new(
        Identifier.Of("bench"), "Invented", ImmutableSortedDictionary.Create<string, Role>(StringComparer.Ordinal).Add(Programme.Text, Role.Clinician), true, null, 1);

    private static readonly ObservedQuantity[] Kinds =
    [
        ObservedQuantity.PumpFlowLPerMin, ObservedQuantity.PumpSpeedPerMin, ObservedQuantity.SweepLPerMin, ObservedQuantity.InletPressureMmHg,
        ObservedQuantity.RightArmSaturationPercent, ObservedQuantity.MeanArterialPressureMmHg, ObservedQuantity.HeartRatePerMin, ObservedQuantity.LactateMmolPerL,
    ];

    /// <summary>Fills a store and prints.</summary>
    /// <param name="clock">The clock.</param>
    /// <param name="observations">So many in all, over 50 patients, eight quantities and 60 days; one event each.</param>
    /// <param name="setting">Where; null for a SQLite file in the folder for temporary files.</param>
    public static async Task PrintAsync(Clock clock, int observations, string? setting)
    {
        string folder = Directory.CreateTempSubdirectory("cavaxis-bench-").FullName;
        try
        {
            StoreAddress address = StoreAddress.Of(setting ?? Path.Combine(folder, "records.db"));
            using EventStore store = await EventStore.OpenAsync(address, TimeProvider.System);
            CourseRecords courses = new(new PatientRecords(store), TimeProvider.System);
            FigureTable table = new($"Courses, {address.Engine}, {observations} observations, {MachineLoad.Words()}", "work", "readings or lines", "least ms", "median ms");
            Stopwatch filling = Stopwatch.StartNew();
            string[] patients = await FillAsync(store, courses, observations);
            table.Add($"fill", $"{observations}", $"{filling.Elapsed.TotalMilliseconds:F0}", $"{filling.Elapsed.TotalMilliseconds:F0}");

            DateTimeOffset from = Start.AddDays(Days - 30);
            DateTimeOffset before = Start.AddDays(Days);
            Measure("whole course read, trend of 30 days of it", async () =>
                (await courses.ReadAsync(Someone, patients[7])).Value!.Course.Series[ObservedQuantity.InletPressureMmHg].Between(from, before).Count);
            Measure("trend of 30 days read by itself", async () =>
                (await courses.SeriesAsync(Someone, patients[7], ObservedQuantity.InletPressureMmHg, from, before)).Value!.Points.Count);
            Measure("list of patients", async () => (await courses.ListAsync(Someone)).Count);
            Stopwatch import = Stopwatch.StartNew();
            ObservationImport read = ObservationCsv.Read(File(), "invented.csv");
            double parsed = import.Elapsed.TotalMilliseconds;
            _ = await new FileImports(courses).TakeInAsync(Someone, patients[3], read);
            table.Add($"file of {FileRows} rows taken in (read {parsed:F0} ms)", $"{read.Good.Count}", $"{import.Elapsed.TotalMilliseconds:F0}", $"{import.Elapsed.TotalMilliseconds:F0}");
            table.Print();

            void Measure(string work, Func<Task<int>> what)
            {
                int count = 0;
                Timing t = clock.Measure(() => count = what().GetAwaiter().GetResult());
                table.Add($"{work}", $"{count}", $"{t.WallMs:F1}", $"{t.MedianMs:F1}");
            }
        }
        finally
        {
            Directory.Delete(folder, true);
        }
    }

    private static async Task<string[]> FillAsync(EventStore store, CourseRecords courses, int observations)
    {
        const string Case = """{"cavaxisCase":1,"title":"Invented","invented":true,"patient":{"ageYears":40,"sex":"male","heightCm":180,"weightKg":80}}""";
        List<string> patients = [];
        for (int patient = 0; patient < Patients; patient++)
        {
            string id = ((CourseWritten)(await courses.AdmitAsync(Someone, Programme, Case)).Value!).Patient;
            _ = await courses.RecordAsync(Someone, id, null, new CourseWriting(new SupportStarted { Configuration = RunningConfiguration.VvTwoSite }, Start));
            patients.Add(id);
        }

        int each = observations / Patients;
        EventKind kind = EventKind.Of(CourseEventTable.Of<Observed>().Text);
        for (int first = 0; first < each; first += Together)
        {
            foreach (string patient in patients)
            {
                // Straight into the store: the checks of writing are measured with the file, not here.
                await store.AppendAsync(new AppendRequest(StreamName.In(PatientRecords.Area, Identifier.Of(patient)), null, Someone.Id, [.. Enumerable.Range(first, Math.Min(Together, each - first))
                    .Select(n => new EventDraft(kind, Payload(n), Start.AddDays(n * (double)Days / each).AddSeconds(1)))]));
            }
        }

        return [.. patients];
    }

    private static CanonicalJson Payload(int number)
    {
        QuantityDefinition of = QuantityTable.Of(Kinds[number % Kinds.Length]);
        double value = Math.Round(of.Low + ((of.High - of.Low) * (0.5 + (0.2 * Math.Sin(number / 500.0)))), 2);
        return CanonicalJson.Of(CourseEventJson.Write(new Observed { Readings = [Reading.Of(of.Quantity, value)] }));
    }

    private static byte[] File()
    {
        StringBuilder text = new("time," + string.Join(',', Kinds.Select(static k => QuantityTable.Of(k).Key)) + "\n");
        for (int row = 0; row < FileRows; row++)
        {
            text.Append(Start.AddMinutes(row).UtcDateTime.ToString("yyyy-MM-dd'T'HH:mm:ss'Z'", CultureInfo.InvariantCulture))
                .Append(CultureInfo.InvariantCulture, $",{3 + (row % 20 * 0.1):0.0},{3000 + (row % 9)},{4 + (row % 3)},{-60 - (row % 30)},{88 + (row % 9)},{60 + (row % 20)},{80 + (row % 30)},{1 + (row % 20 * 0.1):0.0}\n");
        }

        return Encoding.UTF8.GetBytes(text.ToString());
    }
}
