using System.Globalization;
using Cavaxis.Arteries.Boundaries;
using Cavaxis.Arteries.Heart;
using Cavaxis.Arteries.Network;
using Cavaxis.Arteries.Numbers;
using Cavaxis.Arteries.Scaling;
using Cavaxis.Arteries.Solver;
using Cavaxis.Arteries.Support;

namespace Cavaxis.Arteries.Beats;

/// <summary>Makes the solver's network of a patient's tree, its heart and its support.</summary>
internal static class TreeModel
{
    private const double CellM = 0.01;

    /// <summary>The pump starts over this time, so that its first push is no shock wave in a narrow artery, s.</summary>
    private const double StartS = 0.5;

    private static readonly string[] BalloonSegments = ["thoracic_aorta_I", "thoracic_aorta_II", "thoracic_aorta_III", "thoracic_aorta_IV", "thoracic_aorta_V", "thoracic_aorta_VI", "abdominal_aorta_I"];

    /// <summary>Everything that a simulation starts from, and the tree with the arteries around the cannula.</summary>
    public static (ArterialSetup Setup, PatientTree Tree) Of(
        PatientTree plain, LeftVentricle heart, VentricleNumbers numbers, double periodS, TreeSupport support)
    {
        PatientTree tree = support.Placement?.Around(plain) ?? plain;
        BloodFluid fluid = new(tree.Beds.DensityKgPerM3, tree.Beds.ViscosityPaS, tree.ProfileExponent);
        ArterialNetwork network = new([.. tree.Segments.Select(s => Segment(s, tree.ReferencePressurePa))], fluid);
        List<EndSpecification> ends = [new(NodeName(0), heart, new ConstantBlood(0))];
        foreach (PatientSegment s in tree.Segments.Where(static s => s.EndResistancePaSPerM3 is not null))
        {
            ends.Add(new EndSpecification(NodeName(s.Table.To), Bed(s, tree)));
        }

        ArterialSetup setup = new(network, ends, tree.Beds.MeanPressurePa)
        {
            SideFlows = [.. Sources(tree, support, periodS)],
            Bodies = [.. Bodies(tree, support, numbers, periodS)],
            InitialTracers = [support.Placement is null ? 0 : 1],
            CellLength = CellM,
        };
        return (setup, tree);
    }

    /// <summary>Name of a node in the solver's network.</summary>
    public static string NodeName(int node) => string.Create(CultureInfo.InvariantCulture, $"n{node}");

    private static ArterialSegment Segment(PatientSegment s, double referencePa) => new(
        s.Table.Name, NodeName(s.Table.From), NodeName(s.Table.To), s.LengthM, s.ProximalRadiusM, s.DistalRadiusM,
        s.WallM, s.WallM * s.DistalRadiusM / s.ProximalRadiusM, s.ModulusPa, referencePa, ArterialNumbers.Value(ArterialConstant.WallViscosityS) * s.ModulusPa);

    /// <summary>The first resistance swallows the waves that arrive: that of the vessel's own end.</summary>
    private static Windkessel Bed(PatientSegment s, PatientTree tree)
    {
        double whole = s.EndResistancePaSPerM3!.Value;
        double area = TubeLaw.Area(s.DistalRadiusM);
        double wall = s.WallM * s.DistalRadiusM / s.ProximalRadiusM;
        double speed = TubeLaw.WaveSpeed(TubeLaw.Stiffness(s.DistalRadiusM, wall, s.ModulusPa), area, tree.Beds.DensityKgPerM3);
        double first = Math.Min(tree.Beds.DensityKgPerM3 * speed / area, 0.5 * whole);
        return new Windkessel(first, whole - first, s.EndComplianceM3PerPa!.Value, tree.Beds.OutflowPressurePa, tree.Beds.MeanPressurePa);
    }

    private static IEnumerable<ISideFlow> Sources(PatientTree tree, TreeSupport support, double periodS)
    {
        if (support.Placement is not CannulaPlacement placement)
        {
            yield break;
        }

        double perfusion = support.PerfusionLPerMin * 1e-3 / 60;
        double[] pump = [.. support.PumpMlPerS.Select(static q => q * 1e-6)];
        double Pump(double time)
        {
            double phase = time / periodS;
            double at = (phase - Math.Floor(phase)) * pump.Length;
            int i = (int)at;
            i = i == pump.Length ? 0 : i;
            return pump[i] + ((at - i) * (pump[i + 1 == pump.Length ? 0 : i + 1] - pump[i]));
        }

        ConstantBlood membrane = new(1);
        yield return new PointSource(Place(tree, placement.TipSegment, placement.TipM), time => Start(time) * (Pump(time) - perfusion), membrane);
        if (perfusion > 0)
        {
            yield return new PointSource(Place(tree, placement.PerfusionSegment, placement.PerfusionM), time => Start(time) * perfusion, membrane);
        }
    }

    private static double Start(double time) => Smooth(Math.Min(1, time / StartS));

    private static NetworkPlace Place(PatientTree tree, int segment, double at) =>
        new(tree.Segments[segment].Table.Name, Math.Clamp(at, 0, tree.Segments[segment].LengthM));

    private static IEnumerable<LumenBody> Bodies(PatientTree tree, TreeSupport support, VentricleNumbers numbers, double periodS)
    {
        foreach (FilledPiece piece in support.Placement?.Pieces ?? [])
        {
            yield return new LumenBody(
                Place(tree, piece.Segment, piece.FromM), piece.LengthM, _ => piece.AreaM2, changes: false, SteadyTree.UsualFriction);
        }

        if (support.BalloonMl <= 0)
        {
            yield break;
        }

        foreach ((PatientSegment s, double area) in Balloon(tree, support.BalloonMl))
        {
            yield return new LumenBody(
                new NetworkPlace(s.Table.Name, 0), s.LengthM, time => Math.Max(1e-9, area * Inflation(numbers, time, periodS)), changes: true, SteadyTree.UsualFriction);
        }
    }

    /// <summary>Volume of a balloon that the segments are taken to hold, mL.</summary>
    public static double BalloonHeldMl(PatientTree tree, double balloonMl) => Balloon(tree, balloonMl).Sum(static b => b.Area * b.Segment.LengthM) * 1e6;

    /// <summary>Cross-section of a balloon in each segment that it lies in: the same everywhere, at most half of the lumen.</summary>
    private static IEnumerable<(PatientSegment Segment, double Area)> Balloon(PatientTree tree, double balloonMl)
    {
        PatientSegment[] held = [.. tree.Segments.Where(static s => BalloonSegments.Contains(s.Table.Name))];
        double uniform = balloonMl * 1e-6 / held.Sum(static s => s.LengthM);
        return held.Select(s =>
        {
            double narrowest = Math.Min(s.ProximalRadiusM, s.DistalRadiusM);
            return (s, Math.Min(uniform, 0.5 * Math.PI * narrowest * narrowest));
        });
    }

    /// <summary>Filling of a balloon over the beat as in the circulation room: full in diastole, empty while the ventricle contracts.</summary>
    private static double Inflation(VentricleNumbers numbers, double time, double periodS)
    {
        double beat = time - (Math.Floor(time / periodS) * periodS);
        double deflate = 1 - Smooth(Math.Clamp(beat / numbers.ContractionStartS, 0, 1));
        return deflate + Smooth(Math.Clamp((beat - numbers.EndSystoleS) / (numbers.RelaxedS - numbers.EndSystoleS), 0, 1));
    }

    private static double Smooth(double x) => x * x * (3 - (2 * x));
}
