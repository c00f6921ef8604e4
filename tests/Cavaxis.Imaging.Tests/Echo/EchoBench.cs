using Cavaxis.Anatomy.Space;
using Cavaxis.Devices.Catalogue;
using Cavaxis.Imaging.Echo;

namespace Cavaxis.Imaging.Tests.Echo;

/// <summary>Scenes and probes of these tests: the probe looks along y from the origin, the picture's right is z.</summary>
internal static class EchoBench
{
    public static readonly ScanPlane Plane = new(default, new Vector3D(0, 1, 0));

    public static readonly EchoDisplay Quiet = new(256, 256, noiseDb: -120);

    public static Probe Linear(double frequencyMHz = 5, double depthMm = 50, double focusMm = 30) =>
        new(ProbeKind.Linear, frequencyMHz, depthMm, focusMm, 12, widthMm: 30, sliceApertureMm: 5, sliceFocusMm: focusMm);

    public static Probe Convex() => new(ProbeKind.Convex, 3.5, 100, 60, 20, radiusMm: 40, angleDeg: 60, sliceApertureMm: 12, sliceFocusMm: 60);

    public static Probe Phased() => new(ProbeKind.Phased, 3, 100, 60, 16, angleDeg: 70, sliceApertureMm: 12, sliceFocusMm: 60);

    public static EchoScene Points(params (double Right, double Depth)[] points) =>
        new(1, Surroundings.WaterBath, null, [.. points.Select(static p => new EchoPoint(Plane.Place(p.Right, p.Depth), 10))]);

    /// <summary>A cannula that lies square to the beam at a depth, its tip at some way to the right.</summary>
    public static DeviceAssembly Cannula(double depth, AssemblyState state, double tipRight = 100, CoilWinding? winding = null, double wire = 0.97, double turnDeg = 45) => new(
        DeviceCatalogue.BuiltIn.Cannula("drain-multi-25fr-55cm"), state, new SpaceCurve([new Vector3D(0, depth, -300), new Vector3D(0, depth, 0), new Vector3D(0, depth, 300)]),
        300 + tipRight, wire, 60, 30, turnDeg, winding);

    /// <summary>Magnitudes down the line in the middle.</summary>
    public static double[] Middle(EchoFrame frame) => [.. Enumerable.Range(0, frame.Beams.Samples).Select(s => frame.Beams.At(frame.Beams.Lines / 2, s))];

    /// <summary>Width at half of the peak, in cells, by straight lines between cells.</summary>
    public static double WidthAtHalf(IReadOnlyList<double> values)
    {
        int peak = Enumerable.Range(0, values.Count).MaxBy(i => values[i]);
        return Crossing(values, peak, 1) + Crossing(values, peak, -1);
    }

    /// <summary>Place of the peak between cells, by a parabola through the logarithms of three.</summary>
    public static double Peak(IReadOnlyList<double> values, int from, int to)
    {
        int peak = Enumerable.Range(from, to - from).MaxBy(i => values[i]);
        (double a, double b, double c) = (Math.Log(values[peak - 1]), Math.Log(values[peak]), Math.Log(values[peak + 1]));
        return peak + ((a - c) / (2 * (a - (2 * b) + c)));
    }

    private static double Crossing(IReadOnlyList<double> values, int peak, int step)
    {
        double half = values[peak] / 2;
        int i = peak;
        while (values[i + step] > half)
        {
            i += step;
        }

        return Math.Abs(i - peak) + ((values[i] - half) / (values[i] - values[i + step]));
    }
}
