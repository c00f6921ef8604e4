using Cavaxis.Arteries.Beats;
using Cavaxis.Arteries.Findings;
using Cavaxis.Arteries.Scaling;
using Cavaxis.Arteries.Support;
using Cavaxis.Quantities;

namespace Cavaxis.Arteries.Oxygenation;

/// <summary>Reads every segment off a beat.</summary>
public static class ArteryReader
{
    /// <summary>All segments in the order of the table.</summary>
    /// <param name="beat">The beat.</param>
    /// <param name="blood">The two kinds of blood.</param>
    /// <param name="entry">How the pump returns; null without support.</param>
    /// <returns>The readings.</returns>
    public static IEnumerable<ArterialReading> Of(TreeBeat beat, BloodPair blood, ArterialReturn? entry)
    {
        ArgumentNullException.ThrowIfNull(beat);
        ArgumentNullException.ThrowIfNull(blood);
        HashSet<int> held = entry is null ? [] : [.. CannulaPlacement.Of(beat.Tree, entry).Pieces.Select(static p => p.Segment)];
        for (int i = 0; i < beat.Tree.Segments.Length; i++)
        {
            PatientSegment s = beat.Tree.Segments[i];
            OverBeat share = OverBeat.Of([.. TreeBeat.At(beat.Share, i).Select(static c => Math.Clamp(c, 0, 1))]);
            OverBeat pressure = OverBeat.Of([.. TreeBeat.At(beat.PressurePa, i).Select(static p => p / UnitFactors.PascalsPerMmHg)]);
            yield return new ArterialReading(
                s.Table.Name, s.Table.Title, s.Table.Course, s.LengthM * 100, (s.ProximalRadiusM + s.DistalRadiusM) * 1000, held.Contains(i), share,
                blood.Saturation(share), blood.Tension(share), TreeBeat.At(beat.FlowM3PerS, i).Average() * 6e4, pressure);
        }
    }
}
