using Cavaxis.Imaging.Frames;
using SkiaSharp;

namespace Cavaxis.Reports.Png;

/// <summary>Writes a frame as a PNG picture, pixel by pixel as it is.</summary>
public static class FramePng
{
    /// <summary>The frame as a file.</summary>
    /// <param name="frame">The frame.</param>
    /// <returns>The bytes of the file.</returns>
    public static byte[] Write(ImageFrame frame)
    {
        ArgumentNullException.ThrowIfNull(frame);
        byte[] samples = frame.Channels == 1 ? frame.Samples.ToArray() : WithAlpha(frame.Samples.Span);
        SKImageInfo size = frame.Channels == 1
            ? new SKImageInfo(frame.Width, frame.Height, SKColorType.Gray8, SKAlphaType.Opaque)
            : new SKImageInfo(frame.Width, frame.Height, SKColorType.Rgba8888, SKAlphaType.Opaque);
        using SKData pixels = SKData.CreateCopy(samples);
        using SKImage image = SKImage.FromPixels(size, pixels, size.RowBytes);
        using SKData file = image.Encode(SKEncodedImageFormat.Png, 100);
        return file.ToArray();
    }

    private static byte[] WithAlpha(ReadOnlySpan<byte> colours)
    {
        byte[] samples = new byte[colours.Length / 3 * 4];
        for (int i = 0, j = 0; i < colours.Length; i += 3, j += 4)
        {
            colours.Slice(i, 3).CopyTo(samples.AsSpan(j));
            samples[j + 3] = byte.MaxValue;
        }

        return samples;
    }
}
