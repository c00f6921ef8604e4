using Cavaxis.Imaging.Frames;
using Cavaxis.Quantities.Faults;
using Cavaxis.Reports.Gif;
using Cavaxis.Reports.Png;
using CsCheck;
using SkiaSharp;

namespace Cavaxis.Reports.Tests.Frames;

/// <summary>Frames as files, read back by another's decoders.</summary>
public class FrameFileTests
{
    [Fact]
    public void A_grey_frame_comes_back_from_png_pixel_by_pixel()
    {
        ImageFrame frame = Grey(37, 21, 5);
        using SKBitmap bitmap = SKBitmap.Decode(PngFrameWriter.Write(frame));
        Assert.Equal((37, 21), (bitmap.Width, bitmap.Height));
        for (int y = 0; y < 21; y++)
        {
            for (int x = 0; x < 37; x++)
            {
                SKColor colour = bitmap.GetPixel(x, y);
                Assert.Equal((frame.Brightness(x, y), colour.Red, colour.Blue), (colour.Green, colour.Green, colour.Green));
            }
        }
    }

    [Fact]
    public void A_coloured_frame_comes_back_from_png()
    {
        ImageFrame frame = new(2, 1, 3, new byte[] { 1, 2, 3, 250, 120, 7 });
        using SKBitmap bitmap = SKBitmap.Decode(PngFrameWriter.Write(frame));
        Assert.Equal((new SKColor(1, 2, 3), new SKColor(250, 120, 7)), (bitmap.GetPixel(0, 0), bitmap.GetPixel(1, 0)));
    }

    // Sizes and contents by chance: the codes grow, the table fills and is begun again.
    [Fact]
    public void Frames_come_back_from_gif_pixel_by_pixel() => Gen.Select(Gen.Int[1, 180], Gen.Int[1, 120], Gen.Int[1, 3], Gen.Int[1, 256], Gen.Int[0, 1_000_000]).Sample(
        static (width, height, count, greys, seed) =>
        {
            ImageFrame[] frames = [.. Enumerable.Range(0, count).Select(i => Grey(width, height, seed + i, greys))];
            using SKData data = SKData.CreateCopy(GifWriter.Write(frames, 10));
            using SKCodec codec = SKCodec.Create(data);
            Assert.Equal((width, height, count), (codec.Info.Width, codec.Info.Height, codec.FrameCount));
            for (int i = 0; i < count; i++)
            {
                using SKBitmap bitmap = new(new SKImageInfo(width, height, SKColorType.Rgba8888, SKAlphaType.Unpremul));
                Assert.Equal(SKCodecResult.Success, codec.GetPixels(bitmap.Info, bitmap.GetPixels(), new SKCodecOptions(i)));
                byte[] pixels = bitmap.Bytes;
                ReadOnlySpan<byte> wanted = frames[i].Samples.Span;
                for (int p = 0; p < wanted.Length; p++)
                {
                    Assert.Equal((wanted[p], wanted[p], wanted[p]), (pixels[4 * p], pixels[(4 * p) + 1], pixels[(4 * p) + 2]));
                }
            }
        },
        iter: 30);

    [Fact]
    public void A_gif_keeps_its_speed_and_refuses_frames_of_two_sizes()
    {
        using SKData data = SKData.CreateCopy(GifWriter.Write([Grey(8, 8, 1), Grey(8, 8, 2)], 5));
        using SKCodec codec = SKCodec.Create(data);
        Assert.Equal([200, 200], codec.FrameInfo.Select(static f => f.Duration));
        Assert.Equal(-1, codec.RepetitionCount);
        Assert.Equal("gif.frames", Assert.Throws<InputFaultException>(static () => GifWriter.Write([Grey(8, 8, 1), Grey(8, 9, 2)], 5)).Faults[0].Field);
        Assert.Equal("gif.frames", Assert.Throws<InputFaultException>(static () => GifWriter.Write([], 5)).Faults[0].Field);
    }

    private static ImageFrame Grey(int width, int height, int seed, int greys = 256)
    {
        byte[] pixels = new byte[width * height];
        new Random(seed).NextBytes(pixels);
        return new ImageFrame(width, height, 1, pixels.Select(p => (byte)(p % greys)).ToArray());
    }
}
