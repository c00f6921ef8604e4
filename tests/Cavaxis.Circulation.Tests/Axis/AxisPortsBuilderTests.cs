using Cavaxis.Circulation.Axis;
using Cavaxis.Circulation.Parameters;
using Cavaxis.Circulation.Signals;
using Cavaxis.Circulation.Simulation;
using Cavaxis.Quantities.Faults;
using static Cavaxis.Circulation.Parameters.CirculationParameter;

namespace Cavaxis.Circulation.Tests.Axis;

public class AxisPortsBuilderTests
{
    private static readonly AxisGrid Adult = AxisGrid.Of(-65, 45, 85, 105, 190, 290);

    [Theory]
    [InlineData(JetDirection.TowardsFeet)]
    [InlineData(JetDirection.TowardsHead)]
    [InlineData(JetDirection.TowardsTricuspid)]
    public void Moving_a_cannula_by_a_tenth_of_a_millimetre_never_makes_a_share_jump(JetDirection direction)
    {
        AxisPorts before = Ports(-80, direction, 0);
        for (double z = -79.9; z < 180; z += 0.1)
        {
            AxisPorts now = Ports(z, direction, 0);
            for (int i = 0; i < AxisPorts.CellCount; i++)
            {
                Assert.InRange(Math.Abs(now.VenousReturn[i] - before.VenousReturn[i]), 0, 0.02);
                Assert.InRange(Math.Abs(now.Drainage[i] - before.Drainage[i]), 0, 0.02);
            }

            before = now;
        }
    }

    [Fact]
    public void Turning_the_port_is_forgiven_for_thirty_degrees_and_then_costs_the_way_to_the_valve()
    {
        double At(double turn) => Ports(45, JetDirection.TowardsTricuspid, turn).VenousReturn[(int)AxisCell.Vestibule];
        Assert.InRange(At(0) - At(30), 0, 0.1);
        Assert.True(At(60) < At(30));
        Assert.Equal(0, At(120));
        Assert.Equal(At(40), At(-40));
    }

    [Fact]
    public void Drainage_without_any_share_is_refused()
    {
        InputFaultException fault = Assert.Throws<InputFaultException>(
            () => AxisPortsBuilder.Of(Adult, [new DrainageSite(0, 5, 0)], new ReturnSite(45, JetDirection.TowardsFeet, 0, 5, 25, 18)));
        Assert.Contains("drainage", fault.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void More_flow_less_blood_and_a_turned_port_recirculate_more_and_breathing_shows()
    {
        CirculationParameters aimed = Patient(4, 0);
        IReadOnlyList<SettledState> s = CirculationSimulator.Settle(
            [aimed, Patient(2.5, 0), Patient(4, 180), aimed.Times(BloodVolumeMl, 0.85), aimed.With(PleuralSwingMmHg, -8)]);
        double R(int i) => s[i].Summary![CirculationQuantity.RecirculationPercent];
        double Swing(int i) => s[i].Summary![CirculationQuantity.PreMembraneSwingPercent];
        Assert.True(R(0) > R(1), "flow");
        Assert.True(R(2) > R(0), "turn");
        Assert.True(R(3) > R(0), "blood loss");
        Assert.True(Swing(0) > 0, "breath");
        Assert.True(Swing(4) > Swing(0), "deeper breath");
    }

    private static CirculationParameters Patient(double flow, double turn) => CirculationParameters.Adult
        .With((CircuitOn, 1), (ArterialShareOfReturn, 0), (ShuntFraction, 0.6), (TargetFlowLPerMin, flow))
        .With(Ports(45, JetDirection.TowardsTricuspid, turn));

    private static AxisPorts Ports(double z, JetDirection direction, double turn) => AxisPortsBuilder.Of(
        Adult, [new DrainageSite(z - 76, 30, 0.4), new DrainageSite(z + 72, 16, 0.6)], new ReturnSite(z, direction, turn, 7, 25, 18));
}
