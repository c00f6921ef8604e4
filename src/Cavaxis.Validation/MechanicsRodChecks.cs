using System.Globalization;
using Cavaxis.Anatomy.Space;
using Cavaxis.Mechanics.Relaxing;
using Cavaxis.Mechanics.Rods;
using Cavaxis.Quantities;

namespace Cavaxis.Validation;

/// <summary>Large bending of rods in free space.</summary>
public sealed class MechanicsRodChecks : IReferenceChecks
{
    private const int Pieces = 100;

    private static readonly Source Elastica = new("Bisshopp and Drucker 1945, equations evaluated with elliptic integrals by an outside library", Certainty.ClosedForm);
    private static readonly Source PostBuckling = new("Elastica under axial load: P/Pcr = (2K/pi)^2, x/L = 2E/K - 1, y/L = 2k/K", Certainty.ClosedForm);
    private static readonly Source Arc = new("End moment M bends a cantilever to an arc of radius EI/M (a public solver's verification manual)", Certainty.Seen);
    private static readonly Source Bend45 = new("Bathe and Bolourchi 1979; Simo and Vu-Quoc 1986", Certainty.FromMemory);

    private static readonly int[] Refined = [20, 40, 80];
    private static readonly double[] TipAngles = [20, 40, 60, 80, 100, 120, 140, 160, 176];
    private static readonly double[] Turns = [0.25, 0.5, 1];

    /// <summary>Load PL²/EI with tip deflection and tip place, both by the length.</summary>
    private static readonly (double Load, double Deflection, double Place)[] Table =
    [
        (0.25, 0.082746, 0.995882), (0.50, 0.162144, 0.984081), (0.75, 0.235615, 0.966034), (1.00, 0.301721, 0.943567), (1.25, 0.360067, 0.918434),
        (1.50, 0.410978, 0.892058), (1.75, 0.455161, 0.865472), (2.00, 0.493457, 0.839358), (2.50, 0.555659, 0.790042), (3.00, 0.603253, 0.745580),
        (4.00, 0.669964, 0.671059), (5.00, 0.713792, 0.612372), (6.00, 0.744571, 0.565411), (7.00, 0.767369, 0.527073), (8.00, 0.784982, 0.495172),
        (9.00, 0.799056, 0.468179), (10.0, 0.810609, 0.445004),
    ];

    /// <inheritdoc/>
    public IEnumerable<ValidationRow> Rows() => [.. DeadLoad(), Order(), .. AfterBuckling(), .. Moment(), .. OutOfPlane()];

    internal static ValidationRow Row(
        string check, Source source, double expected, double got, string unit, Tolerance tolerance, double bound, string note = "") =>
        new("Mechanics", check, source, expected, got, unit, tolerance, bound, note);

    private static IEnumerable<ValidationRow> DeadLoad()
    {
        foreach ((double load, double deflection, double place) in Table)
        {
            Vector3D tip = ReferenceRod.End(ReferenceRod.Cantilever(Pieces, new Vector3D(0, 0, -load * ReferenceRod.UnitN)));
            string name = string.Create(CultureInfo.InvariantCulture, $"Cantilever with dead end load PL²/EI {load:G3}");
            yield return Row($"{name}: deflection by length", Elastica, deflection, -tip.Z / ReferenceRod.LengthMm, "1", Tolerance.Relative, 1e-3);
            yield return Row($"{name}: place of the end by length", Elastica, place, tip.X / ReferenceRod.LengthMm, "1", Tolerance.Relative, 1e-3);
        }
    }

    private static ValidationRow Order()
    {
        (double load, double exact, _) = Table[3];
        double[] errors = [.. Refined.Select(n =>
            Math.Abs((-ReferenceRod.End(ReferenceRod.Cantilever(n, new Vector3D(0, 0, -load * ReferenceRod.UnitN))).Z / ReferenceRod.LengthMm) - exact))];
        return Row(
            "Order of the error of that deflection at load 1, from 40 to 80 pieces", new Source("Second order of the discretisation", Certainty.ClosedForm), 2,
            Math.Log2(errors[1] / errors[2]), "1", Tolerance.Absolute, 0.2,
            string.Create(CultureInfo.InvariantCulture, $"From 20 to 40 pieces {Math.Log2(errors[0] / errors[1]):F2}."));
    }

    private static IEnumerable<ValidationRow> AfterBuckling()
    {
        foreach (double degrees in TipAngles)
        {
            double modulus = Math.Sin(degrees * Math.PI / 360);
            (double k, double e) = EllipticIntegral.Complete(modulus);
            Vector3D tip = ReferenceRod.End(ReferenceRod.Cantilever(2 * Pieces, new Vector3D(-k * k * ReferenceRod.UnitN, 0, 0))) / ReferenceRod.LengthMm;
            string name = string.Create(CultureInfo.InvariantCulture, $"Cantilever buckled by an axial load to {degrees:F0} degrees");
            yield return Row($"{name}: height of the end by length", PostBuckling, (2 * e / k) - 1, tip.X, "1", Tolerance.Absolute, 1e-3);
            yield return Row(
                $"{name}: its distance from the axis", PostBuckling, 2 * modulus / k, Math.Sqrt((tip.Y * tip.Y) + (tip.Z * tip.Z)), "1", Tolerance.Absolute, 1e-3);
        }
    }

