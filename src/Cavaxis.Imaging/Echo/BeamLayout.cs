namespace Cavaxis.Imaging.Echo;

/// <summary>Lines and samples of a probe, and how the plane's coordinates become them. Lines stand evenly on both sides of the middle.</summary>
internal sealed class BeamLayout
{
    private const int MostLines = 400;
    private const double LinesAWidth = 4;
    private const double SamplesAPulse = 6;
    private const int Angles = 4096;
    private readonly double steepest;
    private readonly double[] lineOfSlope = [];
    private readonly double half;

    /// <summary>Lines four to a width of the beam, samples six to a pulse.</summary>
    /// <param name="probe">The probe.</param>
    public BeamLayout(Probe probe)
    {
        Probe = probe;
        double width = probe.LateralWidthMm(probe.FocusMm);
        IsFlat = probe.Kind == ProbeKind.Linear;
        double span = IsFlat ? probe.WidthMm : probe.AngleDeg * Math.PI / 180;
        double step = IsFlat ? width / LinesAWidth : width / (probe.RadiusMm + probe.FocusMm) / LinesAWidth;
        Lines = Math.Clamp((int)Math.Ceiling(span / step) + 1, 48, MostLines);
        Step = span / (Lines - 1);
        half = (Lines - 1) / 2.0;
        if (!IsFlat)
        {
            // The arc tangent of every scatterer would take a third of the time of a picture; between 4096 slopes a straight line is off by 1e-5 lines.
            steepest = Math.Tan(Math.Min((span / 2) + (2 * Step), 1.5));
            lineOfSlope = [.. Enumerable.Range(0, Angles + 2).Select(i => (Math.Atan(((2.0 * i / Angles) - 1) * steepest) / Step) + half)];
        }

        Samples = (int)Math.Ceiling(probe.DepthMm * SamplesAPulse / probe.AxialWidthMm) + 1;
        SampleMm = probe.DepthMm / (Samples - 1);
    }

    /// <summary>The probe.</summary>
    public Probe Probe { get; }

    /// <summary>True for parallel lines.</summary>
    public bool IsFlat { get; }

    /// <summary>Number of lines.</summary>
    public int Lines { get; }

    /// <summary>From line to line: mm for parallel lines, else radians.</summary>
    public double Step { get; }

    /// <summary>Samples of a line.</summary>
    public int Samples { get; }

    /// <summary>Depth from sample to sample, mm.</summary>
    public double SampleMm { get; }

    /// <summary>From line to line at a depth, mm.</summary>
    public double PitchMm(double depthMm) => IsFlat ? Step : Step * (Probe.RadiusMm + depthMm);

    /// <summary>Line, in fractions, and depth below the face of a point of the plane; both −1 where it is far beside the sector.</summary>
    public (double Line, double DepthMm) Of(double x, double z)
    {
        if (IsFlat)
        {
            return ((x / Step) + half, z);
        }

        double down = z + Probe.RadiusMm;
        double at = ((x / (steepest * down)) + 1) * (Angles / 2.0);
        if (down <= 0 || !(at >= 0 && at < Angles))
        {
            return (-1, -1);
        }

        int i = (int)at;
        return (lineOfSlope[i] + ((at - i) * (lineOfSlope[i + 1] - lineOfSlope[i])), Math.Sqrt((x * x) + (down * down)) - Probe.RadiusMm);
    }

    /// <summary>The point of the plane at a line and a depth, aside of the line by some mm.</summary>
    public (double X, double Z) At(double line, double depthMm, double asideMm = 0)
    {
        double from = (line - half) * Step;
        if (IsFlat)
        {
            return (from + asideMm, depthMm);
        }

        (double sin, double cos) = Math.SinCos(from);
        double along = Probe.RadiusMm + depthMm;
        return ((along * sin) + (asideMm * cos), (along * cos) - (asideMm * sin) - Probe.RadiusMm);
    }

    /// <summary>The part of the plane that the lines cover, mm.</summary>
    public (double Left, double Right, double Top, double Bottom) Bounds()
    {
        (double x, double z) = At(0, Probe.DepthMm);
        (double faceX, double faceZ) = At(0, 0);
        double left = Math.Min(x, faceX);
        return (left, -left, Math.Min(0, Math.Min(z, faceZ)), Probe.DepthMm);
    }
}
