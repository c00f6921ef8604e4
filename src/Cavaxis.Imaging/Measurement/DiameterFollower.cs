using Cavaxis.Imaging.Calibration;
using Cavaxis.Imaging.Frames;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Imaging.Measurement;

/// <summary>
/// Follows the two walls of a dark vessel through a loop, along the line through two points placed on the first frame. On each frame the brightness along the line, averaged
/// over a band, is searched from the middle outwards for the first place where it passes half way between lumen and tissue. A proposal: each frame's points can be moved.
/// </summary>
public static class DiameterFollower
{
    private const double BandHalfWidthPx = 3;
    private const double StepPx = 0.25;

    /// <summary>Two points on the walls for each frame.</summary>
    /// <param name="frames">The loop, at least one frame, all of one size.</param>
    /// <param name="from">On one wall, on the first frame.</param>
    /// <param name="to">On the other wall.</param>
    /// <returns>Two points a frame; null on a frame where no wall was found.</returns>
    /// <exception cref="InputFaultException">No frame, frames of different size, or points too close together.</exception>
    public static IReadOnlyList<(PixelPoint From, PixelPoint To)?> Follow(IReadOnlyList<ImageFrame> frames, PixelPoint from, PixelPoint to)
    {
        ArgumentNullException.ThrowIfNull(frames);
        if (frames.Count == 0 || frames.Any(f => f.Width != frames[0].Width || f.Height != frames[0].Height))
        {
            throw new InputFaultException(new InputFault(FaultCode.Contradiction, "frames", frames.Count == 0 ? "(nothing)" : "different sizes", "frames of one loop", "Give the frames of one file."));
        }

        double length = Require.InRange(from.DistanceTo(to), 8, 10_000, "points", "Place the two points on the two walls, eight pixels apart or more.");
        double dx = (to.X - from.X) / length;
        double dy = (to.Y - from.Y) / length;
        double middle = length / 2;
        double half = length / 2;
        List<(PixelPoint From, PixelPoint To)?> found = [];
        foreach (ImageFrame frame in frames)
        {
            (double Near, double Far)? walls = Walls(frame, from, dx, dy, middle, half);
            found.Add(walls is (double near, double far) ? (At(near), At(far)) : null);
            if (walls is (double a, double b))
            {
                (middle, half) = ((a + b) / 2, (b - a) / 2);
            }
        }

        return found;

        PixelPoint At(double along) => new(from.X + (along * dx), from.Y + (along * dy));
    }

    private static (double Near, double Far)? Walls(ImageFrame frame, PixelPoint origin, double dx, double dy, double middle, double half)
    {
        double reach = Math.Max(2 * half, half + 12);
        double lumen = Median(frame, origin, dx, dy, middle - (half / 2), middle + (half / 2));
        double tissue = Math.Max(Median(frame, origin, dx, dy, middle - reach, middle - half), Median(frame, origin, dx, dy, middle + half, middle + reach));
        if (!(tissue > lumen + 10))
        {
            return null;
        }

        double level = (lumen + tissue) / 2;
        double? near = Crossing(frame, origin, dx, dy, middle, -1, reach, level);
        double? far = Crossing(frame, origin, dx, dy, middle, 1, reach, level);
        return near is double a && far is double b ? (a, b) : null;
    }

    private static double? Crossing(ImageFrame frame, PixelPoint origin, double dx, double dy, double middle, int way, double reach, double level)
    {
        double before = Band(frame, origin, dx, dy, middle);
        for (double d = StepPx; d <= reach; d += StepPx)
        {
            double here = Band(frame, origin, dx, dy, middle + (way * d));
            if (double.IsNaN(here))
            {
                return null;
            }

            if (here >= level)
            {
                return middle + (way * (d - (StepPx * (here - level) / Math.Max(1e-9, here - before))));
            }

            before = here;
        }

        return null;
    }

    private static double Median(ImageFrame frame, PixelPoint origin, double dx, double dy, double low, double high)
    {
        List<double> values = [];
        for (double along = low; along <= high; along += 1)
        {
            double value = Band(frame, origin, dx, dy, along);
            if (!double.IsNaN(value))
            {
                values.Add(value);
            }
        }

        values.Sort();
        return values.Count == 0 ? double.NaN : values[values.Count / 2];
    }

    // Mean brightness across the line; not a number outside the frame.
    private static double Band(ImageFrame frame, PixelPoint origin, double dx, double dy, double along)
    {
        double sum = 0;
        int count = 0;
        for (double across = -BandHalfWidthPx; across <= BandHalfWidthPx; across++)
        {
            double x = origin.X + (along * dx) - (across * dy);
            double y = origin.Y + (along * dy) + (across * dx);
            int i = (int)Math.Floor(x);
            int j = (int)Math.Floor(y);
            if (i >= 0 && j >= 0 && i + 1 < frame.Width && j + 1 < frame.Height)
            {
                double u = x - i;
                double v = y - j;
                sum += ((1 - v) * (((1 - u) * frame.Brightness(i, j)) + (u * frame.Brightness(i + 1, j))))
                    + (v * (((1 - u) * frame.Brightness(i, j + 1)) + (u * frame.Brightness(i + 1, j + 1))));
                count++;
            }
        }

        return count == 0 ? double.NaN : sum / count;
    }
}
