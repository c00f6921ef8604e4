using Cavaxis.Bedside.Readouts;
using Cavaxis.Course.Patients;
using Cavaxis.Course.Positions;
using Cavaxis.Planning.Plans;
using Cavaxis.Reports.Documents;

namespace Cavaxis.Bedside.CourseReports;

/// <summary>The cannulae, the log of their positions, and their removal.</summary>
internal static class CannulaBlocks
{
    /// <summary>The cannulae and the log.</summary>
    public static IEnumerable<ReportBlock> Positions(PatientCourse course)
    {
        yield return new Heading(2, "Cannulae and position log");
        if (course.Cannulae.Count == 0)
        {
            yield return new Paragraph("No cannula was written down.");
            yield break;
        }

        foreach (PositionWarning warning in course.CannulaeIn.SelectMany(static c => PositionReview.Of(c).Warnings))
        {
            yield return new Callout(CalloutKind.Caution, warning.Text, warning.Rule is { } rule ? $"{rule.Rationale} {rule.Source}" : string.Empty);
        }

        yield return new Table(
            "Cannulae", [new("name"), new("role"), new("vessel"), new("size (Fr)", ColumnAlign.Right), new("device"), new("depth at the skin (cm)", ColumnAlign.Right), new("placed (UTC)"), new("last shown by")],
            [.. course.Cannulae.Select(static c => (IReadOnlyList<string>)[
                c.Name, PlainWords.Role(c.Placed.Event.Role), SheetWords.Entry(c.Placed.Event), c.Placed.Event.OuterDiameterFrench is double size ? SheetWords.Number(size) : "not told", c.Placed.Event.Device ?? "not told",
                c.DepthCm is double cm ? SheetWords.Number(cm) : "not told", $"{SheetWords.Time(c.Placed.OccurredAt)} by {c.Placed.Who}", c.LastImaged is { } image ? $"{SheetWords.Name(image.Event.SeenBy)}, {SheetWords.Time(image.OccurredAt)}" : "no image"])]);
        (DateTimeOffset At, long Sequence, IReadOnlyList<string> Cells)[] log =
        [
            .. course.Cannulae.SelectMany(static c => c.Positions.Select(p => (p.OccurredAt, p.Sequence, (IReadOnlyList<string>)[
                SheetWords.Time(p.OccurredAt), c.Name, $"read by {SheetWords.Name(p.Event.SeenBy)}{(p.Event.View is null ? string.Empty : $", {p.Event.View}")}", Depth(p.Event.DepthCm), $"{SheetWords.Places(p.Event)}{Turn(p.Event.TurnDeg)}{SheetWords.After(p.Event.Remark)}{Image(p.Event.Image)}", p.Who]))),
            .. course.Cannulae.SelectMany(static c => c.Moves.Select(m => (m.OccurredAt, m.Sequence, (IReadOnlyList<string>)[
                SheetWords.Time(m.OccurredAt), c.Name, m.Event.SeenBy is { } sight ? $"moved, watched by {SheetWords.Name(sight)}" : "moved, not watched", Depth(m.Event.DepthCm), $"{m.Event.Reason}{Turn(m.Event.TurnDeg)}{SheetWords.After(m.Event.Remark)}", m.Who]))),
        ];
        if (log.Length > 0)
        {
            yield return new Table(
                "Positions read and moves", [new("time (UTC)"), new("cannula"), new("how"), new("depth (cm)", ColumnAlign.Right), new("where, and why"), new("by")],
                [.. log.OrderBy(static l => l.At).ThenBy(static l => l.Sequence).Select(static l => l.Cells)]);
        }
    }

    /// <summary>Removal.</summary>
    public static IEnumerable<ReportBlock> Removal(PatientCourse course)
    {
        yield return new Heading(2, "Removal");
        LyingCannula[] gone = [.. course.Cannulae.Where(static c => !c.IsIn)];
        if (gone.Length == 0)
        {
            yield return new Paragraph("No removal of a cannula was written down.");
            yield break;
        }

        yield return new Table(
            "Cannulae taken out", [new("cannula"), new("time (UTC)"), new("how"), new("clot on it"), new("lay (days)", ColumnAlign.Right), new("remark"), new("by")],
            [.. gone.Select(static c => (IReadOnlyList<string>)[
                c.Name, SheetWords.Time(c.Removed!.OccurredAt), SheetWords.Name(c.Removed.Event.Method), c.Removed.Event.ClotOnCannula switch { true => "yes", false => "no", _ => "not looked at" },
                SheetWords.Number(Math.Round((c.Removed.OccurredAt - c.Placed.OccurredAt).TotalDays, 1)), c.Removed.Event.Remark ?? string.Empty, c.Removed.Who])]);
    }

    private static string Depth(double? cm) => cm is double depth ? SheetWords.Number(depth) : string.Empty;

    private static string Turn(double? deg) => deg is double turn ? $"; turned {SheetWords.Number(turn)}°" : string.Empty;

    private static string Image(Cavaxis.Course.Events.ImageReference? image) => image is null ? string.Empty : $"; image {image.Name}";
}
