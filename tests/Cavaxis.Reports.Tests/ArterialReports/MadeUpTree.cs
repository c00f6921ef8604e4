using Cavaxis.Anatomy.Body;
using Cavaxis.Arteries.Findings;
using Cavaxis.Arteries.Tree;
using Cavaxis.Planning.Arterial;
using Cavaxis.Quantities;

namespace Cavaxis.Reports.Tests.ArterialReports;

/// <summary>Answers over the built-in tree whose numbers are made up to be drawn, not to be true.</summary>
internal static class MadeUpTree
{
    /// <summary>An answer.</summary>
    /// <param name="title">Title of the case.</param>
    /// <param name="half">Where half is from each; null for nowhere.</param>
    /// <param name="cannula">Segment that holds the cannula; null for none.</param>
    /// <param name="share">Share of membrane blood by place of the segment in the table, 0 to 1.</param>
    public static ArteriesAnswer Answer(string title, LayoutPoint? half, string? cannula, Func<int, OverBeat> share)
    {
        ArterialTable table = ArterialTable.BuiltIn;
        ArterialReading[] arteries = [.. table.Segments.Select((s, i) => new ArterialReading(
            s.Name, s.Title, s.Course, s.LengthMm / 10, s.ProximalRadiusMm + s.DistalRadiusMm, s.Name == cannula, share(i), Saturation(share(i)), Saturation(share(i)), 1, new OverBeat(60, 70, 80)))];
        OrganReading[] organs = [.. Enum.GetValues<ArterialOrgan>().Select((o, i) => new OrganReading(
            o, "organ " + i.ToString(System.Globalization.CultureInfo.InvariantCulture), 0.234, 0.97, share(i), Saturation(share(i)), new OverBeat(51, 62, 73),
            Estimate.WithInterval(88, 2, 84, 92, Origin.Calculated), 40))];
        MixingZone? mixing = half is LayoutPoint at
            ? new MixingZone(MixingPlace.AscendingOrArch, "in the aortic arch", new OverBeat(8, 10, 13), 6, 16, Estimate.WithInterval(10, 2, 6, 15, Origin.Calculated), 43, at)
            : null;
        LimbReading[] limbs = [.. new[] { (BodySide.Right, LimbSupply.Starved), (BodySide.Left, LimbSupply.Borderline) }.Select(static l => new LimbReading(
            l.Item1, l.Item1 == BodySide.Right, l.Item2, Flow(90), Flow(250), 20, 210, 190, 0.83, Estimate.WithInterval(7.4, 0.5, 6.5, 8.3, Origin.Measured), "The leg gets 90 of the 250 mL/min that it needs."))];
        return new ArteriesAnswer(1, "Caution.", title, true, "The support that runs.", true, string.Empty, ["something"], new ArterialSupportResult(
            cannula is null ? 0 : 3.8, "right femoral artery, 19 Fr", 84, 51, 100, 320, new HeartReading(1.2, 14, 21, 66, 74, 62, 1.3, 67),
            [.. arteries], [.. organs], mixing, [.. limbs], new SamplingAdvice(BodySide.Right, "Sample the right radial artery: it carries what the brain's right half gets.", false),
            ["viscosity"], ["coagulation"], [table.Source], new SettlingRecord(8, 1e-4, 12, false, 1e-12, 800, 900))
        { ReturnSegment = cannula }, []);
    }

    private static OverBeat Saturation(OverBeat share) => share.Through(static s => 55 + (45 * s));

    private static Estimate Flow(double value) => Estimate.WithInterval(value, 20, value - 40, value + 40, Origin.Calculated);
}
