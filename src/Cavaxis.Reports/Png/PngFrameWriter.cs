using Cavaxis.Imaging.Frames;
using SkiaSharp;

namespace Cavaxis.Reports.Png;

/// <summary>Writes a frame of an image as PNG, pixel by pixel as it is; the same frame gives the same bytes.</summary>
public static class PngFrameWriter
{
    /// <summary>The frame as a file.</summary>
    /// <param name="frame">Grey or red-green-blue.</param>
    /// <returns>The bytes of the file.</returns>
    /// <exception cref="InvalidOperationException">The frame cannot be encoded.</exception>
    public static byte[] Write(ImageFrame frame)
    {
        ArgumentNullException.ThrowIfNull(frame);
        bool isGrey = frame.Channels == 1;
        SKImageInfo info = new(frame.Width, frame.Height, isGrey ? SKColorType.Gray8 : SKColorType.Rgb888x, SKAlphaType.Opaque);
        byte[] pixels = isGrey ? frame.Samples.ToArray() : Padded(frame.Samples.Span);
        using SKData data = SKData.CreateCopy(pixels);
        using SKImage image = SKImage.FromPixels(info, data, info.RowBytes) ?? throw new InvalidOperationException("The frame is no picture.");
        using SKData file = image.Encode(SKEncodedImageFormat.Png, 100) ?? throw new InvalidOperationException("The frame could not be encoded.");
        return file.ToArray();
    }

    private static byte[] Padded(ReadOnlySpan<byte> samples)
    {
        byte[] pixels = new byte[samples.Length / 3 * 4];
        for (int i = 0, j = 0; i < samples.Length; i += 3, j += 4)
        {
            samples.Slice(i, 3).CopyTo(pixels.AsSpan(j));
            pixels[j + 3] = 255;
        }

        return pixels;
    }
}
