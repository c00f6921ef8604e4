using Cavaxis.Circulation.Equations;
using Cavaxis.Circulation.Lanes;
using Cavaxis.Circulation.Parameters;
using Cavaxis.Circulation.Simulation;
using Cavaxis.Circulation.Solver;
using static Cavaxis.Circulation.Parameters.CirculationParameter;
using S = Cavaxis.Circulation.Equations.StateIndex;

namespace Cavaxis.Circulation.Tests.Solver;

public class ConservationTests
{
    private const double HourS = 3600;

    [Theory]
    [InlineData(0.0)]
    [InlineData(1.0)]
    [InlineData(0.6)]
    public void An_hour_of_support_conserves_blood_and_gas(double arterialShare)
    {
        CirculationParameters patient = CirculationParameters.Adult
            .With(CircuitOn, 1).With(ArterialShareOfReturn, arterialShare).With(ShuntFraction, 0.4).With(ReflexGain, 1);
        CirculationEquations<OneLane> equations = new(new ModelConstants<OneLane>([patient]));
        LaneIntegrator<OneLane> integrator = new(equations, [1], Tolerance.Usual);
        integrator.SetState([.. InitialState.Of(patient).Select(static v => new OneLane(v))]);
        double[] before = Balance(integrator.State);
        integrator.Run([HourS]);
        double[] after = Balance(integrator.State);
        Assert.InRange(Math.Abs(after[0] - before[0]) / before[0], 0, 1e-9);
        Assert.InRange(Math.Abs(after[1] - before[1]) / before[1], 0, 1e-6);
        Assert.InRange(Math.Abs(after[2] - before[2]) / before[2], 0, 1e-6);

        // The balance says something only if much gas went in and out.
        Assert.True(integrator.State[S.OxygenConsumed].Value > 0.5 * 250 * 60);
        Assert.True(integrator.State[S.OxygenFromMembrane].Value > 1000);
    }

    /// <summary>Blood; oxygen held less what came plus what was used; the same for carbon dioxide.</summary>
    private static double[] Balance(ReadOnlySpan<OneLane> y)
    {
        (double blood, double oxygen, double carbonDioxide) = (0, 0, 0);
        for (int i = 0; i < S.VolumeCount; i++)
        {
            blood += y[i].Value;
        }

        for (int n = 0; n < GasNode.Count; n++)
        {
            oxygen += y[S.Oxygen + n].Value;
            carbonDioxide += y[S.CarbonDioxide + n].Value;
        }

        oxygen += y[S.AlveolarOxygen].Value - y[S.OxygenFromLungs].Value - y[S.OxygenFromMembrane].Value + y[S.OxygenConsumed].Value;
        carbonDioxide += y[S.AlveolarCarbonDioxide].Value + y[S.CarbonDioxideByLungs].Value
            + y[S.CarbonDioxideByMembrane].Value - y[S.CarbonDioxideProduced].Value;
        return [blood, oxygen, carbonDioxide];
    }
}
