using Cavaxis.Circulation.Equations;
using Cavaxis.Circulation.Lanes;
using Cavaxis.Circulation.Parameters;
using Cavaxis.Circulation.Simulation;
using Cavaxis.Circulation.Solver;
using Cavaxis.Circulation.Tests.CrossChecks;

namespace Cavaxis.Circulation.Tests.Solver;

public class IntegratorTests
{
    private static readonly CirculationParameters[] Patients =
    [
        CrossCase.Of("normal adult"), CrossCase.Of("two-site V-V"), CrossCase.Of("V-A with a weak ventricle"), CrossCase.Of("V-AV with every option"),
    ];

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public void The_error_falls_with_the_tolerance(int patient)
    {
        double[] exact = After(Patients[patient], 1e-11, 5);
        double coarse = Error(After(Patients[patient], 1e-4, 5), exact);
        double middle = Error(After(Patients[patient], 1e-6, 5), exact);
        double fine = Error(After(Patients[patient], 1e-8, 5), exact);

        // A hundredth of the tolerance gives a hundredth of the error, within a factor of twenty: at coarse tolerance single errors
        // cancel or not, and corners of leaks and smooth openings lower the order.
        Assert.InRange(middle / coarse, 1e-4, 0.2);
        Assert.InRange(fine / middle, 1e-4, 0.2);
        Assert.InRange(fine, 0, 5e-6);
    }

    [Fact]
    public void A_row_of_eight_gives_each_patient_what_it_gets_alone_to_the_last_bit()
    {
        CirculationParameters[] row = [.. Patients, .. Patients.Reverse()];
        LaneIntegrator<EightLanes> together = Start<EightLanes>(row, 1e-5);
        together.Run([.. Enumerable.Repeat(7.3, 8)]);
        for (int lane = 0; lane < row.Length; lane++)
        {
            LaneIntegrator<OneLane> alone = Start<OneLane>([row[lane]], 1e-5);
            alone.Run([7.3]);
            for (int i = 0; i < StateIndex.Count; i++)
            {
                Assert.Equal(alone.State[i].Value, together.State[i][lane]);
            }
        }
    }

    [Fact]
    public void Closed_valves_carry_exactly_nothing_and_open_ones_nothing_backward()
    {
        foreach (CirculationParameters patient in Patients)
        {
            LaneIntegrator<OneLane> integrator = Start<OneLane>([patient], 1e-5);
            ValveWitness witness = new();
            integrator.Run([6], witness);
            Assert.True(witness.Steps > 200);
            Assert.Equal(0, witness.WorstClosed);
            Assert.True(witness.Least >= -1e-3, $"A valve carried {witness.Least} mL/s.");
        }
    }

    [Fact]
    public void Dense_output_meets_the_ends_of_the_steps()
    {
        LaneIntegrator<OneLane> integrator = Start<OneLane>([Patients[3]], 1e-5);
        EndWitness witness = new();
        integrator.Run([3], witness);
        Assert.True(witness.Steps > 100);
        Assert.InRange(witness.Worst, 0, 1e-12);
    }

    [Fact]
    public void Two_runs_give_the_same_bits()
    {
        Assert.Equal(After(Patients[3], 1e-5, 8), After(Patients[3], 1e-5, 8));
    }

    private static LaneIntegrator<T> Start<T>(CirculationParameters[] row, double tolerance)
        where T : unmanaged, ILane<T>
    {
        double[][] states = [.. row.Select(InitialState.Of)];
        LaneIntegrator<T> integrator = new(
            new CirculationEquations<T>(new ModelConstants<T>(row)), [.. row.Select(static p => p.MassKg / ParameterTable.ReferenceMassKg)], new Tolerance(tolerance));
        integrator.SetState([.. Enumerable.Range(0, StateIndex.Count).Select(i => T.Load([.. states.Select(s => s[i])]))]);
        return integrator;
    }

    private static double[] After(CirculationParameters patient, double tolerance, double seconds)
    {
        LaneIntegrator<OneLane> integrator = Start<OneLane>([patient], tolerance);
        integrator.Run([seconds]);
        return [.. integrator.State.ToArray().Select(static v => v.Value)];
    }

    private static double Error(double[] state, double[] exact) =>
        state.Select((v, i) => Math.Abs(v - exact[i]) / Math.Max(Tolerance.SizeOf(i, 1) ?? 1, Math.Abs(exact[i]))).Max();

    private sealed class ValveWitness : IStepWitness<OneLane>
    {
        private static readonly int[] Flows =
            [StateIndex.TricuspidFlow, StateIndex.PulmonaryValveFlow, StateIndex.MitralFlow, StateIndex.AorticValveFlow, StateIndex.CircuitFlow];

        public int Steps { get; private set; }

        public double WorstClosed { get; private set; }

        public double Least { get; private set; }

        public void Step(LaneIntegrator<OneLane> integrator, ReadOnlySpan<double> from, ReadOnlySpan<double> to)
        {
            Steps++;
            for (int v = 0; v < Flows.Length; v++)
            {
                double flow = integrator.State[Flows[v]].Value;
                WorstClosed = integrator.Open[v].Value > 0 ? WorstClosed : Math.Max(WorstClosed, Math.Abs(flow));
                double end = to[0] > from[0] ? integrator.DenseAt(0, Flows[v], (to[0] - from[0]) / integrator.StepLength(0)) : flow;
                Least = Math.Min(Least, Math.Min(flow, end));
            }
        }
    }

    private sealed class EndWitness : IStepWitness<OneLane>
    {
        private double[]? promised;
        private double until;

        public int Steps { get; private set; }

        public double Worst { get; private set; }

        public void Step(LaneIntegrator<OneLane> integrator, ReadOnlySpan<double> from, ReadOnlySpan<double> to)
        {
            for (int i = 0; promised is not null && from[0] == until && i < StateIndex.VolumeCount; i++)
            {
                // Valve flows are set to zero at events; volumes go on without a jump.
                double value = integrator.State[i].Value;
                Worst = Math.Max(Worst, Math.Abs(value - promised[i]) / Math.Max(1, Math.Abs(value)));
            }

            Steps++;
            OneLane[] end = new OneLane[StateIndex.Count];
            double share = integrator.StepLength(0) > 0 ? (to[0] - from[0]) / integrator.StepLength(0) : 0;
            integrator.Dense([share], end);
            promised = [.. end.Select(static v => v.Value)];
            until = to[0];
        }
    }
}
