using System.Runtime.InteropServices;
using Cavaxis.Anatomy.Landmarks;
using Cavaxis.Anatomy.Meshes;
using Cavaxis.Anatomy.Space;
using Cavaxis.Planning.Insertion;
using Cavaxis.Planning.Steps;

namespace Cavaxis.Web.Pages.GoesIn;

/// <summary>A play as the drawing script takes it: words and numbers, and points as 32-bit floats.</summary>
/// <param name="Head">Words and numbers.</param>
/// <param name="Points">Corners of the lumen's surface: to the patient's left, to the head, to the front, mm.</param>
/// <param name="Normals">Unit vectors out of the lumen in the same axes.</param>
/// <param name="Corners">Three numbers of points for each triangle, 32-bit.</param>
/// <param name="Paths">Points of all moments: to the left, to the back, to the head, and length from the skin, mm.</param>
/// <param name="Wires">Points of the wires of the sampled anatomies, laid out in the same way.</param>
public sealed record PlayPacket(PlayHead Head, byte[] Points, byte[] Normals, byte[] Corners, byte[] Paths, byte[] Wires)
{
    /// <summary>Coarse enough to be turned without a graphics card.</summary>
    private const double SpacingMm = 5;

    private static readonly (CavalLandmark Landmark, string Name)[] Named =
    [
        (CavalLandmark.BrachiocephalicConfluence, "SVC begins"), (CavalLandmark.Scaj, "SCAJ"), (CavalLandmark.TricuspidCentre, "tricuspid"), (CavalLandmark.Icaj, "ICAJ"),
        (CavalLandmark.HepaticVein, "hepatic vein"), (CavalLandmark.RenalVein, "renal veins"), (CavalLandmark.IliacConfluence, "iliac confluence"),
    ];

    /// <summary>Packs a play.</summary>
    /// <param name="name">What tells it from others.</param>
    /// <param name="play">The play.</param>
    /// <param name="cannula">The cannula, with the paths of the sampled anatomies.</param>
    /// <returns>The packet.</returns>
    public static PlayPacket Of(string name, InsertionPlay play, CannulaInsertion cannula)
    {
        ArgumentNullException.ThrowIfNull(play);
        ArgumentNullException.ThrowIfNull(cannula);
        SurfaceMesh surface = LumenSurface.Of(play.Lumen, SpacingMm);
        List<PlayFrame> frames = [];
        List<float> points = [];
        foreach (InsertionFrame frame in play.Frames)
        {
            frames.Add(new PlayFrame(
                frame.Phase.ToString(), points.Count / 4, frame.PathMm.Count, Short(frame.WireMm), Short(frame.IntroducerMm), Short(frame.CannulaMm), GoesInWords.Moment(frame)));
            for (int i = 0; i < frame.PathMm.Count; i++)
            {
                Add(points, frame.PathMm[i], frame.ArcsMm[i]);
            }
        }

        List<PlayLine> lines = [];
        List<float> wires = [];
        InsertionPaths? paths = cannula.Paths;
        for (int i = 0; i < (paths?.Wires.Count ?? 0); i++)
        {
            lines.Add(new PlayLine(wires.Count / 4, paths!.Wires[i].Count, paths.Ends[i] != paths.Wanted));
            foreach (Vector3D point in paths.Wires[i])
            {
                Add(wires, point, 0);
            }
        }

        PlayLandmark[] landmarks = [.. Named.Select(n => (n.Name, At: n.Landmark == CavalLandmark.TricuspidCentre ? play.Lumen.ValveCentreMm : play.Lumen.PointOf(n.Landmark)))
            .Select(static n => new PlayLandmark(n.Name, Short(n.At.X), Short(n.At.Y), Short(n.At.Z)))];
        int fed = Math.Max(0, frames.FindLastIndex(static f => f.Phase == nameof(InsertionPhase.WireFeed)));
        return new PlayPacket(
            new PlayHead(name, play.CannulaRadiusMm, fed, play.WrongFrame, GoesInWords.Astray(play), frames, landmarks, lines),
            Upright(surface.PointsMm),
            Upright(surface.Outward),
            MemoryMarshal.AsBytes(surface.Corners.AsSpan()).ToArray(),
            Bytes(points),
            Bytes(wires));
    }

    private static double Short(double value) => Math.Round(value, 2);

    private static void Add(List<float> points, Vector3D point, double arc) => points.AddRange([(float)point.X, (float)point.Y, (float)point.Z, (float)arc]);

    private static byte[] Upright(IReadOnlyList<Vector3D> vectors)
    {
        float[] turned = new float[3 * vectors.Count];
        for (int i = 0; i < vectors.Count; i++)
        {
            (turned[3 * i], turned[(3 * i) + 1], turned[(3 * i) + 2]) = ((float)vectors[i].X, (float)vectors[i].Z, (float)-vectors[i].Y);
        }

        return MemoryMarshal.AsBytes(turned.AsSpan()).ToArray();
    }

    private static byte[] Bytes(List<float> values) => MemoryMarshal.AsBytes(CollectionsMarshal.AsSpan(values)).ToArray();
}
