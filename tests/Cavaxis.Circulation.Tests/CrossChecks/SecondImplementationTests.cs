using Cavaxis.Circulation.Equations;
using Cavaxis.Circulation.Lanes;
using Cavaxis.Circulation.Parameters;
using Cavaxis.Circulation.Simulation;
using Cavaxis.Circulation.Solver;

namespace Cavaxis.Circulation.Tests.CrossChecks;

/// <summary>The same equations written again in C and in Python and solved by other methods give the same state after twenty beats.</summary>
public class SecondImplementationTests(OutsideSolver outside) : IClassFixture<OutsideSolver>
{
    private const int Beats = 20;
    private const double Bound = 1e-4;

    [Theory]
    [InlineData("normal adult", "adams")]
    [InlineData("normal adult", "bdf")]
    [InlineData("two-site V-V", "adams")]
    [InlineData("two-site V-V", "bdf")]
    [InlineData("V-A with a weak ventricle", "adams")]
    [InlineData("V-A with a weak ventricle", "bdf")]
    [InlineData("V-AV with every option", "adams")]
    [InlineData("V-AV with every option", "bdf")]
    public void The_state_after_twenty_beats_is_that_of_CVODE(string name, string method)
    {
        CirculationParameters patient = CrossCase.Of(name);
        double[] start = InitialState.Of(patient);
        double[] other = outside.Cvode(OutsideSolver.Input(patient, start, Beats), method, 1e-9);
        (double worst, int index) = Difference(Integrate(patient, start), other, patient);
        Assert.True(worst < Bound, $"Quantity {index} of the state differs by {worst:G3}.");
    }

    [Theory]
    [InlineData("normal adult")]
    [InlineData("V-AV with every option")]
    public void The_state_after_twenty_beats_is_that_of_Radau(string name)
    {
        CirculationParameters patient = CrossCase.Of(name);
        double[] start = InitialState.Of(patient);
        double[] other = outside.Radau(OutsideSolver.Input(patient, start, Beats), 3e-6);
        (double worst, int index) = Difference(Integrate(patient, start), other, patient);
        Assert.True(worst < Bound, $"Quantity {index} of the state differs by {worst:G3}.");
    }

    [Theory]
    [InlineData(CirculationParameter.OutflowInertanceMmHgS2PerMl)]
    [InlineData(CirculationParameter.PulmonaryResistanceMmHgSPerMl)]
    [InlineData(CirculationParameter.JetMixing)]
    [InlineData(CirculationParameter.HaldaneFactor)]
    [InlineData(CirculationParameter.SeptalOpeningCm2)]
    public void A_changed_coefficient_in_the_other_implementation_is_seen(CirculationParameter parameter)
    {
        CirculationParameters patient = CrossCase.Of("V-AV with every option");
        double[] start = InitialState.Of(patient);
        double[] other = outside.Cvode(OutsideSolver.Input(patient.Times(parameter, 1.02), start, Beats), "adams", 1e-9);
        (double worst, _) = Difference(Integrate(patient, start), other, patient);
        Assert.True(worst > Bound, $"Two percent of {parameter} change the state by {worst:G3} only.");
    }

    private static double[] Integrate(CirculationParameters patient, double[] start)
    {
        double mass = patient.MassKg / ParameterTable.ReferenceMassKg;
        CirculationEquations<OneLane> equations = new(new ModelConstants<OneLane>([patient]));
        LaneIntegrator<OneLane> integrator = new(equations, [mass], new Tolerance(1e-9));
        integrator.SetState([.. start.Select(static v => new OneLane(v))]);
        for (int beat = 0; beat < Beats; beat++)
        {
            integrator.Run([(equations.Clock.BeatStart + equations.Clock.BeatPeriod).Value]);
        }

        return [.. integrator.State.ToArray().Select(static v => v.Value)];
    }

    /// <summary>Largest difference over the state, relative to the quantity or, where that is small, to its usual size.</summary>
    private static (double Worst, int Index) Difference(double[] ours, double[] other, CirculationParameters patient)
    {
        Assert.Equal(ours.Length, other.Length);
        (double worst, int index) = (0, 0);
        for (int i = 0; i < ours.Length; i++)
        {
            double size = Tolerance.SizeOf(i, patient.MassKg / ParameterTable.ReferenceMassKg) ?? 1;
            double difference = Math.Abs(ours[i] - other[i]) / Math.Max(size, Math.Abs(ours[i]));
            (worst, index) = difference <= worst ? (worst, index) : (difference, i);
        }

        return (worst, index);
    }
}
