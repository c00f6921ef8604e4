using System.Globalization;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Imaging.Frames;

/// <summary>One frame as it is shown: 8 bits a sample, grey or red-green-blue, rows from the top, samples of a pixel side by side.</summary>
public sealed class ImageFrame
{
    /// <summary>Longest edge that is read, pixels.</summary>
    public const int LongestEdge = 16_384;

    /// <summary>A frame of pixels.</summary>
    /// <param name="width">Columns, 1 to <see cref="LongestEdge"/>.</param>
    /// <param name="height">Rows, 1 to <see cref="LongestEdge"/>.</param>
    /// <param name="channels">1 for grey, 3 for red, green, blue.</param>
    /// <param name="samples">Exactly width × height × channels bytes; the caller must not change them afterwards.</param>
    /// <exception cref="InputFaultException">A size is outside its bounds, or the number of bytes is another.</exception>
    public ImageFrame(int width, int height, int channels, ReadOnlyMemory<byte> samples)
    {
        const string Remedy = "Give a frame whose header and pixels agree.";
        Width = (int)Require.InRange(width, 1, LongestEdge, "frame.width", Remedy);
        Height = (int)Require.InRange(height, 1, LongestEdge, "frame.height", Remedy);
        if (channels is not (1 or 3))
        {
            throw new InputFaultException(new InputFault(FaultCode.NotAChoice, "frame.channels", channels.ToString(CultureInfo.InvariantCulture), "1 (grey) or 3 (red, green, blue)", Remedy));
        }

        Channels = channels;
        long expected = (long)width * height * channels;
        if (samples.Length != expected)
        {
            throw new InputFaultException(new InputFault(
                FaultCode.WrongLength, "frame.samples", samples.Length.ToString(CultureInfo.InvariantCulture), string.Create(CultureInfo.InvariantCulture, $"{expected} bytes"), Remedy));
        }

        Samples = samples;
    }

    /// <summary>Columns.</summary>
    public int Width { get; }

    /// <summary>Rows.</summary>
    public int Height { get; }

    /// <summary>Samples a pixel: 1 or 3.</summary>
    public int Channels { get; }

    /// <summary>All samples.</summary>
    public ReadOnlyMemory<byte> Samples { get; }

    /// <summary>Brightness of a pixel, 0 to 255; of a coloured one by ITU-R BT.601: 0.299 R + 0.587 G + 0.114 B.</summary>
    /// <param name="x">Column, from 0.</param>
    /// <param name="y">Row, from 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">The pixel is outside the frame.</exception>
    public double Brightness(int x, int y)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(x);
        ArgumentOutOfRangeException.ThrowIfNegative(y);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(x, Width);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(y, Height);
        ReadOnlySpan<byte> pixel = Samples.Span.Slice(((y * Width) + x) * Channels, Channels);
        return Channels == 1 ? pixel[0] : (0.299 * pixel[0]) + (0.587 * pixel[1]) + (0.114 * pixel[2]);
    }
}
