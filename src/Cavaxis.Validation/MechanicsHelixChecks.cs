using System.Globalization;
using Cavaxis.Anatomy.Space;
using Cavaxis.Mechanics.Relaxing;
using Cavaxis.Mechanics.Rods;
using Cavaxis.Mechanics.Walls;
using Cavaxis.Quantities;

namespace Cavaxis.Validation;

/// <summary>
/// A rod pressed along a tube until it lies on the wall as a helix, without friction. Published formulas are for small slopes: the clearance is
/// a hundredth of the pitch here.
/// </summary>
public sealed class MechanicsHelixChecks : IReferenceChecks
{
    private const double ClearanceMm = 2;
    private const double WeightNPerMm = 1e-3;
    private const double LoadN = 2;
    private const int PerTurn = 32;
    private const int Turns = 8;
    private const int MostSteps = 6000;

    private static readonly Source Lubinski = new("Lubinski and Woods 1962: pitch 2 pi sqrt(2 EI/F), contact force per length r F^2/(4 EI)", Certainty.FromMemory);
    private static readonly Source Chen = new("Chen, Lin and Cheatham: 2.828 sqrt(EI w/r)", Certainty.Seen);

    private static readonly RelaxationSettings Metastable = new() { LeavesSaddles = false, MostSteps = MostSteps };

    private static double UnitN => Math.Sqrt(ReferenceRod.StiffnessNMm2 * WeightNPerMm / ClearanceMm);

    /// <inheritdoc/>
    public IEnumerable<ValidationRow> Rows()
    {
        foreach (double start in new[] { 0.8, 1.25 })
        {
            (double pitch, double contact) = Wound(start);
            string from = string.Create(CultureInfo.InvariantCulture, $"started at {start} of it");
            yield return MechanicsRodChecks.Row(
                $"Pitch of a weightless rod pressed in a tube, {from}", Lubinski, Pitch(LoadN), pitch, "mm", Tolerance.Relative, 0.1, "Middle half; the far end is free to wind.");
            yield return MechanicsRodChecks.Row(
                $"Its force on the wall per length, {from}", Lubinski, ClearanceMm * LoadN * LoadN / (4 * ReferenceRod.StiffnessNMm2), contact, "N/mm", Tolerance.Relative, 0.1);
        }

        yield return MechanicsRodChecks.Row(
            "Axial load by root of EI w/r at which a helix in a horizontal tube costs no more than lying straight", Chen, Math.Round(Math.Sqrt(8), 9),
            ReferenceRod.Critical(static load => HelixLessStraightNMm(load * UnitN) < 0, 2.6, 4), "1", Tolerance.Relative, 0.1,
            "Eight turns, ends held sideways on the floor; below 2.6 no helix is at rest.");
        yield return MechanicsRodChecks.Row(
            "Axial load by root of EI w/r at which the sine form of a rod in a horizontal tube gives way to whole turns", Chen, Math.Round(Math.Sqrt(8), 9),
            FirstTurns(), "1", Tolerance.Relative, 0.1,
            "Load raised by 0.05 at a time, length twenty half waves. Wu and Juvkam-Wold set the full helix at 3.657 by another definition.");
    }

    private static double Pitch(double load) => 2 * Math.PI * Math.Sqrt(2 * ReferenceRod.StiffnessNMm2 / load);

    /// <summary>Eight turns of another pitch, one end held, the other pressed and free: it winds to the pitch of least potential.</summary>
    private static (double PitchMm, double ContactNPerMm) Wound(double start)
    {
        double piece = Pitch(LoadN) / PerTurn;
        const int Pieces = PerTurn * Turns;
        RodSupports supports = RodSupports.None(Pieces + 1).WithNode(0).WithAngle(0);
        RelaxationResult rest = Relaxation.Relax(Task(Pieces, piece, start * Pitch(LoadN), supports, 0, LoadN), Metastable);
        if (!rest.IsAtRest)
        {
            return (double.NaN, double.NaN);
        }

        const int From = Pieces / 4;
        const int To = 3 * Pieces / 4;
        double turned = Turned(rest.State, From, To).Last();
        double span = rest.State.NodesMm[To].X - rest.State.NodesMm[From].X;
        return (2 * Math.PI * span / Math.Abs(turned), rest.Contacts.Where(static c => c.Node >= From && c.Node < To).Sum(static c => c.NormalN) / ((To - From) * piece));
    }

