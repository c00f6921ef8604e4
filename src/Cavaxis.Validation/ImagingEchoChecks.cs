using System.Globalization;
using Cavaxis.Anatomy.Space;
using Cavaxis.Devices.Catalogue;
using Cavaxis.Imaging.Echo;
using Cavaxis.Quantities;

namespace Cavaxis.Validation;

/// <summary>Synthetic ultrasound: where a point appears, how wide it is, and what speckle is like.</summary>
public sealed class ImagingEchoChecks : IReferenceChecks
{
    private const double FrequencyMHz = 5;
    private const double FocusMm = 30;
    private const double ApertureMm = 12;
    private const double WidthMm = 40;
    private const double Bandwidth = 0.6;
    private const double LambdaF = 1.540 / FrequencyMHz * FocusMm / ApertureMm;

    private static readonly ScanPlane Plane = new(default, new Vector3D(0, 1, 0));
    private static readonly Probe Linear = new(ProbeKind.Linear, FrequencyMHz, 40, FocusMm, ApertureMm, WidthMm, bandwidth: Bandwidth, sliceApertureMm: 5, sliceFocusMm: FocusMm);
    private static readonly EchoDisplay Quiet = new(128, 128, depthGainDbPerCmMHz: 0.5, noiseDb: -120);

    private static readonly Source Flight = new("Depth = c t/2 at the convention of 1540 m/s", Certainty.ClosedForm);
    private static readonly Source Pulse = new("Gaussian spectrum B wide at half amplitude: c/2 · 4 ln 2/(π B)", Certainty.ClosedForm);
    private static readonly Source Aperture = new("Fourier transform of a rectangular aperture, there and back: sinc²(x D/(λ z))", Certainty.ClosedForm);
    private static readonly Source Rayleigh = new("Rayleigh distribution: √(π/(4 − π)); 1.91 for fully developed speckle in PMC4916161, figure 12", Certainty.Seen);
    private static readonly Source Cell = new("Wagner, Smith, Sandrik and Lopez 1983, IEEE Trans Sonics Ultrason 30:156: cell 0.87 λ z/D wide", Certainty.FromMemory);
    private static readonly Source Wagner = new("Wagner 1983 and 1987: covariance of intensity is the square of the pulse's autocorrelation; evaluated for a Gaussian", Certainty.ClosedForm);
    private static readonly Source Across = new("To and fro across a lumen: way 2 d, depth half of it", Certainty.ClosedForm);

    /// <inheritdoc/>
    public IEnumerable<ValidationRow> Rows() => [.. Points(), .. Speckle(), Lumen()];

    private static IEnumerable<ValidationRow> Points()
    {
        foreach (double depth in new[] { 12.3, 30, 37.7 })
        {
            EchoFrame frame = Render(new EchoScene(1, Surroundings.WaterBath, null, [new EchoPoint(Plane.Place(0, depth), 10)]));
            double[] line = Line(frame);
            yield return Row(
                string.Create(CultureInfo.InvariantCulture, $"Depth at which a point {depth} mm deep appears"), Flight, depth, Peak(line, 1, line.Length - 1) * frame.Beams.SampleMm, "mm",
                Tolerance.Absolute, 0.05, string.Create(CultureInfo.InvariantCulture, $"A pixel is {frame.Grid.MmPerPixel:F2} mm."));
            if (depth == FocusMm)
            {
                double[] across = [.. Enumerable.Range(0, frame.Beams.Lines).Select(l => frame.Beams.At(l, (int)Math.Round(depth / frame.Beams.SampleMm)))];
                yield return Row("Length of a point along the beam at half amplitude", Pulse, 1.540 / 2 * 4 * Math.Log(2) / (Math.PI * Bandwidth * FrequencyMHz), Width(line) * frame.Beams.SampleMm, "mm", Tolerance.Relative, 0.03);
                yield return Row("Width of a point at the focus at half amplitude", Aperture, 0.8859 * LambdaF, Width(across) * WidthMm / (frame.Beams.Lines - 1), "mm", Tolerance.Relative, 0.06, "Lines a quarter of the width apart widen it.");
            }
        }
    }

