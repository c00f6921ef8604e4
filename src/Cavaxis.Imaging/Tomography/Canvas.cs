using Cavaxis.Imaging.Frames;

namespace Cavaxis.Imaging.Tomography;

/// <summary>A picture in the making: grey ground and coloured marks.</summary>
internal sealed class Canvas
{
    private readonly int width;
    private readonly int height;
    private readonly byte[] samples;

    /// <summary>A picture.</summary>
    /// <param name="width">Columns.</param>
    /// <param name="height">Rows.</param>
    /// <param name="grey">Grey of a pixel.</param>
    public Canvas(int width, int height, Func<int, int, byte> grey)
    {
        (this.width, this.height, samples) = (width, height, new byte[width * height * 3]);
        _ = Parallel.For(0, height, y =>
        {
            for (int x = 0; x < width; x++)
            {
                samples.AsSpan(((y * width) + x) * 3, 3).Fill(grey(x, y));
            }
        });
    }

    /// <summary>Sets a pixel; outside of the picture nothing happens.</summary>
    /// <param name="x">Column, rounded.</param>
    /// <param name="y">Row, rounded.</param>
    /// <param name="colour">Red, green, blue.</param>
    public void Mark(double x, double y, (byte Red, byte Green, byte Blue) colour)
    {
        int column = (int)Math.Round(x);
        int row = (int)Math.Round(y);
        if (column >= 0 && column < width && row >= 0 && row < height)
        {
            int at = ((row * width) + column) * 3;
            (samples[at], samples[at + 1], samples[at + 2]) = colour;
        }
    }

    /// <summary>A straight line.</summary>
    /// <param name="from">One end.</param>
    /// <param name="to">The other.</param>
    /// <param name="colour">Red, green, blue.</param>
    public void Line((double X, double Y) from, (double X, double Y) to, (byte Red, byte Green, byte Blue) colour)
    {
        int steps = 1 + (int)Math.Ceiling(Math.Max(Math.Abs(to.X - from.X), Math.Abs(to.Y - from.Y)));
        for (int i = 0; i <= steps; i++)
        {
            Mark(from.X + (i * (to.X - from.X) / steps), from.Y + (i * (to.Y - from.Y) / steps), colour);
        }
    }

    /// <summary>The picture as a frame.</summary>
    public ImageFrame Frame() => new(width, height, 3, samples);
}
