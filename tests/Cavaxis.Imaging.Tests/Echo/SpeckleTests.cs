using Cavaxis.Imaging.Echo;

namespace Cavaxis.Imaging.Tests.Echo;

public class SpeckleTests
{
    private const double Frequency = 5;
    private const double Focus = 30;
    private const double Aperture = 12;
    private const double Width = 40;
    private static readonly EchoFrame[] Tissue = [.. Enumerable.Range(1, 3).Select(static seed => EchoRenderer.Render(
        new EchoScene((ulong)seed, Surroundings.Tissue(), null, []), EchoBench.Plane,
        new Probe(ProbeKind.Linear, Frequency, 38, Focus, Aperture, widthMm: Width, sliceApertureMm: 5, sliceFocusMm: Focus),
        new EchoDisplay(128, 128, depthGainDbPerCmMHz: 0.5, noiseDb: -120)))];

    // Rayleigh: mean over deviation √(π/(4 − π)) = 1.913 (Burckhardt 1978, from memory; value 1.91 seen in PMC4916161).
    [Fact]
    public void Speckle_of_tissue_is_fully_developed()
    {
        double[] all = [.. Tissue.SelectMany(static f => Cells(f, 26, 34))];
        double mean = all.Average();
        double deviation = Math.Sqrt(all.Average(v => (v - mean) * (v - mean)));
        Assert.InRange(mean / deviation, 1.913 - 0.06, 1.913 + 0.06);
        // Mean square one: the beam's energy is one at every depth.
        Assert.InRange(all.Average(static v => v * v), 0.9, 1.1);
    }

    [Fact]
    public void The_mean_is_even_over_depth()
    {
        double near = Tissue.Average(static f => Cells(f, 10, 16).Average(static v => v * v));
        double far = Tissue.Average(static f => Cells(f, 30, 36).Average(static v => v * v));
        Assert.InRange(near / far, 0.85, 1.18);
    }

    // Quantiles of the Rayleigh distribution, P(v < x) = 1 − exp(−x²).
    [Theory]
    [InlineData(0.1)]
    [InlineData(0.5)]
    [InlineData(0.9)]
    public void Magnitudes_follow_rayleigh(double share)
    {
        double[] all = [.. Tissue.SelectMany(static f => Cells(f, 26, 34))];
        double power = all.Average(static v => v * v);
        double bound = Math.Sqrt(-power * Math.Log(1 - share));
        Assert.InRange(all.Count(v => v < bound) / (double)all.Length, share - 0.02, share + 0.02);
    }

    // Wagner, Smith, Sandrik and Lopez 1983 (IEEE Trans Sonics Ultrason 30:156, from memory; Wagner, Insana and Brown 1987 as PMC5657192): the autocovariance of
    // the intensity of fully developed speckle is the square of the point's own autocorrelation. A Gaussian pulse: as wide at half as the pulse.
    [Fact]
    public void Speckle_is_as_long_as_the_pulse()
    {
        double theory = 1.540 / 2 * 4 * Math.Log(2) / (Math.PI * 0.6 * Frequency);
        Assert.InRange(2 * HalfWidth(static (f, lag) => Covariance(f, 0, lag)) * Tissue[0].Beams.SampleMm / theory, 0.93, 1.09);
    }

    // Across, the point at the focus is sinc², its autocorrelation the transform of tri², computed here by a sum.
    [Fact]
    public void Speckle_is_as_wide_as_the_aperture_says()
    {
        double theory = 0.1;
        while (Math.Pow(Transform(theory) / Transform(0), 2) > 0.5)
        {
            theory += 1e-4;
        }

        theory *= 1.540 / Frequency * Focus / Aperture;
        double pitch = Width / (Tissue[0].Beams.Lines - 1);
        Assert.InRange(HalfWidth(static (f, lag) => Covariance(f, lag, 0)) * pitch / theory, 0.92, 1.1);
    }

    // The same paper's width of a cell, the sum of the normalised autocovariance: 0.87 λ z/D (from memory).
    [Fact]
    public void A_cell_of_speckle_has_the_published_width()
    {
        double pitch = Width / (Tissue[0].Beams.Lines - 1);
        int reach = (int)(1.2 * 1.540 / Frequency * Focus / Aperture / pitch);
        double none = Tissue.Average(static f => Covariance(f, 0, 0));
        double sum = 0;
        for (int lag = -reach; lag <= reach; lag++)
        {
            sum += Tissue.Average(f => Covariance(f, Math.Abs(lag), 0)) / none;
        }

        Assert.InRange(sum * pitch / (0.87 * 1.540 / Frequency * Focus / Aperture), 0.85, 1.17);
    }

    private static double Transform(double u)
    {
        double sum = 0;
        for (double f = -1 + 5e-4; f < 1; f += 1e-3)
        {
            sum += (1 - Math.Abs(f)) * (1 - Math.Abs(f)) * Math.Cos(2 * Math.PI * f * u) * 1e-3;
        }

        return sum;
    }

    private static double HalfWidth(Func<EchoFrame, int, double> covariance)
    {
        double none = Tissue.Average(f => covariance(f, 0));
        double before = 1;
        for (int lag = 1; ; lag++)
        {
            double now = Tissue.Average(f => covariance(f, lag)) / none;
            if (now < 0.5)
            {
                return lag - 1 + ((before - 0.5) / (before - now));
            }

            before = now;
        }
    }

    private static double Covariance(EchoFrame frame, int lines, int samples)
    {
        (int first, int last) = ((int)(26 / frame.Beams.SampleMm), (int)(34 / frame.Beams.SampleMm));
        ReadOnlySpan<float> all = frame.Beams.Envelope.Span;
        int wide = frame.Beams.Lines;
        double mean = 0;
        double product = 0;
        long count = 0;
        for (int s = first; s < last; s++)
        {
            for (int l = wide / 10; l < (wide * 9 / 10) - lines; l++)
            {
                double a = all[(s * wide) + l] * (double)all[(s * wide) + l];
                double b = all[((s + samples) * wide) + l + lines] * (double)all[((s + samples) * wide) + l + lines];
                mean += (a + b) / 2;
                product += a * b;
                count++;
            }
        }

        mean /= count;
        return (product / count) - (mean * mean);
    }

    private static IEnumerable<double> Cells(EchoFrame frame, double from, double to)
    {
        for (int s = (int)(from / frame.Beams.SampleMm); s < to / frame.Beams.SampleMm; s++)
        {
            for (int l = frame.Beams.Lines / 10; l < frame.Beams.Lines * 9 / 10; l++)
            {
                yield return frame.Beams.At(l, s);
            }
        }
    }
}
