using Cavaxis.Anatomy.Landmarks;
using Cavaxis.Anatomy.Space;
using Cavaxis.Imaging.Tomography;
using Cavaxis.Imaging.Volumes;

namespace Cavaxis.Imaging.Tests.Tomography;

/// <summary>
/// The two open scans (LIDC-IDRI/TCIA, CC BY 3.0; Visible Human, NLM). What is expected was read off the slices by eye before the program was
/// run on them, in voxels of the slice counted from the head; two readings of a landmark give its range.
/// </summary>
public sealed class OpenScanTests
{
    [OpenScanFact("chest_lidc_half")]
    public void In_the_open_chest_without_contrast_the_line_runs_inside_of_the_veins_and_the_junctions_lie_within_two_readings()
    {
        ScanVolume scan = PlainSeries.Read(OpenScanFactAttribute.Folder("chest_lidc_half")!);
        Assert.Equal((256, 256, 138), (scan.Columns, scan.Rows, scan.Slices));
        AxisTrace trace = AxisTracer.Trace(scan, new TraceRequest([new(-31.2, 147.6, -505.8), new(-27.3, 168.1, -665.8)]));
        Assert.Null(trace.Failure);
        TracedAxis axis = trace.Axis!;

        // Slice from the head, column and row of the middle of the vein, and how far the line may lie from it in voxels of 1.56 mm.
        (int Slice, double X, double Y, double Within)[] seen =
        [
            (52, 108.2, 132, 2.5), (54, 107.7, 131.4, 2.5), (56, 108.5, 131.4, 3), (90, 109, 137, 3.5), (105, 107.8, 142.8, 3), (108, 108, 144, 3), (130, 110.9, 145.1, 3),
        ];
        Assert.All(seen, place =>
        {
            Vector3D at = scan.Place(place.X, place.Y, scan.Slices - 1 - place.Slice);
            (double x, double y, _) = scan.Voxel(axis.Line.At(axis.Line.Nearest(at).ArcMm));
            Assert.True(Math.Sqrt(((x - place.X) * (x - place.X)) + ((y - place.Y) * (y - place.Y))) <= place.Within);
        });
        Assert.InRange(Slice(scan, axis[CavalLandmark.Scaj]), 56, 60);
        Assert.InRange(Slice(scan, axis[CavalLandmark.Icaj]), 82, 88);
        Assert.InRange(Slice(scan, axis[CavalLandmark.HepaticVein]), 92, 101);
        Assert.InRange(axis.MeanDiameterMm(120, 170), 18, 24);
        Assert.Equal(LandmarkOrigin.NotFound, axis[CavalLandmark.RenalVein].Origin);
        Assert.Equal(TraceFault.NoColumn, SeedSearch.Find(scan).Failure!.Fault);
    }

    [OpenScanFact("pelvis_vhf_half")]
    public void In_the_open_pelvis_the_course_of_the_right_iliac_and_femoral_vessels_is_followed_past_seeds_along_them()
    {
        ScanVolume scan = PlainSeries.Read(OpenScanFactAttribute.Folder("pelvis_vhf_half")!);
        Vector3D Seen(double x, double y, int slice) => scan.Place(x, y, scan.Slices - 1 - slice);
        AxisTrace trace = AxisTracer.Trace(scan, new TraceRequest(
            [Seen(98.5, 118.5, 46), Seen(96.5, 116.7, 52), Seen(90.9, 108, 60), Seen(91.2, 108, 64), Seen(90.7, 105.5, 68), Seen(88.4, 102.5, 72)]));
        SpaceCurve course = trace.Course!;
        (double X, double Y, int Slice)[] between = [(97.8, 117.5, 48), (92.5, 112, 57), (89.7, 104.2, 70)];
        Assert.All(between, place => Assert.True(course.Nearest(Seen(place.X, place.Y, place.Slice)).DistanceMm < 7));
        Assert.InRange(course.LengthMm, 60, 80);
        if (trace.Axis is TracedAxis axis)
        {
            Assert.All(axis.Landmarks, static l => Assert.Equal(LandmarkOrigin.NotFound, l.Origin));
            Assert.InRange(axis.MeanDiameterMm(10, 60), 8, 16);
        }
        else
        {
            Assert.Contains("limit", trace.Failure!.Words, StringComparison.Ordinal);
        }
    }

    private static double Slice(ScanVolume scan, AxisLandmark landmark) => scan.Slices - 1 - scan.Voxel(landmark.Place).K;
}