    private static IEnumerable<ValidationRow> Moment()
    {
        foreach (double turns in Turns)
        {
            double angle = 2 * Math.PI * turns;
            Vector3D end = ReferenceRod.End(Rolled(angle)) / ReferenceRod.LengthMm;
            string name = string.Create(CultureInfo.InvariantCulture, $"End moment that bends a cantilever by {360 * turns:F0} degrees");
            yield return Row($"{name}: place of the end by length", Arc, Math.Round(Math.Sin(angle) / angle, 12), end.X, "1", Tolerance.Absolute, 1e-3);
            yield return Row($"{name}: deflection by length", Arc, Math.Round((1 - Math.Cos(angle)) / angle, 12), end.Y, "1", Tolerance.Absolute, 1e-3);
        }

        RodChain straight = RodChain.Uniform(Pieces, ReferenceRod.LengthMm, ReferenceRod.Edge, 0).WithClampBefore();
        RodChain curved = new(straight.Edges, straight.RadiiMm, [.. Enumerable.Repeat(new NaturalCurvature(2 * Math.PI / ReferenceRod.LengthMm, 0), Pieces + 2)]);
        RelaxationResult ring = Relaxation.Relax(new RelaxationTask(
            curved, RodState.Along(ReferenceRod.Straight(Pieces, 1, 0), new Vector3D(0, 1, 0)), RodSupports.None(Pieces + 2).WithClampedEdge(0)));
        yield return Row(
            "Gap of a rod of natural curvature 2 pi / L let go from straight, by length", new Source("It closes to a ring", Certainty.ClosedForm), 0,
            ReferenceRod.End(ring).Length / ReferenceRod.LengthMm, "1", Tolerance.Absolute, 1e-3);
    }

    /// <summary>The moment is a pair of dead forces square to the end as it must come to lie.</summary>
    private static RelaxationResult Rolled(double angle)
    {
        const int Count = 2 * Pieces;
        double piece = ReferenceRod.LengthMm / Count;
        double last = angle * (1 - (0.5 / Count));
        Vector3D force = angle * ReferenceRod.StiffnessNMm2 / ReferenceRod.LengthMm / piece * new Vector3D(-Math.Sin(last), Math.Cos(last), 0);
        double near = 0.98 * angle;
        Vector3D[] nodes = [.. Enumerable.Range(-1, Count + 2).Select(i => i * piece).Select(s => s <= 0
            ? new Vector3D(s, 0, 0)
            : ReferenceRod.LengthMm / near * new Vector3D(Math.Sin(near * s / ReferenceRod.LengthMm), 1 - Math.Cos(near * s / ReferenceRod.LengthMm), 0))];
        // Dead couples of half a turn and more let a rod leave its plane; the arc is the state of rest within it.
        RodSupports plane = Enumerable.Range(0, Count + 2).Aggregate(RodSupports.None(Count + 2).WithClampedEdge(0), static (all, i) => all.WithNode(i, false, false, true));
        RelaxationTask task = new(
            RodChain.Uniform(Count, ReferenceRod.LengthMm, ReferenceRod.Edge, 0).WithClampBefore(), RodState.Along(nodes), plane)
        {
            LoadsN = [.. new Vector3D[Count], -1 * force, force],
        };

        return Relaxation.Relax(task);
    }

    private static IEnumerable<ValidationRow> OutOfPlane()
    {
        // A square of side 1: I = 1/12, torsion constant 0.1406; E 1e7, G half of it.
        const double Radius = 100;
        const int Count = 80;
        double step = Math.PI / 4 / Count;
        RodEdge edge = new(2 * Radius * Math.Sin(step / 2), 1e7, 1e7 / 12, 0.1406 * 5e6);
        Vector3D[] nodes = [.. Enumerable.Range(0, Count + 1).Select(i => new Vector3D(Radius * (1 - Math.Cos(i * step)), Radius * Math.Sin(i * step), 0))];
        RodChain chain = new RodChain(
            [.. Enumerable.Repeat(edge, Count)], [.. new double[Count + 1]], [.. Enumerable.Repeat(new NaturalCurvature(1 / Radius, 0), Count + 1)]).WithClampBefore();
        RodState state = RodState.Along([new Vector3D(0, -edge.RestLengthMm, 0), .. nodes], new Vector3D(1, 0, 0));
        foreach ((double load, Vector3D expected) in new[] { (300.0, new Vector3D(22.33, 58.84, 40.08)), (450, new Vector3D(18.62, 52.32, 48.39)), (600, new Vector3D(15.79, 47.23, 53.37)) })
        {
            RelaxationResult rest = Relaxation.Relax(new RelaxationTask(chain, state, RodSupports.None(Count + 2).WithClampedEdge(0))
            {
                LoadsN = [.. new Vector3D[Count + 1], new Vector3D(0, 0, load)],
            });
            Vector3D tip = ReferenceRod.End(rest);
            string name = string.Create(CultureInfo.InvariantCulture, $"45-degree bend loaded across its plane with {load:F0}");
            yield return Row($"{name}: x", Bend45, expected.X, tip.X, "mm", Tolerance.Relative, 0.02, "Published solutions scatter by about 1 %.");
            yield return Row($"{name}: y", Bend45, expected.Y, tip.Y, "mm", Tolerance.Relative, 0.01);
            yield return Row($"{name}: z", Bend45, expected.Z, tip.Z, "mm", Tolerance.Relative, 0.01);
        }
    }
}
