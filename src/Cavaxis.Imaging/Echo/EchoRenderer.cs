using Cavaxis.Anatomy.Sampling;

namespace Cavaxis.Imaging.Echo;

/// <summary>
/// Synthetic B-mode: every scatterer and every bit of surface answers once, with the amplitude that gets to it and back, in the phase of its depth;
/// beam and pulse spread it; magnitude, logarithm and scan conversion make the picture (docs/models/synthetic-ultrasound.md).
/// </summary>
public static class EchoRenderer
{
    private const uint NoiseMark = 0x0153;
    private const double UsualDepthGain = 0.5;

    /// <summary>Makes a picture.</summary>
    /// <param name="scene">What is looked at.</param>
    /// <param name="plane">Where the probe stands.</param>
    /// <param name="probe">The probe.</param>
    /// <param name="display">How echoes become grey.</param>
    /// <param name="frame">Number of the frame: its noise is its own.</param>
    /// <returns>The picture with its calibration; the same bytes for the same input.</returns>
    public static EchoFrame Render(EchoScene scene, ScanPlane plane, Probe probe, EchoDisplay display, int frame = 0)
    {
        ArgumentNullException.ThrowIfNull(scene);
        ArgumentNullException.ThrowIfNull(plane);
        ArgumentNullException.ThrowIfNull(probe);
        ArgumentNullException.ThrowIfNull(display);
        BeamLayout layout = new(probe);
        SceneSpace space = new(scene);
        double gain = display.DepthGainDbPerCmMHz ?? (scene.Surroundings.Outside == Material.Water ? 0 : UsualDepthGain);
        EchoGrid grid = new(layout, new TransmissionMap(layout, plane, space, gain));
        if (scene.Surroundings.Kind != SurroundingsKind.WaterBath || scene.Device is not null)
        {
            ScattererField.Add(grid, layout, plane, scene, space);
        }

        DeviceEchoes.Add(new SurfaceField(grid, layout, plane, scene.Seed), scene);
        foreach (EchoPoint point in scene.Points)
        {
            (double x, double e, double z) = plane.Within(point.Place);
            grid.Add(x, e, z, point.Strength);
        }

        grid.Spread(Noise(layout, display, gain, scene.Seed, (uint)frame));
        return ScanConversion.Picture(layout, plane, display, grid.Envelope());
    }

    // Sums of even draws are near enough to normal for what no one measures; the pulse's filter makes them more so.
    private static Func<int, int, (float Re, float Im)> Noise(BeamLayout layout, EchoDisplay display, double gain, ulong seed, uint frame)
    {
        double level = Math.Pow(10, display.NoiseDb / 20) * Math.Sqrt(layout.SampleMm / 2) * Math.Sqrt(6) / 4294967296.0;
        double rate = 2 * gain * layout.Probe.FrequencyMHz / 10 * layout.SampleMm * Math.Log(10) / 20;
        return (sample, line) =>
        {
            (uint w0, uint w1, uint w2, uint w3) = Philox.Bits((uint)sample, (uint)line, frame, NoiseMark, seed);
            double here = level * Math.Exp(rate * sample);
            return ((float)(here * ((double)w0 + w1 - 4294967295.0)), (float)(here * ((double)w2 + w3 - 4294967295.0)));
        };
    }
}
