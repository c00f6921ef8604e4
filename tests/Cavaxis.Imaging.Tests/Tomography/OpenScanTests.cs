using Cavaxis.Anatomy.Landmarks;
using Cavaxis.Anatomy.Space;
using Cavaxis.Imaging.Tomography;
using Cavaxis.Imaging.Volumes;

namespace Cavaxis.Imaging.Tests.Tomography;

/// <summary>
/// The two open scans (LIDC-IDRI/TCIA, CC BY 3.0; Visible Human, NLM) against what was read off their pictures without the program's line
/// (<see cref="OpenScanReadings"/>). How every slice was judged stands in docs/models/tomography.md.
/// </summary>
public sealed class OpenScanTests
{
    [OpenScanFact("chest_lidc_half")]
    public void In_the_open_chest_without_contrast_the_line_runs_inside_of_the_vein_on_every_slice_that_was_read_twice()
    {
        ScanVolume scan = PlainSeries.Read(OpenScanFactAttribute.Folder("chest_lidc_half")!);
        Assert.Equal((256, 256, 138), (scan.Columns, scan.Rows, scan.Slices));
        AxisTrace trace = AxisTracer.Trace(scan, new TraceRequest([new(-31.2, 147.6, -505.8), new(-27.3, 168.1, -665.8)]));
        Assert.Null(trace.Failure);
        TracedAxis axis = trace.Axis!;
        Assert.All(OpenScanReadings.ChestA.Concat(OpenScanReadings.ChestB), seen =>
        {
            (double column, double row) = On(scan, axis.Line, seen.Slice);
            Assert.True(seen.Outside(column, row) <= 0, $"slice {seen.Slice}: {column:F1}, {row:F1}");
            Assert.True(!seen.IsClosed || seen.FromMiddle(column, row) < 0.3 * seen.Diameter, $"slice {seen.Slice}: {column:F1}, {row:F1}");
        });

        // Where all four edges were read: the reader's ellipse and the program's section, mm. At 107 liver behind the vein is taken with it.
        Assert.All(OpenScanReadings.Mean(OpenScanReadings.ChestA, OpenScanReadings.ChestB).Where(static s => s.IsClosed), seen =>
        {
            double arc = axis.Line.Nearest(scan.Place(seen.Column, seen.Row, scan.Slices - 1 - seen.Slice)).ArcMm;
            Assert.Equal(seen.Diameter * scan.ColumnStep.Length, axis.Sections.MinBy(s => Math.Abs(s.ArcMm - arc))!.DiameterMm, seen.Slice == 107 ? 3.2 : 2.0);
        });

        // Two readings of each landmark and their doubt, in slices from the head.
        Assert.InRange(Slice(scan, axis[CavalLandmark.Scaj]), 57, 60);
        Assert.InRange(Slice(scan, axis[CavalLandmark.Icaj]), 83, 88);
        Assert.InRange(Slice(scan, axis[CavalLandmark.HepaticVein]), 95, 99);
        Assert.Equal(LandmarkOrigin.NotFound, axis[CavalLandmark.RenalVein].Origin);
        Assert.Equal(TraceFault.NoColumn, SeedSearch.Find(scan).Failure!.Fault);
    }

    [OpenScanFact("chest_lidc_half")]
    public void In_the_open_chest_other_seeds_in_the_same_veins_give_the_same_landmarks()
    {
        ScanVolume scan = PlainSeries.Read(OpenScanFactAttribute.Folder("chest_lidc_half")!);
        (double X, double Y, int Slice)[][] seeds = [[(106.8, 133.2, 52), (109.4, 147.1, 127)], [(107.5, 130.2, 52), (108.5, 145, 117)]];
        Assert.All(seeds, two =>
        {
            AxisTrace trace = AxisTracer.Trace(scan, new TraceRequest([.. two.Select(s => Seen(scan, s.X, s.Y, s.Slice))]));
            Assert.Null(trace.Failure);
            Assert.InRange(Slice(scan, trace.Axis![CavalLandmark.Scaj]), 57, 60);
            Assert.InRange(Slice(scan, trace.Axis[CavalLandmark.Icaj]), 83, 88);
        });
    }

