using Cavaxis.Quantities.Faults;

namespace Cavaxis.Imaging.Echo;

/// <summary>A probe described by numbers alone. Lengths in mm; the wave runs at <see cref="SpeedMPerS"/> wherever it is.</summary>
public sealed record Probe
{
    /// <summary>Speed of sound that every depth is reckoned with, m/s: the convention of soft tissue.</summary>
    public const double SpeedMPerS = 1540;

    /// <summary>Smallest ratio of depth to aperture: nearer than this a part of the aperture is used (common practice, no source).</summary>
    public const double LeastFNumber = 1.5;

    private const string Remedy = "Give the numbers of a probe for vessels or for the heart.";

    /// <summary>A probe.</summary>
    /// <param name="kind">Layout of the lines.</param>
    /// <param name="frequencyMHz">Centre frequency, 1 to 20 MHz.</param>
    /// <param name="depthMm">Depth shown, 10 to 250 mm.</param>
    /// <param name="focusMm">Depth on which the sent wave is focused, 5 to 300 mm.</param>
    /// <param name="apertureMm">Width of the active aperture, 2 to 60 mm.</param>
    /// <param name="widthMm">Width of the picture of a linear probe, 10 to 100 mm.</param>
    /// <param name="radiusMm">Radius of the face of a convex probe, 5 to 100 mm.</param>
    /// <param name="angleDeg">Angle of the sector of a convex or phased probe, 20 to 120 degrees.</param>
    /// <param name="bandwidth">Two-way bandwidth at half amplitude (−6 dB) over the centre frequency, 0.1 to 1.</param>
    /// <param name="sliceApertureMm">Height of the elements, 1 to 30 mm: sets the thickness of the slice.</param>
    /// <param name="sliceFocusMm">Depth at which the lens makes the slice thinnest, 5 to 300 mm.</param>
    /// <exception cref="InputFaultException">A number is outside its bounds.</exception>
    public Probe(
        ProbeKind kind, double frequencyMHz, double depthMm, double focusMm, double apertureMm, double widthMm = 40, double radiusMm = 50, double angleDeg = 70,
        double bandwidth = 0.6, double sliceApertureMm = 7, double sliceFocusMm = 50)
    {
        Kind = kind;
        FrequencyMHz = Require.InRange(frequencyMHz, 1, 20, "probe.frequencyMHz", Remedy);
        DepthMm = Require.InRange(depthMm, 10, 250, "probe.depthMm", Remedy);
        FocusMm = Require.InRange(focusMm, 5, 300, "probe.focusMm", Remedy);
        ApertureMm = Require.InRange(apertureMm, 2, 60, "probe.apertureMm", Remedy);
        WidthMm = Require.InRange(widthMm, 10, 100, "probe.widthMm", Remedy);
        RadiusMm = kind == ProbeKind.Convex ? Require.InRange(radiusMm, 5, 100, "probe.radiusMm", Remedy) : 0;
        AngleDeg = Require.InRange(angleDeg, 20, 120, "probe.angleDeg", Remedy);
        Bandwidth = Require.InRange(bandwidth, 0.1, 1, "probe.bandwidth", Remedy);
        SliceApertureMm = Require.InRange(sliceApertureMm, 1, 30, "probe.sliceApertureMm", Remedy);
        SliceFocusMm = Require.InRange(sliceFocusMm, 5, 300, "probe.sliceFocusMm", Remedy);
    }

    /// <summary>Layout of the lines.</summary>
    public ProbeKind Kind { get; }

    /// <summary>Centre frequency, MHz.</summary>
    public double FrequencyMHz { get; }

    /// <summary>Depth shown, mm from the face.</summary>
    public double DepthMm { get; }

    /// <summary>Depth of the focus of the sent wave, mm. Received echoes are focused at every depth.</summary>
    public double FocusMm { get; }

    /// <summary>Width of the active aperture, mm.</summary>
    public double ApertureMm { get; }

    /// <summary>Width of the picture of a linear probe, mm.</summary>
    public double WidthMm { get; }

    /// <summary>Radius of the face, mm; 0 for a phased probe and without meaning for a linear one.</summary>
    public double RadiusMm { get; }

    /// <summary>Angle of the sector, degrees; without meaning for a linear probe.</summary>
    public double AngleDeg { get; }

    /// <summary>Two-way bandwidth at half amplitude over the centre frequency.</summary>
    public double Bandwidth { get; }

    /// <summary>Height of the elements, mm.</summary>
    public double SliceApertureMm { get; }

    /// <summary>Depth of the thinnest slice, mm.</summary>
    public double SliceFocusMm { get; }

    /// <summary>Wavelength, mm: c/f.</summary>
    public double WavelengthMm => SpeedMPerS / 1000 / FrequencyMHz;

    /// <summary>
    /// Standard deviation of the received pulse in depth, mm. A Gaussian spectrum B wide at half amplitude gives a Gaussian pulse in time,
    /// σt = √(2 ln 2)/(π B); depth is half the way.
    /// </summary>
    public double AxialSdMm => SpeedMPerS / 1000 / 2 * Math.Sqrt(2 * Math.Log(2)) / (Math.PI * Bandwidth * FrequencyMHz);

    /// <summary>Width of the received pulse at half amplitude, mm of depth: c/2 · 4 ln 2/(π B) = 0.441 c/B.</summary>
    public double AxialWidthMm => 2 * Math.Sqrt(2 * Math.Log(2)) * AxialSdMm;

    /// <summary>Aperture that is used for a depth, mm: the whole, or as much as <see cref="LeastFNumber"/> allows.</summary>
    /// <param name="depthMm">Depth, mm.</param>
    public double ApertureAt(double depthMm) => Math.Min(ApertureMm, Math.Max(depthMm, 2) / LeastFNumber);

    /// <summary>Width of the two-way beam at half amplitude at its focus, mm: sinc²(x D/(λ z)) = ½ at 0.886 λ z/D.</summary>
    /// <param name="depthMm">Depth, mm.</param>
    public double LateralWidthMm(double depthMm) => 0.8859 * WavelengthMm * Math.Max(depthMm, 2) / ApertureAt(depthMm);

    /// <summary>
    /// Thickness of the slice at half amplitude, mm: the diffraction of the element's height and, away from the lens's focus, the
    /// geometric shadow of the height, added as squares (a Gaussian approximation of this project).
    /// </summary>
    /// <param name="depthMm">Depth, mm.</param>
    public double SliceWidthMm(double depthMm)
    {
        double depth = Math.Max(depthMm, 1);
        double diffraction = 0.8859 * WavelengthMm * depth / SliceApertureMm;
        double defocus = 0.5 * SliceApertureMm * (1 - (depth / SliceFocusMm));
        return Math.Sqrt((diffraction * diffraction) + (defocus * defocus));
    }
}
