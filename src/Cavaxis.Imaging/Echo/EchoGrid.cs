using System.Numerics;
using System.Runtime.InteropServices;

namespace Cavaxis.Imaging.Echo;

/// <summary>Complex echoes over lines and samples, one row of lines a sample; first points, then spread by beam and pulse.</summary>
internal sealed class EchoGrid
{
    private const int Turns = 4096;
    private static readonly float[] Cosines = [.. Enumerable.Range(0, Turns).Select(static i => MathF.Cos(2 * MathF.PI * i / Turns))];
    private static readonly float[] Sines = [.. Enumerable.Range(0, Turns).Select(static i => MathF.Sin(2 * MathF.PI * i / Turns))];
    private readonly BeamLayout layout;
    private readonly TransmissionMap through;
    private readonly float[] sliceNorm;
    private readonly float[] sliceRate;
    private readonly double sampleRate;
    private readonly double turnsPerMm;
    private float[] re;
    private float[] im;

    /// <summary>An empty grid.</summary>
    public EchoGrid(BeamLayout layout, TransmissionMap through)
    {
        (this.layout, this.through) = (layout, through);
        re = new float[layout.Lines * layout.Samples];
        im = new float[re.Length];
        sliceNorm = new float[layout.Samples];
        sliceRate = new float[layout.Samples];
        for (int i = 0; i < layout.Samples; i++)
        {
            double sd = layout.Probe.SliceWidthMm(i * layout.SampleMm) / (2 * Math.Sqrt(2 * Math.Log(2)));
            sliceNorm[i] = (float)(1 / Math.Sqrt(Math.Sqrt(Math.PI) * sd));
            sliceRate[i] = (float)(1 / (2 * sd * sd));
        }

        sampleRate = 1 / layout.SampleMm;
        turnsPerMm = 2 / layout.Probe.WavelengthMm;
    }

    /// <summary>Adds the echo of a point.</summary>
    /// <param name="x">Right, mm.</param>
    /// <param name="e">Out of the plane, mm.</param>
    /// <param name="z">Depth, mm.</param>
    /// <param name="amplitude">Amplitude, in phase with its depth.</param>
    /// <param name="rough">Amplitude of a part with a phase of its own.</param>
    /// <param name="turns">That phase, turns.</param>
    /// <param name="delayMm">Way that the echo comes later, as depth, mm.</param>
    /// <param name="leadMm">How much nearer the loss on the way is read, so that a surface does not hide itself, mm.</param>
    public void Add(double x, double e, double z, double amplitude, double rough = 0, double turns = 0, double delayMm = 0, double leadMm = 0)
    {
        (double line, double depth) = layout.Of(x, z);
        int at = (int)((depth * sampleRate) + 0.5);
        int sample = (int)(((depth + delayMm) * sampleRate) + 0.5);
        int left = (int)Math.Floor(line);
        if (depth < 0 || (uint)sample >= (uint)layout.Samples || (uint)left >= (uint)(layout.Lines - 1))
        {
            return;
        }

        float weight = sliceNorm[at] * MathF.Exp(-(float)(e * e) * sliceRate[at]) * through.At(line, at - (leadMm * sampleRate));
        double phase = (depth + delayMm) * turnsPerMm;
        int index = Index(phase);
        float c = (float)amplitude * Cosines[index];
        float s = (float)amplitude * Sines[index];
        if (rough > 0)
        {
            index = Index(phase + turns);
            c += (float)rough * Cosines[index];
            s += (float)rough * Sines[index];
        }

        c *= weight;
        s *= -weight;
        float part = (float)(line - left);
        int cell = (sample * layout.Lines) + left;
        re[cell] += (1 - part) * c;
        im[cell] += (1 - part) * s;
        re[cell + 1] += part * c;
        im[cell + 1] += part * s;
    }

