using Cavaxis.Imaging.Calibration;
using Cavaxis.Imaging.Doppler;
using Cavaxis.Imaging.Frames;
using Cavaxis.Imaging.Tests.Samples;

namespace Cavaxis.Imaging.Tests.Doppler;

/// <summary>
/// Spectra with a known envelope, drawn by the tests: noise with the speckle of a spectrum, a faint fill up to the envelope that fades over two rows, a bright modal band inside it and a
/// dark window between that band and the baseline.
/// </summary>
internal sealed class SpectrumPicture
{
    public const int Columns = 400;
    public const int Rows = 160;
    public const int Baseline = 120;

    private SpectrumPicture(ImageFrame frame, SpectralAxes axes) => (Frame, Axes) = (frame, axes);

    public ImageFrame Frame { get; }

    public SpectralAxes Axes { get; }

    /// <param name="speed">Speed over time, cm/s, not negative.</param>
    /// <param name="seed">Seed of the noise.</param>
    /// <param name="below">True to draw below the baseline.</param>
    /// <param name="noise">Mean of the noise, grey steps.</param>
    /// <param name="speckle">Spread of speckle, grey steps.</param>
    public static SpectrumPicture Of(Func<double, double> speed, int seed, bool below = false, double noise = 14, double speckle = 18)
    {
        Random random = new(seed);
        int baseline = below ? Rows - Baseline : Baseline;
        byte[] bytes = new byte[Columns * Rows];
        for (int x = 0; x < Columns; x++)
        {
            double envelope = speed(x * 0.01);
            for (int y = 0; y < Rows; y++)
            {
                double v = below ? y - baseline : baseline - y;
                double mean = v <= 0 || v > envelope + 2 ? noise
                    : v > envelope - 2 ? noise + (70 * (envelope + 2 - v) / 4)
                    : Math.Abs(v - (0.85 * envelope)) < 0.06 * envelope ? 215
                    : v < 0.55 * envelope ? noise
                    : noise + 70;

                // Log-compressed speckle: the logarithm of an exponential number, about its mean, in grey steps.
                double grain = speckle * (Math.Log(-Math.Log(1 - random.NextDouble())) + 0.5772) * (mean > noise + 1 ? 1 : 0.4);
                bytes[(y * Columns) + x] = (byte)Math.Clamp(mean + grain, 0, 255);
            }
        }

        CalibratedRegion region = Boxes.Spectrum(0, 0, Columns - 1, Rows - 1, baseline);
        return new SpectrumPicture(new ImageFrame(Columns, Rows, 1, bytes), SpectralAxes.Of(RegionJudge.Judge(Columns, Rows, [region]).Regions[0]));
    }
}
