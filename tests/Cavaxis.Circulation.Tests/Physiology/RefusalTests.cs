using Cavaxis.Circulation.Axis;
using Cavaxis.Circulation.Parameters;
using Cavaxis.Circulation.Simulation;
using Cavaxis.Quantities.Faults;
using CsCheck;
using static Cavaxis.Circulation.Parameters.CirculationParameter;

namespace Cavaxis.Circulation.Tests.Physiology;

public class RefusalTests
{
    [Fact]
    public void Every_parameter_refuses_what_lies_outside_its_range_and_says_how_to_mend_it()
    {
        foreach (CirculationParameter parameter in Enum.GetValues<CirculationParameter>())
        {
            ParameterDefinition definition = ParameterTable.Of(parameter);
            foreach (double bad in new[] { definition.Low - 1, definition.High + 1, double.NaN, double.PositiveInfinity })
            {
                InputFaultException refused = Assert.Throws<InputFaultException>(() => CirculationParameters.Adult.With(parameter, bad));
                InputFault fault = Assert.Single(refused.Faults);
                Assert.Equal(definition.Name, fault.Field);
                Assert.NotEmpty(fault.Value);
                Assert.NotEmpty(fault.Accepted);
                Assert.Contains(definition.Meaning, fault.Remedy, StringComparison.Ordinal);
            }
        }
    }

    [Fact]
    public void Every_adult_value_lies_inside_its_own_range() =>
        Assert.All(ParameterTable.All, static d => Assert.InRange(d.Value, d.Low, d.High));

    [Fact]
    public void Every_body_mass_gives_numbers_inside_the_ranges_of_that_mass() =>
        Gen.Double[1, 300].Sample(static mass =>
        {
            CirculationParameters p = CirculationParameters.ForMass(mass);
            return Enum.GetValues<CirculationParameter>().All(parameter =>
            {
                (double low, double high) = ParameterTable.Bounds(parameter, mass);
                return p[parameter] >= low * (1 - 1e-12) && p[parameter] <= high * (1 + 1e-12);
            });
        });

    [Theory]
    [InlineData(0)]
    [InlineData(301)]
    [InlineData(double.NaN)]
    public void A_body_mass_out_of_range_is_refused(double massKg) =>
        Assert.Equal("massKg", Assert.Throws<InputFaultException>(() => CirculationParameters.ForMass(massKg)).Faults[0].Field);

    [Fact]
    public void Shares_that_do_not_sum_to_one_are_refused() =>
        Assert.Equal("drainage", Assert.Throws<InputFaultException>(static () =>
            new AxisPorts([0.5, 0, 0, 0, 0, 0, 0, 0, 0, 0], AxisPorts.Default.VenousReturn.AsSpan())).Faults[0].Field);

    [Fact]
    public void A_body_that_uses_oxygen_without_any_supply_does_not_settle_and_gives_no_numbers()
    {
        SettledState state = CirculationSimulator.Settle(CirculationParameters.Adult.With(AlveolarVentilationLPerMin, 0));
        Assert.False(state.Settled);
        Assert.Null(state.Summary);
        Assert.Null(state.Breath);
        Assert.Contains("did not come to rest", state.Reason, StringComparison.Ordinal);
        NotSettledException refused = Assert.Throws<NotSettledException>(state.RequireSummary);
        Assert.Equal(state.Reason, refused.Message);
    }
}