    /// <summary>Spreads the points by the beam, adds the receiver's noise, then spreads by the pulse.</summary>
    /// <param name="noise">Noise of a cell, given sample and line: real and imaginary part; null for none.</param>
    public void Spread(Func<int, int, (float Re, float Im)>? noise)
    {
        Across();
        if (noise is not null)
        {
            for (int k = 0; k < layout.Samples; k++)
            {
                for (int l = 0; l < layout.Lines; l++)
                {
                    (float a, float b) = noise(k, l);
                    re[(k * layout.Lines) + l] += a;
                    im[(k * layout.Lines) + l] += b;
                }
            }
        }

        Along();
    }

    /// <summary>Magnitude of every cell, a row of lines a sample.</summary>
    public float[] Envelope()
    {
        float[] envelope = new float[re.Length];
        for (int i = 0; i < envelope.Length; i++)
        {
            envelope[i] = MathF.Sqrt((re[i] * re[i]) + (im[i] * im[i]));
        }

        return envelope;
    }

    private static int Index(double turns) => (int)((turns - Math.Floor(turns)) * Turns) & (Turns - 1);

    private void Across()
    {
        LateralKernel[] kernels = BeamPattern.Kernels(layout);
        int lines = layout.Lines;
        float[] outRe = new float[re.Length];
        float[] outIm = new float[re.Length];
        float[] rowRe = new float[lines * 3];
        float[] rowIm = new float[lines * 3];
        for (int k = 0; k < layout.Samples; k++)
        {
            LateralKernel kernel = kernels[BeamPattern.ZoneOf(layout, k)];
            re.AsSpan(k * lines, lines).CopyTo(rowRe.AsSpan(lines));
            im.AsSpan(k * lines, lines).CopyTo(rowIm.AsSpan(lines));
            Span<float> toRe = outRe.AsSpan(k * lines, lines);
            Span<float> toIm = outIm.AsSpan(k * lines, lines);
            for (int j = -kernel.Half; j <= kernel.Half; j++)
            {
                AddRow(toRe, toIm, rowRe.AsSpan(lines + j, lines), rowIm.AsSpan(lines + j, lines), kernel.Re[j + kernel.Half], kernel.Im[j + kernel.Half]);
            }
        }

        (re, im) = (outRe, outIm);
    }

    private static void AddRow(Span<float> toRe, Span<float> toIm, ReadOnlySpan<float> fromRe, ReadOnlySpan<float> fromIm, float a, float b)
    {
        Span<Vector<float>> vr = MemoryMarshal.Cast<float, Vector<float>>(toRe);
        Span<Vector<float>> vi = MemoryMarshal.Cast<float, Vector<float>>(toIm);
        ReadOnlySpan<Vector<float>> fr = MemoryMarshal.Cast<float, Vector<float>>(fromRe);
        ReadOnlySpan<Vector<float>> fi = MemoryMarshal.Cast<float, Vector<float>>(fromIm);
        Vector<float> va = new(a);
        Vector<float> vb = new(b);
        for (int v = 0; v < vr.Length; v++)
        {
            vr[v] += (va * fr[v]) - (vb * fi[v]);
            vi[v] += (va * fi[v]) + (vb * fr[v]);
        }

        for (int i = vr.Length * Vector<float>.Count; i < toRe.Length; i++)
        {
            toRe[i] += (a * fromRe[i]) - (b * fromIm[i]);
            toIm[i] += (a * fromIm[i]) + (b * fromRe[i]);
        }
    }

    private void Along()
    {
        double sd = layout.Probe.AxialSdMm;
        int half = (int)Math.Ceiling(3 * sd / layout.SampleMm);
        double norm = 1 / Math.Sqrt(Math.Sqrt(Math.PI) * sd);
        int lines = layout.Lines;
        float[] outRe = new float[re.Length];
        float[] outIm = new float[re.Length];
        for (int j = -half; j <= half; j++)
        {
            double at = j * layout.SampleMm / sd;
            float weight = (float)(norm * Math.Exp(-at * at / 2));
            int first = Math.Max(0, -j) * lines;
            int length = re.Length - (Math.Abs(j) * lines);
            if (length > 0)
            {
                AddRow(outRe.AsSpan(first, length), outIm.AsSpan(first, length), re.AsSpan(first + (j * lines), length), im.AsSpan(first + (j * lines), length), weight, 0);
            }
        }

        (re, im) = (outRe, outIm);
    }
}