    /// <summary>Potential of eight turns less that of the same rod straight on the floor.</summary>
    private static double HelixLessStraightNMm(double load)
    {
        double piece = Pitch(load) / PerTurn;
        const int Pieces = PerTurn * Turns;
        RodSupports supports = RodSupports.None(Pieces + 1).WithNode(0).WithAngle(0).WithNode(Pieces, false, true, true);
        double helix = Potential(Task(Pieces, piece, Pitch(load), supports, WeightNPerMm, load));
        double straight = Potential(Task(Pieces, piece, double.PositiveInfinity, supports, WeightNPerMm, load));
        return helix - straight;
    }

    /// <summary>Load of the first state of rest whose nodes turn about the tube by more than a whole turn.</summary>
    private static double FirstTurns()
    {
        const int HalfWaves = 20;
        const int Pieces = 16 * HalfWaves;
        double length = HalfWaves * Math.PI / Math.Pow(WeightNPerMm / (ReferenceRod.StiffnessNMm2 * ClearanceMm), 0.25);
        double piece = length / Pieces;
        Vector3D[] nodes = [.. Enumerable.Range(0, Pieces + 1).Select(i => OnWall(i * piece, 0.02 * Math.Sin(Math.PI * HalfWaves * i / Pieces)))];
        RodSupports supports = RodSupports.None(Pieces + 1).WithNode(0).WithAngle(0).WithNode(Pieces, false, true, true);
        RodState state = RodState.Along(nodes);
        for (double load = 1.8; load < 6; load += 0.05)
        {
            RelaxationResult rest = Relaxation.Relax(Task(state, piece, supports, WeightNPerMm, load * UnitN), new RelaxationSettings { MostSteps = MostSteps });
            state = rest.State;
            double[] turned = [.. Turned(state, 0, Pieces)];
            if (!rest.IsAtRest || turned.Max() - turned.Min() > 2 * Math.PI)
            {
                return rest.IsAtRest ? load : double.NaN;
            }
        }

        return double.NaN;
    }

    /// <summary>Angle about the tube from a first node to each of the following.</summary>
    private static IEnumerable<double> Turned(RodState state, int from, int to)
    {
        double turned = 0;
        for (int i = from; i < to; i++)
        {
            (Vector3D a, Vector3D b) = (state.NodesMm[i], state.NodesMm[i + 1]);
            turned += Math.Atan2((a.Y * b.Z) - (a.Z * b.Y), (a.Y * b.Y) + (a.Z * b.Z));
            yield return turned;
        }
    }

    private static Vector3D OnWall(double x, double angle) => new(x, ClearanceMm * Math.Sin(angle), -ClearanceMm * Math.Cos(angle));

    private static double Potential(RelaxationTask task)
    {
        RelaxationResult rest = Relaxation.Relax(task, Metastable);
        return rest.IsAtRest
            ? rest.Elastic.TotalNMm - task.LoadsN.Zip(rest.State.NodesMm, static (load, node) => load.Dot(node)).Sum()
            : double.NaN;
    }

    /// <summary>A rod on the wall as a helix that begins and, after whole turns, ends on the floor.</summary>
    private static RelaxationTask Task(int pieces, double piece, double pitch, RodSupports supports, double weight, double load)
    {
        double turn = 2 * Math.PI / pitch;
        double along = 1 / Math.Sqrt(1 + (turn * turn * ClearanceMm * ClearanceMm));
        RodState helix = RodState.Along([.. Enumerable.Range(0, pieces + 1).Select(i => i * piece * along).Select(x => OnWall(x, turn * x))]);
        return Task(helix, piece, supports, weight, load);
    }

    private static RelaxationTask Task(RodState start, double piece, RodSupports supports, double weight, double load)
    {
        int pieces = start.NodesMm.Length - 1;
        Vector3D down = new(0, 0, -weight * piece);
        return new RelaxationTask(RodChain.Uniform(pieces, pieces * piece, ReferenceRod.Edge, 0), start, supports)
        {
            LoadsN = [.. Enumerable.Repeat(down, pieces), (0.5 * down) - new Vector3D(load, 0, 0)],
            Wall = new Wall(new CylinderInside(ClearanceMm), 0),
        };
    }
}
