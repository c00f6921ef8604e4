using Cavaxis.Dicom.Headers;
using Cavaxis.Imaging.Frames;

namespace Cavaxis.Dicom.Pixels;

/// <summary>Makes of stored values the 8 bits that are shown.</summary>
internal static class Display
{
    /// <summary>The frame as it is shown.</summary>
    /// <param name="frame">Stored values.</param>
    /// <param name="header">Rescale and window.</param>
    /// <param name="palette">Colours of a picture that stores numbers of colours; null where it needs none.</param>
    public static ImageFrame Of(StoredFrame frame, ImageHeader header, Palette? palette)
    {
        int pixels = frame.Width * frame.Height;
        if (palette is not null)
        {
            byte[] coloured = new byte[pixels * 3];
            for (int i = 0; i < pixels; i++)
            {
                palette.Colour(frame.At(i), coloured.AsSpan(i * 3, 3));
            }

            return new ImageFrame(frame.Width, frame.Height, 3, coloured);
        }

        return frame.Samples == 3
            ? new ImageFrame(frame.Width, frame.Height, 3, Coloured(frame, pixels))
            : new ImageFrame(frame.Width, frame.Height, 1, Grey(frame, header, pixels));
    }

    private static byte[] Coloured(StoredFrame frame, int pixels)
    {
        byte[] shown = new byte[pixels * 3];
        int drop = Math.Max(0, frame.BitsStored - 8);
        for (int i = 0; i < shown.Length; i++)
        {
            shown[i] = (byte)Math.Clamp(frame.At(i) >> drop, 0, 255);
        }

        // The reversible and irreversible transforms of JPEG 2000 are undone by its decoder: only the full-range one is left.
        if (frame.Colours is "YBR_FULL" or "YBR_FULL_422")
        {
            for (int i = 0; i < shown.Length; i += 3)
            {
                ToRgb(shown.AsSpan(i, 3));
            }
        }

        return shown;
    }

    /// <summary>Full-range luminance and colour differences to red, green and blue (PS3.3 C.7.6.3.1.2, ITU-R BT.601).</summary>
    private static void ToRgb(Span<byte> pixel)
    {
        (double y, double cb, double cr) = (pixel[0], pixel[1] - 128.0, pixel[2] - 128.0);
        pixel[0] = Byte(y + (1.402 * cr));
        pixel[1] = Byte(y - (0.344136 * cb) - (0.714136 * cr));
        pixel[2] = Byte(y + (1.772 * cb));
    }

    private static byte[] Grey(StoredFrame frame, ImageHeader header, int pixels)
    {
        (double low, double high) = Range(frame, header, pixels);
        bool isInverse = frame.Colours == "MONOCHROME1";
        byte[] shown = new byte[pixels];
        for (int i = 0; i < pixels; i++)
        {
            double unit = (frame.At(i) * header.RescaleSlope) + header.RescaleIntercept;
            byte grey = high > low ? Byte((unit - low) / (high - low) * 255) : (byte)(unit > high ? 255 : 0);
            shown[i] = isInverse ? (byte)(255 - grey) : grey;
        }

        return shown;
    }

    /// <summary>
    /// Units that are shown black and white: the maker's window by the linear function of PS3.3 C.11.2.1.2.1; eight bits as they are;
    /// else from the least to the greatest value of the frame.
    /// </summary>
    private static (double Low, double High) Range(StoredFrame frame, ImageHeader header, int pixels)
    {
        if (header.Window is (double centre, double width))
        {
            return (centre - 0.5 - ((width - 1) / 2), centre - 0.5 + ((width - 1) / 2));
        }

        if (frame.BitsStored == 8 && !frame.IsSigned && header is { RescaleSlope: 1, RescaleIntercept: 0 })
        {
            return (0, 255);
        }

        (double low, double high) = (double.PositiveInfinity, double.NegativeInfinity);
        for (int i = 0; i < pixels; i++)
        {
            double unit = (frame.At(i) * header.RescaleSlope) + header.RescaleIntercept;
            (low, high) = (Math.Min(low, unit), Math.Max(high, unit));
        }

        return (low, high);
    }

    private static byte Byte(double value) => (byte)Math.Clamp(Math.Round(value), 0, 255);
}
