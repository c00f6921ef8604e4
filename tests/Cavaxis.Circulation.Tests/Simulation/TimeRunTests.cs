using Cavaxis.Circulation.Parameters;
using Cavaxis.Circulation.Signals;
using Cavaxis.Circulation.Simulation;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Circulation.Tests.Simulation;

public class TimeRunTests
{
    private static readonly SettledState Adult = CirculationSimulator.Settle(CirculationParameters.Adult);

    [Fact]
    public void Without_a_change_a_run_goes_on_as_the_settled_breath()
    {
        BreathRecord breath = Adult.RequireBreath();
        Trace run = CirculationSimulator.Run(Adult, Adult.Parameters, breath.PeriodS, breath.PeriodS / breath.Count);
        Assert.InRange(run.Count, breath.Count, breath.Count + 1);
        for (int i = 0; i < breath.Count; i++)
        {
            Assert.Equal(breath[Signal.ArterialPressure][i], run[Signal.ArterialPressure][i], 0.3);
            Assert.Equal(breath[Signal.LeftVentricularVolume][i], run[Signal.LeftVentricularVolume][i], 0.6);
        }
    }

    [Fact]
    public void Oxygen_that_comes_in_is_used_or_stored_also_while_everything_moves()
    {
        CirculationParameters bled = Adult.Parameters.Times(CirculationParameter.BloodVolumeMl, 0.85).With(CirculationParameter.InspiredOxygenFraction, 0.5);
        OxygenBudget oxygen = CirculationSimulator.Run(Adult, bled, 30, 0.05).Oxygen;
        Assert.True(Math.Abs(oxygen.StoreChangeMl) > 1);
        Assert.Equal(0, oxygen.ErrorMl, 1e-6 * oxygen.StoreMl);
    }

    [Fact]
    public void Blood_loss_lowers_the_arterial_pressure_and_an_infusion_raises_it()
    {
        double before = Adult.RequireBreath().Mean(Signal.ArterialPressure);
        Assert.True(Last(-400) < before - 2);
        Assert.True(Last(400) > before + 2);
    }

    [Fact]
    public void What_a_run_comes_to_is_what_the_changed_numbers_settle_to()
    {
        CirculationParameters stiff = Adult.Parameters.Times(CirculationParameter.SystemicResistanceMmHgSPerMl, 1.3);
        Trace run = CirculationSimulator.Run(Adult, stiff, 120, 0.05);
        double settled = CirculationSimulator.Settle(stiff).RequireBreath().Mean(Signal.ArterialPressure);
        Assert.Equal(settled, run.LastMean(Signal.ArterialPressure, 20), 1.0);
    }

    [Theory]
    [InlineData(0, 0.02)]
    [InlineData(4000, 0.02)]
    [InlineData(10, 0)]
    [InlineData(3600, 0.001)]
    [InlineData(10, double.NaN)]
    public void A_length_or_spacing_that_cannot_be_is_refused(double seconds, double spacing) =>
        Assert.Throws<InputFaultException>(() => CirculationSimulator.Run(Adult, Adult.Parameters, seconds, spacing));

    [Fact]
    public void Another_body_and_more_blood_than_the_veins_hold_are_refused()
    {
        Assert.Throws<InputFaultException>(() => CirculationSimulator.Run(Adult, CirculationParameters.ForMass(30), 10, 0.02));
        Assert.Throws<InputFaultException>(() => CirculationSimulator.Run(Adult, Adult.Parameters.With(CirculationParameter.BloodVolumeMl, 300), 10, 0.02));
    }

    private static double Last(double given) => CirculationSimulator
        .Run(Adult, Adult.Parameters.With(CirculationParameter.BloodVolumeMl, Adult.Parameters[CirculationParameter.BloodVolumeMl] + given), 40, 0.02)
        .LastMean(Signal.ArterialPressure, 10);
}
