using Cavaxis.Imaging.Frames;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Imaging.Tests.Frames;

public sealed class ImageFrameTests
{
    [Fact]
    public void Brightness_weighs_the_colours_as_BT_601_does()
    {
        ImageFrame frame = new(3, 1, 3, new byte[] { 255, 0, 0, 0, 255, 0, 0, 0, 255 });
        Assert.Equal(0.299 * 255, frame.Brightness(0, 0), 1e-9);
        Assert.Equal(0.587 * 255, frame.Brightness(1, 0), 1e-9);
        Assert.Equal(0.114 * 255, frame.Brightness(2, 0), 1e-9);
    }

    [Theory]
    [InlineData(0, 1, 1, 0, "frame.width")]
    [InlineData(1, 20_000, 1, 20_000, "frame.height")]
    [InlineData(1, 1, 4, 4, "frame.channels")]
    [InlineData(2, 2, 3, 11, "frame.samples")]
    public void A_frame_whose_pixels_cannot_be_is_refused_by_name(int width, int height, int channels, int bytes, string field) =>
        Assert.Equal(field, Assert.Throws<InputFaultException>(() => new ImageFrame(width, height, channels, new byte[bytes])).Faults[0].Field);

    [Fact]
    public void A_region_holds_its_edges() =>
        Assert.Equal(
            (true, true, false),
            (Box.Holds(10, 20), Box.Holds(30, 40), Box.Holds(31, 40)));

    private static CalibratedRegion Box { get; } =
        new(RegionFormat.TwoDimensional, RegionContent.Tissue, 10, 20, 30, 40, RegionUnit.Centimetre, RegionUnit.Centimetre, 0.02, 0.02);
}
