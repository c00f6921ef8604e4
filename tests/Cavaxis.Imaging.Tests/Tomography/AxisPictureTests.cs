using Cavaxis.Anatomy.Landmarks;
using Cavaxis.Anatomy.Space;
using Cavaxis.Imaging.Frames;
using Cavaxis.Imaging.Tomography;
using Cavaxis.Imaging.Volumes;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Imaging.Tests.Tomography;

public sealed class AxisPictureTests
{
    private static readonly PhantomSetting Set = PhantomSettings.Of(5);
    private static readonly CavalPhantom Made = new(Set);
    private static readonly ScanVolume Scan = Made.Scan();
    private static readonly TracedAxis Axis = AxisTracer.Trace(Scan, new TraceRequest([Made.UpperSeed, Made.LowerSeed])).Axis!;

    [Fact]
    public void A_window_shows_its_middle_as_grey_and_cuts_both_ends()
    {
        GreyWindow window = new(100, 200);
        Assert.Equal((0, 128, 255, 0, 255), (window.Grey(0), window.Grey(100), window.Grey(200), window.Grey(-500), window.Grey(900)));
        Assert.Equal("window.widthHu", Assert.Throws<InputFaultException>(static () => new GreyWindow(40, 0)).Faults[0].Field);
    }

    [Fact]
    public void Planes_lie_as_they_are_read_with_the_patients_right_on_the_left()
    {
        // The lung lies to the right of the vein, the spine behind it: dark left edge, bright below.
        Vector3D at = Made.UpperSeed + (10 * Made.SvcDown);
        ImageFrame axial = AxisPictures.Plane(Scan, ViewPlane.Axial, new(at.X, at.Y, at.Z), new GreyWindow(150, 600), null, 100, 0.5);
        Assert.Equal((200, 200, 3), (axial.Width, axial.Height, axial.Channels));
        Assert.True(axial.Brightness((int)(100 + (2 * (-44 - at.X))), 100) < 10);
        Assert.True(axial.Brightness(100, 100) > 150);
        Assert.True(axial.Brightness((int)(100 + (2 * (18 - at.X))), (int)(100 + (2 * (48 - at.Y)))) > 200);
    }

    [Fact]
    public void The_line_and_the_wall_are_drawn_where_they_are()
    {
        AxisLandmark superior = Axis[CavalLandmark.Scaj];
        ImageFrame coronal = AxisPictures.Plane(Scan, ViewPlane.Coronal, superior.Place, new GreyWindow(150, 600), Axis, 120, 0.5);
        Assert.True(Coloured(coronal, 120, 120));
        ImageFrame straight = AxisPictures.Straightened(Scan, Axis, new GreyWindow(150, 600), 0, 80, 0.5);
        Assert.Equal((int)Math.Round(Axis.Line.LengthMm / 0.5), straight.Height);
        int middle = 80;
        Assert.All(Enumerable.Range(0, straight.Height), y => Assert.True(Coloured(straight, middle - 1, y) || Coloured(straight, middle, y)));
        int row = (int)(30 / 0.5);
        int green = Enumerable.Range(0, 160).Where(x => Coloured(straight, x, row) && Math.Abs(x - 79.5) > 2).Select(x => (int)Math.Abs(x - 79.5)).DefaultIfEmpty(0).Max();
        Assert.InRange(green * 0.5, Set.SvcRadiusMm - 1, Set.SvcRadiusMm + 1);
    }

    private static bool Coloured(ImageFrame frame, int x, int y)
    {
        ReadOnlySpan<byte> pixel = frame.Samples.Span.Slice(((y * frame.Width) + x) * 3, 3);
        return pixel[0] != pixel[1] || pixel[1] != pixel[2];
    }
}
