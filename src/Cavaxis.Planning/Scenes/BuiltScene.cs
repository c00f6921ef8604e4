using Cavaxis.Anatomy.Space;
using Cavaxis.Devices.Catalogue;
using Cavaxis.Imaging.Echo;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Planning.Scenes;

/// <summary>A scene ready to be rendered.</summary>
/// <param name="Scene">What is looked at.</param>
/// <param name="Plane">From where.</param>
/// <param name="Probe">With what.</param>
/// <param name="Display">How echoes become grey.</param>
/// <param name="Motion">What moves.</param>
public sealed record BuiltScene(EchoScene Scene, ScanPlane Plane, Probe Probe, EchoDisplay Display, SceneMotion Motion)
{
    /// <summary>Builds what a file describes.</summary>
    /// <param name="file">The scene as read.</param>
    /// <param name="catalogue">Where the cannula is found.</param>
    /// <returns>The scene.</returns>
    /// <exception cref="InputFaultException">The cannula is not in the catalogue, or its numbers and those of the scene do not go together.</exception>
    public static BuiltScene Of(SceneFile file, DeviceCatalogue catalogue)
    {
        ArgumentNullException.ThrowIfNull(file);
        ArgumentNullException.ThrowIfNull(catalogue);
        SceneSurroundings s = file.Surroundings;
        Surroundings around = s.Kind switch
        {
            SurroundingsKind.WaterBath => Surroundings.WaterBath,
            SurroundingsKind.Tissue => Surroundings.Tissue(s.TissueVariationDb),
            _ => Surroundings.Vessel(Curve(s.Axis), s.RadiusMm ?? 0, s.WallMm, s.TissueVariationDb),
        };
        SceneProbe p = file.Probe;
        SceneDisplay d = file.Display;
        SceneMotionSection m = file.Motion;
        return new BuiltScene(
            new EchoScene((ulong)file.Seed, around, file.Device is null ? null : Device(file.Device, catalogue), []),
            new ScanPlane(Vector(file.Plane.Origin), Vector(file.Plane.Direction), file.Plane.RollDeg),
            new Probe(p.Kind, p.FrequencyMHz, p.DepthMm, p.FocusMm, p.ApertureMm, p.WidthMm, p.RadiusMm, p.AngleDeg, p.Bandwidth, p.SliceApertureMm, p.SliceFocusMm),
            new EchoDisplay(d.WidthPixels, d.HeightPixels, d.GainDb, d.DynamicRangeDb, d.DepthGainDbPerCmMHz, d.NoiseDb),
            new SceneMotion(m.FramesPerSecond, m.BreathsPerMin, m.BreathMm is null ? default : Vector(m.BreathMm), m.BreathNarrowing, m.BeatsPerMin, m.BeatNarrowing, m.WireMmPerS));
    }

    private static DeviceAssembly Device(SceneDevice d, DeviceCatalogue catalogue) => new(
        catalogue.Cannula(d.Cannula), d.State, Curve(d.Curve), d.TipMm, d.WireDiameterMm, d.WireBeyondTipMm, d.IntroducerBeyondTipMm, d.TurnDeg,
        d.Winding is SceneWinding w ? new CoilWinding(w.WireMm, w.PitchMm, w.PlainTipMm) : null);

    private static SpaceCurve Curve(IReadOnlyList<SceneVector> points) => new([.. points.Select(Vector)]);

    private static Vector3D Vector(SceneVector v) => new(v.X, v.Y, v.Z);
}
