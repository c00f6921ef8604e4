using Cavaxis.Circulation.Calibration;
using Cavaxis.Circulation.Parameters;
using Cavaxis.Web.Pages.WhatIf;

namespace Cavaxis.Web.Tests.WhatIf;

/// <summary>Steppers stay inside the range of the table and ask for what they show.</summary>
public class StepperTests
{
    private static readonly CirculationParameters Supported = CirculationParameters.Adult.With(
        (CirculationParameter.CircuitOn, 1), (CirculationParameter.SweepLPerMin, 4.2));

    /// <summary>Keys of all controls of a supported patient.</summary>
    public static TheoryData<string> Keys => [.. ControlTable.For(Supported, 3000).Select(static c => c.Key)];

    [Theory]
    [MemberData(nameof(Keys))]
    public void A_stepper_goes_to_both_ends_of_the_range_and_no_further(string key)
    {
        Stepper start = Stepper.Of(ControlTable.For(Supported, 3000).First(c => c.Key == key), Supported);
        foreach (bool up in (bool[])[true, false])
        {
            Stepper end = start;
            for (int i = 0; i < 3000; i++)
            {
                end = end.Stepped(up);
            }

            Assert.InRange(end.Value, start.Low - 1e-6, start.High + 1e-6);
            Assert.False(up ? end.CanRise : end.CanFall);
            if (end.Change() is ParameterChange change)
            {
                Assert.NotNull(change.Apply(Supported));
            }
        }
    }

    [Fact]
    public void The_first_step_of_a_setting_leads_to_a_round_number() =>
        Assert.Equal("4.5 L/min", Sweep().Stepped(true).Shown);

    [Fact]
    public void Steps_there_and_back_ask_for_nothing() =>
        Assert.Null(Sweep().Stepped(true).Stepped(false).Change());

    [Fact]
    public void An_amount_of_blood_is_added_to_each_member() =>
        Assert.Equal(
            ParameterChange.Plus(CirculationParameter.BloodVolumeMl, 500),
            Stepper.Of(ControlTable.For(Supported, null).First(static c => c.Key == "volume"), Supported).Stepped(true).Stepped(true).Change());

    private static Stepper Sweep() => Stepper.Of(ControlTable.For(Supported, null).First(static c => c.Key == "sweep"), Supported);
}
