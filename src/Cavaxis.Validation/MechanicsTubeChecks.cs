using Cavaxis.Anatomy.Space;
using Cavaxis.Mechanics.Relaxing;
using Cavaxis.Mechanics.Rods;
using Cavaxis.Mechanics.Walls;
using Cavaxis.Quantities;

namespace Cavaxis.Validation;

/// <summary>
/// A heavy rod that lies on the floor of a horizontal tube without friction and is pressed along it. Its ends are held
/// sideways at the floor and free to turn; its length is that of ten half waves of the critical form, so that this form fits.
/// </summary>
public sealed class MechanicsTubeChecks : IReferenceChecks
{
    private const double ClearanceMm = 10;
    private const double WeightNPerMm = 1e-3;
    private const int Pieces = 200;
    private const int HalfWaves = 10;

    private static readonly RelaxationSettings OnTheFloor = new() { LeavesSaddles = false, PenetrationMm = 1 };

    /// <summary>Square root of EI w / r, N.</summary>
    private static double UnitN => Math.Sqrt(ReferenceRod.StiffnessNMm2 * WeightNPerMm / ClearanceMm);

    /// <inheritdoc/>
    public IEnumerable<ValidationRow> Rows()
    {
        double wave = Math.Pow(WeightNPerMm / (ReferenceRod.StiffnessNMm2 * ClearanceMm), 0.25);
        double piece = HalfWaves * Math.PI / wave / Pieces;
        yield return MechanicsRodChecks.Row(
            "Axial load by root of EI w/r at which a rod on the floor of a horizontal tube takes a sine form",
            new Source("Dawson and Paslay; Chen, Lin and Cheatham", Certainty.Seen), 2,
            ReferenceRod.Critical(load => IsUnstable(load * UnitN, piece), 0.5, 4), "1", Tolerance.Relative, 0.1,
            "Ends held sideways, no friction, length ten half waves.");
    }

    private static bool IsUnstable(double load, double piece)
    {
        RodChain chain = RodChain.Uniform(Pieces, Pieces * piece, ReferenceRod.Edge with { AxialStiffnessN = 1e5 }, 0);
        RodSupports supports = RodSupports.None(Pieces + 1).WithNode(0).WithAngle(0).WithNode(Pieces, false, true, true);
        Vector3D weight = new(0, 0, -WeightNPerMm * piece);
        RelaxationTask task = new(
            chain, RodState.Along([.. Enumerable.Range(0, Pieces + 1).Select(i => new Vector3D(i * piece, 0, -ClearanceMm))]), supports)
        {
            LoadsN = [.. Enumerable.Repeat(weight, Pieces), weight - new Vector3D(load, 0, 0)],
            Wall = new Wall(new CylinderInside(ClearanceMm), 0),
        };
        RelaxationResult rest = Relaxation.Relax(task, OnTheFloor);
        return !rest.IsAtRest || Relaxation.UnstableModes(task with { Start = rest.State }) > 0;
    }
}
