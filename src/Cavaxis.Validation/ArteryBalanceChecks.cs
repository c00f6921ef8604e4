using Cavaxis.Arteries.Boundaries;
using Cavaxis.Arteries.Network;
using Cavaxis.Arteries.Solver;
using Cavaxis.Quantities;

namespace Cavaxis.Validation;

/// <summary>
/// What must balance in arteries: mean pressures that follow from mean flow and resistance, friction of a steady flow, volume and tracer, mixing at a node. The curves of the benchmark set themselves
/// may not be shipped: they are compared in the tests of the room, where they lie beside the repository (figures in docs/models/arteries.md).
/// </summary>
public sealed class ArteryBalanceChecks : IReferenceChecks
{
    private const string Room = "Arteries";
    private static readonly Source Identity = new("Mean pressure = mean flow times (R1 + R2); parameters of cases 2 to 4 of Boileau et al. 2015", Certainty.Derived);
    private static readonly Source Poiseuille = new("Poiseuille: 8 mu L Q/(pi R^4)", Certainty.ClosedForm);
    private static readonly Source Conservation = new("Conservation of volume and of amount", Certainty.ClosedForm);

    /// <inheritdoc/>
    public IEnumerable<ValidationRow> Rows()
    {
        yield return Mean("common carotid artery", new("v", "in", "out", 0.126, 0.003, 0.003, 0.0003, 0.0003, 700e3, 10933), 2, 6.500e-6, 1.1, [2.4875e8, 1.8697e9, 1.7529e-10], 13.770);
        yield return Mean("upper thoracic aorta", new("v", "in", "out", 0.24137, 0.012, 0.012, 0.0012, 0.0012, 400e3, 9466.7), 9, 1.0309e-4, 0.955, [1.1752e7, 1.1167e8, 1.0163e-8], 12.723);
        yield return Mean("iliac artery behind the aortic bifurcation", new("v", "in", "out", 0.085, 0.006, 0.006, 0.00072, 0.00072, 700e3, 9466.7), 9, 3.9927e-6, 1.1, [6.8123e7, 3.1013e9, 3.6664e-10], 12.654);
        yield return Friction();
        foreach (ValidationRow row in Balances())
        {
            yield return row;
        }
    }

    private static ValidationRow Mean(string name, ArterialSegment segment, double profile, double flow, double period, double[] windkessel, double kiloPascal)
    {
        // The inflow is a half wave of that mean: the identity holds for any shape.
        ArterialSimulation simulation = new(new ArterialSetup(
            new ArterialNetwork([segment], new BloodFluid(1060, 0.004, profile)),
            [
                new("in", new FlowInlet(t => Math.PI * flow * Math.Max(0, Math.Sin(2 * Math.PI * t / period)))),
                new("out", new Windkessel(windkessel[0], windkessel[1], windkessel[2], 0, 1000 * kiloPascal)),
            ],
            1000 * kiloPascal)
        { CellLength = 0.01 });
        PeriodicFlow.Settle(simulation, period, 1e-7, 60);
        ArterialProbe end = simulation.Locate(new("v", segment.Length));
        const int Points = 1000;
        double mean = 0;
        for (int i = 0; i < Points; i++)
        {
            simulation.Advance(period / Points);
            mean += simulation.Pressure(end) / Points / 1000;
        }

        return new(Room, $"Mean pressure at the end of the {name}", Identity, kiloPascal, mean, "kPa", Tolerance.Relative, 0.001);
    }

    private static ValidationRow Friction()
    {
        ArterialSimulation simulation = new(new ArterialSetup(
            new ArterialNetwork([new("pipe", "in", "out", 0.5, 0.003, 0.003, 0.001, 0.001, 1e8, 0)], new BloodFluid(1060, 0.004, 2)),
            [new("in", new FlowInlet(static t => 1e-6 * Math.Min(1, 5 * t))), new("out", new Resistance(1e9, 0))],
            0)
        { CellLength = 0.02 });
        simulation.Advance(6);
        double drop = simulation.Pressure(simulation.Locate(new("pipe", 0.1))) - simulation.Pressure(simulation.Locate(new("pipe", 0.4)));
        return new(Room, "Pressure that a steady flow loses over 0.3 m of a stiff tube", Poiseuille, 8 * 0.004 * 0.3 * 1e-6 / (Math.PI * Math.Pow(0.003, 4)), drop, "Pa", Tolerance.Relative, 5e-4);
    }

    private static IEnumerable<ValidationRow> Balances()
    {
        const double Period = 0.8, Seconds = 16;
        ArterialSimulation simulation = new(new ArterialSetup(
            new ArterialNetwork(
                [
                    new("trunk", "heart", "fork", 0.3, 0.012, 0.009, 0.0014, 0.001, 450e3, 10_000),
                    new("right", "fork", "rightEnd", 0.4, 0.005, 0.003, 0.0007, 0.0005, 700e3, 10_000),
                    new("left", "fork", "leftEnd", 0.4, 0.005, 0.003, 0.0007, 0.0005, 700e3, 10_000),
                ],
                new BloodFluid(1055, 0.0035, 9)),
            [
                new("heart", new FlowInlet(static t => 2e-4 * Math.Max(0, Math.Sin(2 * Math.PI * t / Period))), new ConstantBlood(0.2)),
                new("rightEnd", new Windkessel(2e8, 2e9, 4e-10, 500, 10_000)),
                new("leftEnd", new Resistance(1e9, 500)),
            ],
            10_000)
        {
            InitialTracers = [0.5],
            SideFlows = [new PointSource(new("right", 0.2), static t => 4e-5 * Math.Min(1, t), new ConstantBlood(1)), new LinearTube(new("trunk", 0.1), new("left", 0.2), 1e9, 2e7, 5e-6)],
        });
        double volume = simulation.VesselVolume + simulation.StoredVolume - simulation.EnteredVolume;
        double tracer = simulation.TracerAmount(0) - simulation.TracerEntered(0), low = 1, high = 0;
        ArterialProbe[] probes = [.. simulation.Network.Segments.SelectMany(s => Enumerable.Range(0, 20).Select(i => simulation.Locate(new(s.Name, s.Length * (i + 0.5) / 20))))];
        while (simulation.Time < Seconds)
        {
            simulation.Advance(0.1);
            low = Math.Min(low, probes.Min(p => simulation.Concentration(p, 0)));
            high = Math.Max(high, probes.Max(p => simulation.Concentration(p, 0)));
        }

        const double Through = Seconds * 1e-4;
        double lost = Math.Abs(simulation.VesselVolume + simulation.StoredVolume - simulation.EnteredVolume - volume) / Through;
        double astray = Math.Abs(simulation.TracerAmount(0) - simulation.TracerEntered(0) - tracer) / Through;
        yield return new(Room, "Volume lost over 20 beats, of that which passed", Conservation, 1e-10, lost, "1", Tolerance.AtMost, 0);
        yield return new(Room, "Tracer lost over 20 beats, of that which passed", Conservation, 1e-10, astray, "1", Tolerance.AtMost, 0);
        yield return new(Room, "Lowest tracer anywhere where 0.2 and 1 enter", Conservation, 0.2 - 1e-12, low, "1", Tolerance.AtLeast, 0, "No undershoot.");
        yield return new(Room, "Highest tracer anywhere where 0.2 and 1 enter", Conservation, 1 + 1e-12, high, "1", Tolerance.AtMost, 0, "No overshoot.");
    }
}