    private static IEnumerable<ValidationRow> Speckle()
    {
        EchoFrame[] frames = [.. Enumerable.Range(1, 3).Select(static seed => Render(new EchoScene((ulong)seed, Surroundings.Tissue(), null, [])))];
        double mean = frames.Average(static f => Mean(f, static v => v));
        double square = frames.Average(static f => Mean(f, static v => v * v));
        yield return Row("Mean over deviation of the magnitude of even tissue", Rayleigh, Math.Sqrt(Math.PI / (4 - Math.PI)), mean / Math.Sqrt(square - (mean * mean)), "1", Tolerance.Absolute, 0.06, "Three seeds.");
        double none = frames.Average(static f => Covariance(f, 0, 0));
        double sample = frames[0].Beams.SampleMm;
        double along = 0;
        while (frames.Average(f => Covariance(f, 0, (int)along + 1)) > none / 2)
        {
            along++;
        }

        double before = frames.Average(f => Covariance(f, 0, (int)along)) / none;
        double after = frames.Average(f => Covariance(f, 0, (int)along + 1)) / none;
        along += (before - 0.5) / (before - after);
        yield return Row(
            "Length of the covariance of speckle's intensity along the beam at half", Wagner, 1.540 / 2 * 4 * Math.Log(2) / (Math.PI * Bandwidth * FrequencyMHz), 2 * along * sample, "mm", Tolerance.Relative, 0.09);
        double pitch = WidthMm / (frames[0].Beams.Lines - 1);
        int reach = (int)(1.2 * LambdaF / pitch);
        double sum = Enumerable.Range(-reach, (2 * reach) + 1).Sum(lag => frames.Average(f => Covariance(f, Math.Abs(lag), 0)) / none) * pitch;
        yield return Row("Width of a cell of speckle at the focus: sum of the covariance of intensity", Cell, 0.87 * LambdaF, sum, "mm", Tolerance.Relative, 0.15, "For sinc² the sum is 0.90 λ z/D in closed form.");
    }

    private static ValidationRow Lumen()
    {
        SpaceCurve curve = new([new Vector3D(0, 12, -300), new Vector3D(0, 12, 0), new Vector3D(0, 12, 300)]);
        DeviceAssembly device = new(DeviceCatalogue.BuiltIn.Cannula("drain-multi-25fr-55cm"), AssemblyState.CannulaAlone, curve, 550, winding: new CoilWinding());
        EchoFrame frame = Render(new EchoScene(1, Surroundings.WaterBath, device, []));
        double[] line = Line(frame);
        double inner = device.InnerRadiusMm(250);
        double first = Near(line, frame, 12 + (3 * inner));
        double second = Near(line, frame, 12 + (5 * inner));
        return Row("Way between the echoes across the lumen of a cannula, its inner diameter", Across, 2 * inner, second - first, "mm", Tolerance.Absolute, 0.1);
    }

    private static EchoFrame Render(EchoScene scene) => EchoRenderer.Render(scene, Plane, Linear, Quiet);

    private static ValidationRow Row(string check, Source source, double expected, double got, string unit, Tolerance tolerance, double bound, string note = "") =>
        new("Imaging", check, source, expected, got, unit, tolerance, bound, note);

    private static double[] Line(EchoFrame frame) => [.. Enumerable.Range(0, frame.Beams.Samples).Select(s => frame.Beams.At(frame.Beams.Lines / 2, s))];

    private static double Near(double[] line, EchoFrame frame, double depth) =>
        Peak(line, (int)((depth - 0.4) / frame.Beams.SampleMm), (int)((depth + 0.4) / frame.Beams.SampleMm)) * frame.Beams.SampleMm;

    private static double Peak(double[] values, int from, int to)
    {
        int peak = Enumerable.Range(from, to - from).MaxBy(i => values[i]);
        (double a, double b, double c) = (Math.Log(values[peak - 1]), Math.Log(values[peak]), Math.Log(values[peak + 1]));
        return peak + ((a - c) / (2 * (a - (2 * b) + c)));
    }

    private static double Width(double[] values)
    {
        int peak = Enumerable.Range(0, values.Length).MaxBy(i => values[i]);
        return Crossing(values, peak, 1) + Crossing(values, peak, -1);
    }

    private static double Crossing(double[] values, int peak, int step)
    {
        int i = peak;
        while (values[i + step] > values[peak] / 2)
        {
            i += step;
        }

        return Math.Abs(i - peak) + ((values[i] - (values[peak] / 2)) / (values[i] - values[i + step]));
    }

    private static (int First, int Last) Samples(EchoFrame frame) => ((int)(26 / frame.Beams.SampleMm), (int)(34 / frame.Beams.SampleMm));

    private static double Mean(EchoFrame frame, Func<double, double> of)
    {
        (int first, int last) = Samples(frame);
        return Enumerable.Range(first, last - first).Average(s => Enumerable.Range(frame.Beams.Lines / 10, frame.Beams.Lines * 8 / 10).Average(l => of(frame.Beams.At(l, s))));
    }

    private static double Covariance(EchoFrame frame, int lines, int samples)
    {
        (int first, int last) = Samples(frame);
        ReadOnlySpan<float> all = frame.Beams.Envelope.Span;
        int wide = frame.Beams.Lines;
        (double mean, double product, long count) = (0, 0, 0);
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
}
