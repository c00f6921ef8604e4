using System.Globalization;
using Cavaxis.Bedside.Readouts;
using Cavaxis.Course.Patients;
using Cavaxis.Course.Positions;
using Cavaxis.Planning.Plans;
using Cavaxis.Reports.OnePage;

namespace Cavaxis.Bedside.Sheets;

/// <summary>How long support has run and how it is connected, and where the cannulae lie.</summary>
internal static class SupportSection
{
    /// <summary>The run of support.</summary>
    public static PageSection Support(PatientCourse course, DateTimeOffset now)
    {
        if (course.Runs.Count == 0)
        {
            return new PageSection("Support", [PageRow.Of("No start of support is in this record.")]);
        }

        SupportRun run = course.Runs[^1];
        List<PageRow> rows =
        [
            PageRow.Of(run.Ended is null
                ? string.Create(CultureInfo.InvariantCulture, $"Day {(int)run.Lasted(now).TotalDays + 1} of support, running since {SheetWords.Time(run.Started.OccurredAt)}")
                : $"Support ended {SheetWords.Time(run.Ended.OccurredAt)} ({SheetWords.Name(run.Ended.Event.Reason)}), begun {SheetWords.Time(run.Started.OccurredAt)}", run.Ended is not null),
            PageRow.Of($"Configuration: {SheetWords.Configuration(run.Configuration)}"),
        ];
        (string? pump, string? lung) = Devices(run);
        rows.Add(PageRow.Of($"Pump: {pump ?? "not written down"}; membrane lung: {lung ?? "not written down"}"));
        if (run.Changes.Count > 0)
        {
            rows.Add(PageRow.Of($"Last change {SheetWords.Time(run.Changes[^1].OccurredAt)}{SheetWords.After(run.Changes[^1].Event.Reason)} ({run.Changes.Count} in all)"));
        }

        if (course.Runs.Count > 1)
        {
            rows.Add(PageRow.Of(string.Create(CultureInfo.InvariantCulture, $"Earlier runs of support: {course.Runs.Count - 1}")));
        }

        return new PageSection("Support", rows) { Least = 2 };
    }

    /// <summary>The cannulae that lie, each with its last confirmed position, and what to be warned of.</summary>
    public static PageSection Cannulae(PatientCourse course)
    {
        PositionReview[] reviews = [.. course.CannulaeIn.Select(PositionReview.Of)];
        List<PageRow> rows = [];
        foreach (PositionReview review in reviews)
        {
            // A cannula that no image shows says so in its own row.
            rows.Add(PageRow.Of(Words(review), review.LastImaged is null));
            rows.AddRange(review.Warnings.Where(_ => review.LastImaged is not null).Select(static w => PageRow.Of(w.Text, true)));
        }

        if (rows.Count == 0)
        {
            rows.Add(PageRow.Of("No cannula lies, by this record."));
        }

        return new PageSection("Cannulae", rows) { Least = 3, Elsewhere = "the full report, position log" };
    }

    /// <summary>Pump and membrane lung as last written down.</summary>
    public static (string? Pump, string? MembraneLung) Devices(SupportRun run) => (
        run.Changes.LastOrDefault(static c => c.Event.Pump is not null)?.Event.Pump ?? run.Started.Event.Pump,
        run.Changes.LastOrDefault(static c => c.Event.MembraneLung is not null)?.Event.MembraneLung ?? run.Started.Event.MembraneLung);

    private static string Words(PositionReview review)
    {
        LyingCannula cannula = review.Cannula;
        string size = cannula.Placed.Event.OuterDiameterFrench is double french ? $"{SheetWords.Number(french)} Fr" : "size not written down";
        string depth = cannula.DepthCm is double cm && cannula.DepthAt is DateTimeOffset at ? $"{SheetWords.Number(cm)} cm at the skin ({SheetWords.Short(at)})" : "depth not written down";
        string turn = cannula.TurnDeg is double deg ? $", turned {SheetWords.Number(deg)}°" : string.Empty;
        string seen = review.LastImaged is { } imaged
            ? $"last confirmed {SheetWords.Short(imaged.OccurredAt)} by {SheetWords.Name(imaged.Event.SeenBy)}{SheetWords.After(SheetWords.Places(imaged.Event))}"
            : "NEVER CONFIRMED by an image: where tip and ports lie is not known";
        return $"{cannula.Name} ({PlainWords.Role(cannula.Placed.Event.Role)}): {SheetWords.Entry(cannula.Placed.Event)}, {size}, {depth}{turn}; {seen}";
    }
}
