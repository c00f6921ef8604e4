using System.Globalization;
using Cavaxis.Anatomy.Space;
using Cavaxis.Devices.Cannulae;
using Cavaxis.Devices.Catalogue;
using Cavaxis.Imaging.Echo;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Imaging.Exercises;

/// <summary>Makes find-the-tip exercises from a seed.</summary>
public static class ExerciseMaker
{
    /// <summary>Highest level.</summary>
    public const int HighestLevel = 5;

    private const int Attempts = 200;
    private const double TipMm = 240;
    private static readonly string[] Cannulae =
        ["drain-multi-21fr-55cm", "drain-multi-23fr-55cm", "drain-multi-25fr-55cm", "drain-single-21fr-50cm", "return-venous-19fr-52cm", "return-venous-21fr-52cm"];

    /// <summary>What each level is about, from the first.</summary>
    public static IReadOnlyList<string> Levels { get; } =
    [
        "A cannula alone in a bath of water, the plane along it.",
        "A cannula in a vessel, alone or with a wire put back in, the plane along it.",
        "Cannula, introducer and wire in a vessel: three ends, one of them the tip.",
        "The plane turned against the cannula: what ends in the picture may be cut, not the tip.",
        "A bent cannula, any plane, more noise, a breath's way off.",
    ];

    /// <summary>Makes an exercise.</summary>
    /// <param name="seed">Seed.</param>
    /// <param name="level">1 to <see cref="HighestLevel"/>.</param>
    /// <returns>The exercise with its picture.</returns>
    /// <exception cref="InputFaultException">There is no such level.</exception>
    public static Exercise Make(ulong seed, int level)
    {
        ExerciseSetup setup = Setup(seed, level);
        EchoFrame frame = EchoRenderer.Render(setup.Scene, setup.Plane, setup.Probe, setup.Display);
        return new Exercise(seed, level, Question(setup), frame, setup.Scene, setup.Probe, ExerciseGeometry.Truth(setup.Scene.Device!, setup.Probe, frame.Grid));
    }

    /// <summary>Scene, plane and probe of an exercise: draws again where it is a matter of taste whether the tip is in view.</summary>
    internal static ExerciseSetup Setup(ulong seed, int level)
    {
        _ = Require.InRange(level, 1, HighestLevel, "exercise.level", "Choose a level of the list.");
        for (int attempt = 0; attempt < Attempts; attempt++)
        {
            ExerciseSetup setup = Drawn(new ExerciseDraw(seed, level, attempt), seed, level);
            if (ExerciseGeometry.IsPlain(setup.Scene.Device!, setup.Probe, setup.Plane))
            {
                return setup;
            }
        }

        throw new InvalidOperationException("No plain exercise was drawn.");
    }

    private static ExerciseSetup Drawn(ExerciseDraw draw, ulong seed, int level)
    {
        Cannula cannula = DeviceCatalogue.BuiltIn.Cannula(draw.One(Cannulae));
        AssemblyState state = level switch
        {
            1 => AssemblyState.CannulaAlone,
            2 => draw.One(AssemblyState.CannulaAlone, AssemblyState.WireBackIn),
            3 => AssemblyState.Assembly,
            _ => draw.One(AssemblyState.CannulaAlone, AssemblyState.WireBackIn, AssemblyState.Assembly),
        };
        double bend = level == 5 ? draw.Between(6, 14) : draw.Between(0, 2);
        double toward = draw.One(-1, 1);
        SpaceCurve curve = new([new Vector3D(0, 0, 0), new Vector3D(0, 0, 80), new Vector3D(0, toward * bend * 0.35, 170), new Vector3D(0, toward * bend, 260), new Vector3D(0, toward * bend * 1.5, 360)]);
        DeviceAssembly device = new(
            cannula, state, curve, TipMm, 0.97, draw.Between(25, 60), draw.Between(18, 32), draw.Between(0, 90), new CoilWinding(plainTipMm: cannula.Family == CannulaFamily.MultiStageDrainage ? draw.Between(4, 20) : draw.Between(4, 10)));
        Surroundings around = level == 1
            ? Surroundings.WaterBath
            : Surroundings.Vessel(new SpaceCurve([new Vector3D(0, 0, 0), new Vector3D(0, 1, 150), new Vector3D(0, toward * bend * 0.8, 260), new Vector3D(0, toward * bend * 1.3, 420)]), (device.OuterRadiusMm(50) * 1.2) + draw.Between(3.5, 7));
        Probe probe = level == 1 && draw.Between(0, 1) < 0.5
            ? new Probe(ProbeKind.Linear, 6, 60, 28, 15, widthMm: 60, sliceApertureMm: 5, sliceFocusMm: 28)
            : new Probe(ProbeKind.Convex, draw.Between(3, 4.5), 115, 60, 22, radiusMm: 50, angleDeg: 62, sliceApertureMm: 12, sliceFocusMm: 62);
        double stand = probe.Kind == ProbeKind.Linear ? 28 : draw.Between(52, 66);
        double turn = level switch
        {
            4 => draw.One(-1, 1) * draw.Between(8, 16),
            5 => draw.One(-1, 1) * draw.Between(0, 16),
            _ => 0,
        };
        double reach = (device.OuterRadiusMm(50) + (probe.SliceWidthMm(stand) / 2)) / Math.Max(Math.Sin(Math.Abs(turn) * Math.PI / 180), 0.02);
        bool cut = level >= 4 && Math.Abs(turn) > 6 && draw.Between(0, 1) < 0.7;
        double before = cut ? reach + draw.Between(8, 22) : draw.Between(-0.4, 0.4) * Math.Min(reach, 40);
        double aside = level == 5 ? draw.Between(-2, 2) : 0;
        double tilt = level == 5 ? draw.Between(-12, 12) * Math.PI / 180 : 0;
        Vector3D axis = curve.At(TipMm - before);
        Vector3D way = new(0, Math.Cos(tilt), Math.Sin(tilt));
        double along = level <= 3 ? draw.Between(-16, 16) : draw.Between(-6, 6);
        ScanPlane plane = new(axis - (stand * way) + new Vector3D(aside, 0, cut ? 0 : along), way, turn);
        EchoDisplay display = new(640, 512, level == 5 ? draw.Between(-8, 4) : 0, level == 5 ? 50 : 60, null, level == 5 ? -48 : -60);
        return new ExerciseSetup(new EchoScene(seed, around, device, []), plane, probe, display);
    }

    private static string Question(ExerciseSetup setup)
    {
        DeviceAssembly device = setup.Scene.Device!;
        string what = device.State switch
        {
            AssemblyState.Assembly => "with its introducer, over a wire",
            AssemblyState.WireBackIn => "with a wire put back through it",
            _ => "alone",
        };
        string where = setup.Scene.Surroundings.Kind == SurroundingsKind.WaterBath ? "a bath of water" : "a vessel";
        return string.Create(
            CultureInfo.InvariantCulture,
            $"A cannula of {device.Cannula.OuterDiameterFrench:F0} Fr ({device.Cannula.OuterDiameterMm:F1} mm), {what}, in {where}. The hub lies to the left. Mark the middle of the opening at the cannula's tip, or say that the tip is not in view.");
    }
}
