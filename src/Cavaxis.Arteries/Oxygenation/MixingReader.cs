using System.Collections.Immutable;
using System.Globalization;
using Cavaxis.Arteries.Beats;
using Cavaxis.Arteries.Findings;
using Cavaxis.Arteries.Tree;
using Cavaxis.Quantities;

namespace Cavaxis.Arteries.Oxygenation;

/// <summary>Finds along the aorta where the two kinds of blood meet.</summary>
public static class MixingReader
{
    private const double CmPerM = 100;

    /// <summary>Places at which a share of membrane blood is first reached from the valve, over the beat, cm.</summary>
    /// <param name="beat">The beat.</param>
    /// <param name="share">The share.</param>
    /// <returns>Lowest, mean and highest distance; the length of the aorta where it is not reached.</returns>
    public static OverBeat Reached(TreeBeat beat, double share)
    {
        ArgumentNullException.ThrowIfNull(beat);
        AortaPath path = new(beat.Tree);
        return OverBeat.Of([.. beat.AortaShare.Select(profile => Crossing(profile, path, share) * CmPerM)]);
    }

    /// <summary>The zone.</summary>
    /// <param name="beat">The beat.</param>
    /// <param name="varied">The same with uncertain inputs varied; they give the interval.</param>
    /// <returns>The zone.</returns>
    public static MixingZone Of(TreeBeat beat, IReadOnlyList<TreeBeat> varied)
    {
        ArgumentNullException.ThrowIfNull(beat);
        ArgumentNullException.ThrowIfNull(varied);
        AortaPath path = new(beat.Tree);
        OverBeat half = Reached(beat, 0.5);
        double[] means = [half.Mean, .. varied.Select(v => Reached(v, 0.5).Mean)];
        MixingPlace place = PlaceOf(half.Mean, path);
        double spread = (means.Max() - means.Min()) / (2 * Estimate.NormalQuantile95);
        return new MixingZone(
            place, Words(half.Mean, place, path), half, Reached(beat, 0.1).Lowest, Reached(beat, 0.9).Highest,
            Estimate.WithInterval(half.Mean, spread, means.Min(), means.Max(), Origin.Calculated), path.LengthM * CmPerM,
            place is MixingPlace.AtValve or MixingPlace.BeyondAorta ? null : path.OnDrawing(half.Mean / CmPerM));
    }

    /// <summary>The place in words for a mean distance from the valve.</summary>
    /// <param name="beat">The beat.</param>
    /// <param name="halfCm">Distance, cm.</param>
    /// <returns>A part of a sentence.</returns>
    public static string InWords(TreeBeat beat, double halfCm)
    {
        ArgumentNullException.ThrowIfNull(beat);
        AortaPath path = new(beat.Tree);
        return Words(halfCm, PlaceOf(halfCm, path), path);
    }

    private static double Crossing(double[] profile, AortaPath path, double share)
    {
        ImmutableArray<double> at = path.PlacesM;
        if (profile[0] >= share)
        {
            return 0;
        }

        for (int i = 1; i < profile.Length; i++)
        {
            if (profile[i] >= share)
            {
                return at[i - 1] + ((at[i] - at[i - 1]) * (share - profile[i - 1]) / (profile[i] - profile[i - 1]));
            }
        }

        return path.LengthM;
    }

    private static MixingPlace PlaceOf(double halfCm, AortaPath path)
    {
        // Behind a valve that stays shut the root below the coronary arteries is a dead end that nothing washes out.
        if (path.Locate(halfCm / CmPerM).Table.Name == "aortic_root")
        {
            return MixingPlace.AtValve;
        }

        if (halfCm / CmPerM >= path.LengthM - 1e-6)
        {
            return MixingPlace.BeyondAorta;
        }

        string name = path.Locate(halfCm / CmPerM).Table.Name;
        return name.StartsWith("thoracic", StringComparison.Ordinal) ? MixingPlace.DescendingThoracic
            : name.StartsWith("abdominal", StringComparison.Ordinal) ? MixingPlace.Abdominal : MixingPlace.AscendingOrArch;
    }

    private static string Words(double halfCm, MixingPlace place, AortaPath path)
    {
        ArterySegment table = path.Locate(halfCm / CmPerM).Table;
        return place switch
        {
            MixingPlace.AtValve => "at the aortic valve: the whole aorta carries blood of the membrane lung",
            MixingPlace.BeyondAorta => "nowhere in the aorta: less than half of its blood is from the membrane lung",
            _ => string.Create(CultureInfo.InvariantCulture, $"in the {table.Title.Split(", part")[0]}, {halfCm:F0} cm from the valve"),
        };
    }
}
