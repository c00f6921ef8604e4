using Cavaxis.Anatomy.Space;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Imaging.Echo;

/// <summary>What moves in a loop: breath and beat as sines, the wire at a steady speed.</summary>
public sealed record SceneMotion
{
    private const string Remedy = "Give a motion that a patient or a hand makes.";

    /// <summary>A motion.</summary>
    /// <param name="framesPerSecond">1 to 50.</param>
    /// <param name="breathsPerMin">0 to 60.</param>
    /// <param name="breathMm">Way of everything under the probe from the end of one breath to its top; each part 0 to 50 mm.</param>
    /// <param name="breathNarrowing">Share by which the vessel's radius is less at the top of the breath, 0 to 0.95.</param>
    /// <param name="beatsPerMin">0 to 250.</param>
    /// <param name="beatNarrowing">Share by which the radius is less once a beat, 0 to 0.5.</param>
    /// <param name="wireMmPerS">Speed at which the wire goes in, −100 to 100 mm/s.</param>
    /// <exception cref="InputFaultException">A number is outside its bounds.</exception>
    public SceneMotion(
        double framesPerSecond = 10, double breathsPerMin = 0, Vector3D breathMm = default, double breathNarrowing = 0, double beatsPerMin = 0, double beatNarrowing = 0, double wireMmPerS = 0)
    {
        FramesPerSecond = Require.InRange(framesPerSecond, 1, 50, "motion.framesPerSecond", Remedy);
        BreathsPerMin = Require.InRange(breathsPerMin, 0, 60, "motion.breathsPerMin", Remedy);
        _ = Require.InRange(breathMm.Length, 0, 50, "motion.breathMm", Remedy);
        BreathMm = breathMm;
        BreathNarrowing = Require.InRange(breathNarrowing, 0, 0.95, "motion.breathNarrowing", Remedy);
        BeatsPerMin = Require.InRange(beatsPerMin, 0, 250, "motion.beatsPerMin", Remedy);
        BeatNarrowing = Require.InRange(beatNarrowing, 0, 0.5, "motion.beatNarrowing", Remedy);
        WireMmPerS = Require.InRange(wireMmPerS, -100, 100, "motion.wireMmPerS", Remedy);
    }

    /// <summary>Frames a second.</summary>
    public double FramesPerSecond { get; }

    /// <summary>Breaths a minute.</summary>
    public double BreathsPerMin { get; }

    /// <summary>Way of everything under the probe at the top of the breath, mm.</summary>
    public Vector3D BreathMm { get; }

    /// <summary>Share by which the vessel is narrower at the top of the breath.</summary>
    public double BreathNarrowing { get; }

    /// <summary>Beats a minute.</summary>
    public double BeatsPerMin { get; }

    /// <summary>Share by which the vessel is narrower once a beat.</summary>
    public double BeatNarrowing { get; }

    /// <summary>Speed of the wire inwards, mm/s.</summary>
    public double WireMmPerS { get; }

    /// <summary>Scene and plane at a time.</summary>
    /// <param name="scene">At time 0.</param>
    /// <param name="plane">At time 0.</param>
    /// <param name="seconds">Time, s.</param>
    /// <returns>What is looked at and from where.</returns>
    /// <exception cref="InputFaultException">The wire has gone farther than a wire goes.</exception>
    public (EchoScene Scene, ScanPlane Plane) At(EchoScene scene, ScanPlane plane, double seconds)
    {
        ArgumentNullException.ThrowIfNull(scene);
        ArgumentNullException.ThrowIfNull(plane);
        double breath = (1 - Math.Cos(2 * Math.PI * BreathsPerMin / 60 * seconds)) / 2;
        double beat = (1 - Math.Cos(2 * Math.PI * BeatsPerMin / 60 * seconds)) / 2;
        Surroundings around = scene.Surroundings;
        double radius = around.RadiusMm * (1 - (BreathNarrowing * breath)) * (1 - (BeatNarrowing * beat));
        DeviceAssembly? device = scene.Device is { HasWire: true } wired && WireMmPerS != 0 ? wired.WithWire(wired.WireBeyondTipMm + (WireMmPerS * seconds)) : scene.Device;
        EchoScene then = scene with { Surroundings = around.Axis is null ? around : around.WithRadius(Math.Max(radius, 0.5)), Device = device };
        return (then, plane.Moved(-breath * BreathMm));
    }
}
