using System.Collections.Immutable;
using Cavaxis.Arteries.Beats;
using Cavaxis.Arteries.Findings;
using Cavaxis.Arteries.Scaling;
using Cavaxis.Arteries.Tree;
using Cavaxis.Quantities;

namespace Cavaxis.Arteries.Oxygenation;

/// <summary>Reads off a beat what blood every organ gets.</summary>
public static class OrganReader
{
    private const double LPerMinPerM3PerS = 6e4;

    /// <summary>All organs.</summary>
    /// <param name="beat">The beat.</param>
    /// <param name="blood">The two kinds of blood.</param>
    /// <param name="varied">The same beat with uncertain inputs varied, each with its blood; they give the interval.</param>
    /// <returns>The readings in the order of <see cref="ArterialOrgan"/>.</returns>
    public static ImmutableArray<OrganReading> Of(TreeBeat beat, BloodPair blood, IReadOnlyList<(TreeBeat Beat, BloodPair Blood)> varied)
    {
        ArgumentNullException.ThrowIfNull(beat);
        ArgumentNullException.ThrowIfNull(blood);
        ArgumentNullException.ThrowIfNull(varied);
        return [.. Enum.GetValues<ArterialOrgan>().Select(organ => Read(organ, beat, blood, varied))];
    }

    /// <summary>Mean saturation of the blood that enters an organ, %.</summary>
    /// <param name="organ">Which.</param>
    /// <param name="beat">The beat.</param>
    /// <param name="blood">The two kinds of blood.</param>
    /// <returns>Saturation.</returns>
    public static double MeanSaturation(ArterialOrgan organ, TreeBeat beat, BloodPair blood)
    {
        ArgumentNullException.ThrowIfNull(beat);
        ArgumentNullException.ThrowIfNull(blood);
        return blood.SaturationPercent(Share(Ends(organ, beat.Tree), beat).Mean);
    }

    private static OrganReading Read(ArterialOrgan organ, TreeBeat beat, BloodPair blood, IReadOnlyList<(TreeBeat Beat, BloodPair Blood)> varied)
    {
        int[] ends = Ends(organ, beat.Tree);
        double flow = ends.Sum(i => TreeBeat.At(beat.EndFlowM3PerS, i).Average());
        OverBeat share = Share(ends, beat);
        double[] saturations = [blood.SaturationPercent(share.Mean), .. varied.Select(v => MeanSaturation(organ, v.Beat, v.Blood))];
        double spread = (saturations.Max() - saturations.Min()) / (2 * Estimate.NormalQuantile95);
        return new OrganReading(
            organ, ArterialWords.Of(organ), flow * LPerMinPerM3PerS, flow / ends.Sum(i => beat.Tree.Segments[i].RestFlowM3PerS), share,
            blood.Saturation(share), blood.Tension(share),
            Estimate.WithInterval(saturations[0], spread, saturations.Min(), saturations.Max(), Origin.Calculated),
            flow * LPerMinPerM3PerS * 10 * blood.Content(share.Mean));
    }

    private static int[] Ends(ArterialOrgan organ, PatientTree tree) =>
        [.. Enumerable.Range(0, tree.Segments.Length).Where(i => ArterialWords.Feeds(organ, tree.Segments[i].Table))];

    /// <summary>Share in the blood that goes on into the organ: extremes of the stream of all its arteries, mean over the blood.</summary>
    private static OverBeat Share(int[] ends, TreeBeat beat)
    {
        double[] moments = new double[beat.EndShare.Length];
        double carried = 0;
        double total = 0;
        for (int m = 0; m < moments.Length; m++)
        {
            double flow = 0;
            double membrane = 0;
            double plain = 0;
            foreach (int i in ends)
            {
                double inflow = Math.Max(0, beat.EndFlowM3PerS[m][i]);
                flow += inflow;
                membrane += inflow * beat.EndShare[m][i];
                plain += beat.EndShare[m][i] / ends.Length;
            }

            moments[m] = Math.Clamp(flow > 0 ? membrane / flow : plain, 0, 1);
            carried += membrane;
            total += flow;
        }

        return new OverBeat(moments.Min(), Math.Clamp(total > 0 ? carried / total : moments.Average(), 0, 1), moments.Max());
    }
}
