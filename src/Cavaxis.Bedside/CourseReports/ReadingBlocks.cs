using System.Globalization;
using Cavaxis.Bedside.Readouts;
using Cavaxis.Course.Events;
using Cavaxis.Course.Observations;
using Cavaxis.Course.Patients;
using Cavaxis.Reports.Charts;
using Cavaxis.Reports.Documents;

namespace Cavaxis.Bedside.CourseReports;

/// <summary>Readings: a line for each quantity, a chart of each course, and every reading that was written by hand.</summary>
internal static class ReadingBlocks
{
    /// <summary>Rows of the table of readings; earlier ones are counted and stay in the record.</summary>
    public const int MostRows = 1_000;

    private const int MostChartPoints = 400;
    private const int FewestForChart = 3;

    /// <summary>The blocks.</summary>
    public static IEnumerable<ReportBlock> Of(PatientCourse course)
    {
        yield return new Heading(2, "Readings and trends");
        if (course.Series.Count == 0)
        {
            yield return new Paragraph("Nothing was read.");
            yield break;
        }

        QuantitySeries[] all = [.. course.Series.Values.OrderBy(static s => s.Quantity)];
        yield return new Table(
            "Each quantity; ± is one standard deviation",
            [new("quantity (unit)"), new("readings", ColumnAlign.Right), new("first", ColumnAlign.Right), new("lowest", ColumnAlign.Right), new("highest", ColumnAlign.Right), new("last", ColumnAlign.Right), new("last read (UTC)"), new("origin")],
            [.. all.Select(static s => (IReadOnlyList<string>)[
                SheetWords.Named(s.Quantity), SheetWords.Number(s.Points.Count), SheetWords.Number(s.Points[0].Value), SheetWords.Number(s.Points.Min(static p => p.Value)), SheetWords.Number(s.Points.Max(static p => p.Value)),
                $"{SheetWords.Number(s.Last.Value)} ± {SheetWords.Number(s.Last.Sd)}", SheetWords.Time(s.Last.At), SheetWords.From(s.Last)])]);
        foreach (QuantitySeries series in all.Where(static s => s.Points.Count >= FewestForChart))
        {
            yield return Chart(series);
        }

        (IReadOnlyList<Logged<Observed>> hand, int hidden) = Hand(course);
        if (hand.Count > 0)
        {
            yield return new Table(
                "Readings written by hand", [new("time (UTC)", Weight: 1.3), new("read", Weight: 6), new("by", Weight: 0.8)],
                [.. hand.Select(static o => (IReadOnlyList<string>)[SheetWords.Time(o.OccurredAt), $"{string.Join(", ", o.Event.Readings.Select(TimelineWords.Of))}{SheetWords.After(o.Event.Remark)}", o.Who])]);
        }

        if (hidden > 0)
        {
            yield return new Paragraph(string.Create(CultureInfo.InvariantCulture, $"+ {hidden} earlier readings in the record (patient show)."));
        }

        if (course.Imports.Count > 0)
        {
            yield return new Table(
                "Files whose readings were taken in", [new("file"), new("rows standing", ColumnAlign.Right), new("rows taken in", ColumnAlign.Right), new("from (UTC)"), new("to (UTC)"), new("SHA-256")],
                [.. course.Imports.Select(static i => (IReadOnlyList<string>)[i.FileName ?? "(no name)", SheetWords.Number(i.RowsStanding), SheetWords.Number(i.RowsDeclared), SheetWords.Time(i.From), SheetWords.Time(i.To), i.FileSha256])]);
        }
    }

    private static (IReadOnlyList<Logged<Observed>> Rows, int Hidden) Hand(PatientCourse course)
    {
        Logged<Observed>[] hand = [.. course.All<Observed>().Where(static o => o.Event.Import is null)];
        return hand.Length <= MostRows ? (hand, 0) : (hand[^MostRows..], hand.Length - MostRows);
    }

    private static Figure Chart(QuantitySeries series)
    {
        QuantityDefinition of = QuantityTable.Of(series.Quantity);
        DateTimeOffset first = series.Points[0].At;
        double hours = (series.Last.At - first).TotalHours;
        (double per, string unit) = hours > 72 ? (24.0, "d") : (1.0, "h");
        SeriesPoint[] drawn = Drawn(series.Points);
        string since = $"since {SheetWords.Time(first)} UTC";
        string words = string.Create(
            CultureInfo.InvariantCulture, $"{of.Words}: {series.Points.Count} readings from {SheetWords.Number(series.Points.Min(static p => p.Value))} to {SheetWords.Number(series.Points.Max(static p => p.Value))} {SheetWords.Unit(series.Quantity)}");
        string thinned = drawn.Length < series.Points.Count ? string.Create(CultureInfo.InvariantCulture, $"; drawn are lowest and highest of each stretch, {drawn.Length} of them") : string.Empty;
        LineChart chart = new LineChart(of.Words, words, new ChartAxis($"Time {since}", unit), new ChartAxis(Capital(of.Words), SheetWords.Unit(series.Quantity))) { HeightMm = 58 }
            .With(new ChartSeries($"last {SheetWords.Number(series.Last.Value)}", [.. drawn.Select(p => new ChartPoint((p.At - first).TotalHours / per, p.Value))], Markers: drawn.Length <= 60));
        return new Figure(chart.Build(), $"{words}{thinned}. Last: {SheetWords.From(series.Last)}; error of one reading ± {SheetWords.Number(series.Last.Sd)}.", words);
    }

    /// <summary>All, or of each stretch its lowest and highest, so that no peak is lost.</summary>
    private static SeriesPoint[] Drawn(IReadOnlyList<SeriesPoint> points)
    {
        if (points.Count <= MostChartPoints)
        {
            return [.. points];
        }

        int each = (int)Math.Ceiling(points.Count / (MostChartPoints / 2.0));
        return [.. points.Chunk(each).SelectMany(static c => new[] { c.MinBy(static p => p.Value)!, c.MaxBy(static p => p.Value)! }.Distinct().OrderBy(static p => p.At))];
    }

    private static string Capital(string words) => $"{char.ToUpperInvariant(words[0])}{words[1..]}";
}
