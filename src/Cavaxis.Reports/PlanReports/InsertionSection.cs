using System.Globalization;
using Cavaxis.Planning.Insertion;
using Cavaxis.Planning.Plans;
using Cavaxis.Planning.Steps;
using Cavaxis.Quantities;
using Cavaxis.Reports.Documents;
using Cavaxis.Reports.InsertionReports;

namespace Cavaxis.Reports.PlanReports;

/// <summary>How wire and cannulae of the chosen plan go in.</summary>
internal static class InsertionSection
{
    /// <summary>Adds the section.</summary>
    public static void Add(List<ReportBlock> blocks, InsertionResult insertion)
    {
        blocks.Add(new PageBreak());
        blocks.Add(new Heading(2, "How wire and cannula go in"));
        blocks.Add(new Paragraph(string.Create(
            CultureInfo.InvariantCulture,
            $"{Capital(PlainWords.FromName(insertion.Wire.ToString()))} wire in {insertion.Anatomies} sampled curved anatomies, seed {insertion.Seed}; calculated. Stiffness and friction are drawn from ranges, since none is published: the shares compare options for this patient. No force has a limit, and perforation was not checked.")));
        foreach (CannulaInsertion cannula in insertion.Cannulae)
        {
            blocks.Add(Shares(cannula));
            if (cannula.Advice.Count > 0)
            {
                blocks.Add(new Table(
                    "Done otherwise, in the same anatomies",
                    [new TableColumn("Change"), new TableColumn("As it should before", ColumnAlign.Right), new TableColumn("With it", ColumnAlign.Right), new TableColumn("Gain (90 % interval)", ColumnAlign.Right)],
                    [.. cannula.Advice.Select(static a => (IReadOnlyList<string>)[a.Words, Share(a.RightBefore), Share(a.RightAfter), Interval(a.Gain)])]));
            }
        }

        blocks.Add(new Figure(InsertionSheet.Of(insertion), "Paths to scale from the front and from the left (calculated).", InsertionSheet.Description(insertion)));
        blocks.Add(new Heading(3, "Assumed, because nobody has published it"));
        blocks.Add(new BulletList(insertion.Assumed));
        blocks.Add(new Heading(3, "Not checked of the way in"));
        blocks.Add(new BulletList(insertion.NotChecked));
    }

    private static Table Shares(CannulaInsertion cannula) => new(
        string.Create(CultureInfo.InvariantCulture, $"{Capital(PlainWords.Role(cannula.Role))} through the {PlainWords.Vessel(cannula.Route, cannula.Side)}: wire {cannula.WireCm:F0} cm, cannula {cannula.DepthCm:F1} cm"),
        [new TableColumn("What"), new TableColumn("Share or amount (90 % interval)"), new TableColumn("Origin")],
        [
            ["every part as it should", Interval(cannula.Right), "calculated"],
            .. cannula.WireEnds.Select(static end => (IReadOnlyList<string>)[$"wire ends in {PlainWords.FromName(end.End.ToString())}", $"{Interval(end.Share)}; after the cannula {Interval(end.AfterCannula)}", "calculated"]),
            .. cannula.FirstWrong.Where(static f => f.Phase != InsertionPhase.None).Select(static f => (IReadOnlyList<string>)[$"goes wrong first: {PlainWords.FromName(f.Phase.ToString())}", Interval(f.Share), "calculated"]),
            ["wire drawn back while the cannula advances", ReportNumber.WithInterval(cannula.WireLostMm, "F0", "mm"), ReportNumber.Origin(cannula.WireLostMm)],
            ["largest force of the wire's tip on a wall", ReportNumber.WithInterval(cannula.WireTipForceN, "F2", "N"), ReportNumber.Origin(cannula.WireTipForceN)],
        ]);

    private static string Interval(Estimate share) => string.Create(CultureInfo.InvariantCulture, $"{100 * share.Value:F0} % ({100 * share.Low:F0} to {100 * share.High:F0})");

    private static string Share(double share) => string.Create(CultureInfo.InvariantCulture, $"{100 * share:F0} %");

    private static string Capital(string words) => char.ToUpperInvariant(words[0]) + words[1..];
}
