using System.Numerics;

namespace Cavaxis.Imaging.Echo;

/// <summary>
/// The two-way beam: across, the product of the received beam (focused at every depth, sinc of a rectangular aperture) and the sent one
/// (Fresnel integral over the aperture with the phase that the focus leaves); in thickness a Gaussian. The energy of each is one, so that
/// even tissue gives the same mean at every depth.
/// </summary>
internal static class BeamPattern
{
    private const int Zones = 64;
    private const int Steps = 96;
    private const double LobesKept = 5;

    /// <summary>Kernels over neighbouring lines for every depth.</summary>
    /// <param name="layout">Lines and samples.</param>
    /// <returns>A kernel for each of the zones, from the face to the depth.</returns>
    public static LateralKernel[] Kernels(BeamLayout layout) =>
        [.. Enumerable.Range(0, Zones).Select(i => Kernel(layout, layout.Probe.DepthMm * (i + 0.5) / Zones))];

    /// <summary>Zone of a sample.</summary>
    public static int ZoneOf(BeamLayout layout, int sample) => Math.Min(Zones - 1, sample * Zones / layout.Samples);

    /// <summary>The two-way beam, one in the middle of its focus.</summary>
    /// <param name="probe">The probe.</param>
    /// <param name="asideMm">Distance from the line, mm.</param>
    /// <param name="depthMm">Depth, mm.</param>
    public static Complex TwoWay(Probe probe, double asideMm, double depthMm)
    {
        double depth = Math.Max(depthMm, 1);
        double aperture = probe.ApertureAt(depth);
        double u = asideMm * aperture / (probe.WavelengthMm * depth);
        double received = Math.Abs(u) < 1e-9 ? 1 : Math.Sin(Math.PI * u) / (Math.PI * u);
        double defocus = Math.PI / probe.WavelengthMm * ((1 / depth) - (1 / Math.Max(probe.FocusMm, 1)));
        Complex sent = Complex.Zero;
        for (int i = 0; i < Steps; i++)
        {
            double at = aperture * (((i + 0.5) / Steps) - 0.5);
            double phase = (defocus * at * at) - (2 * Math.PI * u * at / aperture);
            sent += new Complex(Math.Cos(phase), Math.Sin(phase));
        }

        return received * sent / Steps;
    }

    private static LateralKernel Kernel(BeamLayout layout, double depth)
    {
        Probe probe = layout.Probe;
        double pitch = Math.Max(layout.PitchMm(depth), 1e-3);
        double reach = Math.Max(LobesKept * probe.WavelengthMm * Math.Max(depth, 2) / probe.ApertureAt(depth), 2 * pitch);
        int half = Math.Min(layout.Lines - 1, (int)Math.Ceiling(reach / pitch));
        float[] re = new float[(2 * half) + 1];
        float[] im = new float[re.Length];
        double energy = 0;
        for (int j = 0; j <= half; j++)
        {
            Complex value = TwoWay(probe, j * pitch, depth);
            (re[half + j], im[half + j]) = ((float)value.Real, (float)value.Imaginary);
            (re[half - j], im[half - j]) = (re[half + j], im[half + j]);
            energy += (j == 0 ? 1 : 2) * ((value.Real * value.Real) + (value.Imaginary * value.Imaginary)) * pitch;
        }

        float scale = (float)(1 / Math.Sqrt(energy));
        for (int j = 0; j < re.Length; j++)
        {
            re[j] *= scale;
            im[j] *= scale;
        }

        return new LateralKernel(half, re, im);
    }
}