    [OpenScanFact("pelvis_vhf_half")]
    public void In_the_open_pelvis_two_seeds_give_the_iliac_and_femoral_course_on_either_side_and_the_person_is_asked_which_vessel_it_is()
    {
        ScanVolume scan = PlainSeries.Read(OpenScanFactAttribute.Folder("pelvis_vhf_half")!);
        (IReadOnlyList<SeenSlice> Seen, (double X, double Y, int Slice) Upper, (double X, double Y, int Slice) Lower)[] sides =
        [
            ([.. OpenScanReadings.RightA, .. OpenScanReadings.RightB], (97, 117, 49), (90.8, 105.3, 70)),
            ([.. OpenScanReadings.RightA, .. OpenScanReadings.RightB], (98.5, 118.5, 46), (92, 107, 67)),
            ([.. OpenScanReadings.LeftA, .. OpenScanReadings.LeftB], (152, 120.3, 49), (155.5, 105.4, 70)),
            ([.. OpenScanReadings.LeftA, .. OpenScanReadings.LeftB], (153, 118, 52), (155.5, 107.2, 67)),
        ];
        Assert.All(sides, side =>
        {
            AxisTrace trace = AxisTracer.Trace(scan, new TraceRequest(Seen(scan, side.Upper.X, side.Upper.Y, side.Upper.Slice), Seen(scan, side.Lower.X, side.Lower.Y, side.Lower.Slice)));
            Assert.Null(trace.Failure);
            Assert.All(side.Seen.Where(s => s.Slice >= side.Upper.Slice && s.Slice <= side.Lower.Slice), seen =>
            {
                (double column, double row) = On(scan, trace.Course!, seen.Slice);
                Assert.True(seen.Outside(column, row) <= 0.3, $"slice {seen.Slice}: {column:F1}, {row:F1}");
            });
            Assert.InRange(trace.Axis!.MeanDiameterMm(6, trace.Axis.Line.LengthMm - 6), 10, 15);
            Assert.All(trace.Axis.Landmarks, static l => Assert.Equal(LandmarkOrigin.NotFound, l.Origin));
            Assert.Contains(trace.Cautions, static c => c.Kind == TraceCautionKind.NeighbourAlike && c.Words.Contains("confirm which", StringComparison.Ordinal));
            Assert.Contains(trace.Cautions, static c => c.Kind == TraceCautionKind.NoAtrium);
            Assert.Contains(trace.Cautions, static c => c.Kind == TraceCautionKind.ReadsLikeFluid);
        });
    }

    [OpenScanFact("pelvis_vhf_half")]
    public void Through_the_collapsed_common_iliac_vein_the_course_is_shown_and_its_wall_is_refused()
    {
        ScanVolume scan = PlainSeries.Read(OpenScanFactAttribute.Folder("pelvis_vhf_half")!);
        AxisTrace trace = AxisTracer.Trace(scan, new TraceRequest([Seen(scan, 111.5, 125.5, 14), Seen(scan, 98, 118.5, 46), Seen(scan, 91, 105, 70)]));
        Assert.Null(trace.Axis);
        Assert.Contains("limit", trace.Failure!.Words, StringComparison.Ordinal);
        Assert.InRange(trace.Course!.LengthMm, 115, 160);
    }

    private static Vector3D Seen(ScanVolume scan, double x, double y, int slice) => scan.Place(x, y, scan.Slices - 1 - slice);

    private static (double Column, double Row) On(ScanVolume scan, SpaceCurve line, int slice)
    {
        double level = scan.Place(0, 0, scan.Slices - 1 - slice).Z;
        Vector3D at = Enumerable.Range(0, (int)(4 * line.LengthMm) + 1).Select(n => line.At(n / 4.0)).MinBy(p => Math.Abs(p.Z - level));
        (double column, double row, _) = scan.Voxel(at);
        return (column, row);
    }

    private static double Slice(ScanVolume scan, AxisLandmark landmark) => scan.Slices - 1 - scan.Voxel(landmark.Place).K;
}
