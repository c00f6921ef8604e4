using System.Collections.Immutable;
using Cavaxis.Arteries.Numbers;
using Cavaxis.Arteries.Scaling;
using static Cavaxis.Arteries.Numbers.ArterialConstant;

namespace Cavaxis.Arteries.Support;

/// <summary>Where an arterial cannula lies in the tree.</summary>
/// <param name="TipSegment">Index of the segment with its tip.</param>
/// <param name="TipM">Place of the tip, from the beginning of that segment, m.</param>
/// <param name="Pieces">What it fills.</param>
/// <param name="OuterOverInner">Its outer diameter over the inner diameter of the artery at the puncture.</param>
/// <param name="PerfusionSegment">Index of the segment with the distal perfusion cannula.</param>
/// <param name="PerfusionM">Place of its tip there, m.</param>
public sealed record CannulaPlacement(
    int TipSegment, double TipM, ImmutableArray<FilledPiece> Pieces, double OuterOverInner, int PerfusionSegment, double PerfusionM)
{
    private const double PerfusionTipM = 0.03;

    /// <summary>Tapered tip with its side holes, which leaves the lumen to the blood that comes out of it, m.</summary>
    private const double TipLengthM = 0.015;

    /// <summary>Lays a cannula from the middle of the access artery against the flow, as far as it reaches.</summary>
    /// <param name="tree">The patient's tree.</param>
    /// <param name="entry">How the blood enters.</param>
    /// <returns>Where it lies. A cannula in an axillary artery is laid at most to the vertebral artery.</returns>
    public static CannulaPlacement Of(PatientTree tree, ArterialReturn entry)
    {
        ArgumentNullException.ThrowIfNull(tree);
        ArgumentNullException.ThrowIfNull(entry);
        string side = entry.SideLetter;
        string[] path = entry.IsFemoral
            ? [entry.EntrySegment, "external_iliac_" + side, "common_iliac_" + side]
            : [entry.EntrySegment, $"subclavian_{side}_II"];
        double left = Math.Max(0, (entry.Cannula.InsertableLengthMm * 1e-3) - (ArterialNumbers.Value(CannulaTrackCm) * 1e-2));
        double outer = entry.Cannula.OuterDiameterMm * 1e-3;
        ImmutableArray<FilledPiece>.Builder pieces = ImmutableArray.CreateBuilder<FilledPiece>();
        int at = IndexOf(tree, path[0]);
        double place = 0.5 * tree.Segments[at].LengthM;
        double ratio = outer / (tree.Segments[at].ProximalRadiusM + tree.Segments[at].DistalRadiusM);
        for (int step = 0; !entry.SideGraft && left > 0; step++)
        {
            double taken = Math.Min(left, place);
            pieces.Add(new FilledPiece(at, place - taken, taken, Filled(tree.Segments[at], outer)));
            left -= taken;
            place -= taken;
            if (left <= 1e-6 || step + 1 == path.Length)
            {
                break;
            }

            at = IndexOf(tree, path[step + 1]);
            place = tree.Segments[at].LengthM;
        }

        int perfusion = IndexOf(tree, entry.IsFemoral ? $"femoral_{side}_II" : "brachial_" + side);
        return new CannulaPlacement(
            at, place, WithoutTip(pieces), ratio, perfusion, Math.Min(PerfusionTipM, 0.5 * tree.Segments[perfusion].LengthM));
    }

    /// <summary>The tree with the arteries that the cannula stretches made stiffer.</summary>
    /// <param name="tree">The patient's tree.</param>
    /// <returns>The tree around the cannula.</returns>
    public PatientTree Around(PatientTree tree)
    {
        ArgumentNullException.ThrowIfNull(tree);
        return tree with
        {
            Segments = [.. tree.Segments.Select((s, i) => IsTight(s, i)
                ? s with { ModulusPa = s.ModulusPa * ArterialNumbers.Value(WallStiffening) }
                : s)],
        };
    }

    private static ImmutableArray<FilledPiece> WithoutTip(ImmutableArray<FilledPiece>.Builder pieces)
    {
        if (pieces.Count == 0)
        {
            return [];
        }

        FilledPiece last = pieces[^1];
        double kept = last.LengthM - TipLengthM;
        pieces.RemoveAt(pieces.Count - 1);
        return kept > 1e-3 ? [.. pieces, last with { FromM = last.FromM + TipLengthM, LengthM = kept }] : pieces.ToImmutable();
    }

    private bool IsTight(PatientSegment segment, int index)
    {
        double lumen = Math.PI * segment.ProximalRadiusM * segment.DistalRadiusM;
        return Pieces.Any(piece => piece.Segment == index && piece.AreaM2 > 0.5 * lumen);
    }

    private static double Filled(PatientSegment segment, double outer)
    {
        double narrowest = Math.Min(segment.ProximalRadiusM, segment.DistalRadiusM);
        double most = ArterialNumbers.Value(LargestFilledShare) * Math.PI * narrowest * narrowest;
        return Math.Min(Math.PI * outer * outer / 4, most);
    }

    private static int IndexOf(PatientTree tree, string name)
    {
        for (int i = 0; i < tree.Segments.Length; i++)
        {
            if (tree.Segments[i].Table.Name == name)
            {
                return i;
            }
        }

        throw new ArgumentException("The tree has no segment of this name: " + name, nameof(name));
    }
}
