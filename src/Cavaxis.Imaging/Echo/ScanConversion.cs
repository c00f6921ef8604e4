using Cavaxis.Imaging.Frames;

namespace Cavaxis.Imaging.Echo;

/// <summary>From lines to pixels: magnitudes between four cells, logarithm, grey.</summary>
internal static class ScanConversion
{
    private const double MiddleGrey = 0.5;

    /// <summary>The picture of detected echoes.</summary>
    public static EchoFrame Picture(BeamLayout layout, ScanPlane plane, EchoDisplay display, float[] envelope)
    {
        PictureGrid grid = Grid(layout, plane, display);
        byte[] pixels = new byte[grid.Width * grid.Height];
        int lines = layout.Lines;
        for (int y = 0; y < grid.Height; y++)
        {
            for (int x = 0; x < grid.Width; x++)
            {
                (double right, double down) = grid.Within(x, y);
                (double line, double depth) = layout.Of(right, down);
                double sample = depth / layout.SampleMm;
                // A last bit of rounding must not decide whether the outermost line is seen.
                if (line < -1e-6 || line > lines - 1 + 1e-6 || sample < -1e-6 || sample > layout.Samples - 1 + 1e-6)
                {
                    continue;
                }

                int l = Math.Clamp((int)line, 0, lines - 2);
                int s = Math.Clamp((int)sample, 0, layout.Samples - 2);
                double u = Math.Clamp(line - l, 0, 1);
                double v = Math.Clamp(sample - s, 0, 1);
                int at = (s * lines) + l;
                double near = ((1 - u) * envelope[at]) + (u * envelope[at + 1]);
                double far = ((1 - u) * envelope[at + lines]) + (u * envelope[at + lines + 1]);
                pixels[(y * grid.Width) + x] = Grey(near + (v * (far - near)), display);
            }
        }

        double step = grid.MmPerPixel / 10;
        (double faceX, double faceY) = grid.Pixel(0, 0);
        CalibratedRegion region = new(
            RegionFormat.TwoDimensional, RegionContent.Tissue, 0, 0, grid.Width - 1, grid.Height - 1, RegionUnit.Centimetre, RegionUnit.Centimetre, step, step,
            (int)Math.Round(faceX), (int)Math.Round(faceY), (Math.Round(faceX) - faceX) * step, (Math.Round(faceY) - faceY) * step);
        return new EchoFrame(new ImageFrame(grid.Width, grid.Height, 1, pixels), region, grid, new BeamEcho(lines, layout.Samples, layout.SampleMm, envelope));
    }

    /// <summary>Grey of a magnitude.</summary>
    public static byte Grey(double magnitude, EchoDisplay display)
    {
        double decibel = (20 * Math.Log10(Math.Max(magnitude, 1e-9))) + display.GainDb;
        return (byte)Math.Round(255 * Math.Clamp((decibel / display.DynamicRangeDb) + MiddleGrey, 0, 1));
    }

    /// <summary>Where the pixels of a picture lie.</summary>
    public static PictureGrid Grid(BeamLayout layout, ScanPlane plane, EchoDisplay display)
    {
        (double left, double right, double top, double bottom) = layout.Bounds();
        double step = Math.Max((right - left) / (display.WidthPixels - 1), (bottom - top) / (display.HeightPixels - 1));
        return new PictureGrid(plane, display.WidthPixels, display.HeightPixels, step, -step * (display.WidthPixels - 1) / 2, top);
    }
}
