using Cavaxis.Imaging.Frames;
using Cavaxis.Reports.Png;
using SkiaSharp;

namespace Cavaxis.Reports.Tests.Png;

public sealed class PngFrameWriterTests
{
    [Fact]
    public void A_grey_frame_comes_back_pixel_by_pixel()
    {
        ImageFrame frame = new(3, 2, 1, new byte[] { 0, 1, 127, 128, 254, 255 });
        using SKBitmap read = SKBitmap.Decode(PngFrameWriter.Write(frame));
        Assert.Equal((3, 2), (read.Width, read.Height));
        Assert.Equal([0, 1, 127, 128, 254, 255], read.Pixels.Select(static p => (int)p.Red));
        Assert.All(read.Pixels, static p => Assert.True(p.Red == p.Green && p.Green == p.Blue && p.Alpha == 255));
    }

    [Fact]
    public void A_coloured_frame_keeps_its_colours_in_their_places()
    {
        using SKBitmap read = SKBitmap.Decode(PngFrameWriter.Write(new ImageFrame(2, 1, 3, new byte[] { 10, 20, 30, 200, 100, 50 })));
        Assert.Equal([new SKColor(10, 20, 30), new SKColor(200, 100, 50)], read.Pixels);
    }
}
