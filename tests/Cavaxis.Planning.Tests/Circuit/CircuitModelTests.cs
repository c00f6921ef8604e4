using Cavaxis.Devices.Cannulae;
using Cavaxis.Devices.Catalogue;
using Cavaxis.Devices.Hydraulics;
using Cavaxis.Planning.Case;
using Cavaxis.Planning.Circuit;
using Cavaxis.Planning.Needs;
using Cavaxis.Planning.Rules;
using Cavaxis.Quantities;

namespace Cavaxis.Planning.Tests.Circuit;

public class CircuitModelTests
{
    private static readonly PatientReading Reading = new(Cases.Bare with
    {
        Heart = new HeartSection { CentralVenousPressureMmHg = Cases.Measured(10, 2), MeanArterialPressureMmHg = Cases.Measured(70, 5) },
    });

    private static readonly Fluid Blood = new(Reading.DensityKgPerM3, Reading.Picture.BloodViscosityMPaS.Value * 1e-3);

    [Fact]
    public void The_inlet_is_the_venous_pressure_less_cannula_and_tubing()
    {
        CircuitModel circuit = At(4);
        Assert.Equal(10 - 60 - circuit.TubingDropMmHg(4), circuit.InletMmHg(4, 60), 9);
        Assert.True(circuit.TubingDropMmHg(4) > 0);
    }

    [Fact]
    public void The_return_is_the_arterial_or_venous_pressure_plus_cannula_and_tubing_and_the_higher_branch_rules()
    {
        CircuitModel circuit = At(4);
        double tubing = circuit.TubingDropMmHg(4);
        Assert.Equal(70 + 100 + tubing, circuit.ReturnMmHg(4, 100, null), 9);
        Assert.Equal(10 + 100 + tubing, circuit.ReturnMmHg(4, null, 100), 9);
        Assert.Equal(70 + 100 + tubing, circuit.ReturnMmHg(4, 100, 150), 9);
        Assert.Equal(10 + 170 + tubing, circuit.ReturnMmHg(4, 100, 170), 9);
    }

    [Theory]
    [InlineData(-100, 300, true)]
    [InlineData(-100.1, 300, false)]
    [InlineData(-100, 300.1, false)]
    [InlineData(-50, 200, true)]
    public void Both_limits_must_hold(double inlet, double back, bool within) => Assert.Equal(within, At(4).WithinLimits(inlet, back));

    [Fact]
    public void The_speed_is_null_where_the_pump_cannot_give_the_head_and_rises_with_it_where_it_can()
    {
        CircuitModel circuit = At(4);
        Assert.Null(circuit.SpeedPerMin(4, -100, 5000));
        Assert.Null(circuit.SpeedPerMin(4, 600, 0));
        double before = 0;
        for (double back = 100; back <= 300; back += 50)
        {
            double speed = Assert.NotNull(circuit.SpeedPerMin(4, -60, back));
            Assert.True(speed > before);
            before = speed;
        }
    }

    [Fact]
    public void The_speed_gives_back_the_head_on_the_pumps_own_curve()
    {
        CircuitModel circuit = At(4);
        double speed = circuit.SpeedPerMin(4, -60, 200)!.Value;
        double lung = circuit.Lung.DropPa(4, Blood) / UnitFactors.PascalsPerMmHg;
        Assert.Equal(200 + lung + 60, circuit.Pump.HeadMmHg(speed, 4), 6);
    }

    [Theory]
    [InlineData(0.3)]
    [InlineData(1)]
    [InlineData(3)]
    [InlineData(7)]
    public void Lung_and_pump_are_the_smallest_that_suffice(double flow)
    {
        CircuitModel circuit = At(flow);
        double[] lungs = [.. DeviceCatalogue.BuiltIn.MembraneLungs.Select(lung => lung.RatedFlowLPerMin).Where(rated => rated >= flow)];
        Assert.Equal(lungs.Min(), circuit.Lung.RatedFlowLPerMin);
        double[] pumps = [.. DeviceCatalogue.BuiltIn.Pumps.Select(pump => pump.HighestFlowLPerMin).Where(most => most >= flow)];
        Assert.Equal(pumps.Min(), circuit.Pump.HighestFlowLPerMin);
    }

    [Fact]
    public void Beyond_every_lung_the_largest_is_taken()
    {
        double most = DeviceCatalogue.BuiltIn.MembraneLungs.Max(lung => lung.RatedFlowLPerMin);
        Assert.Equal(most, At(most + 1).Lung.RatedFlowLPerMin);
    }

    [Theory]
    [InlineData("drain-multi-25fr-55cm", LumenPurpose.Drainage)]
    [InlineData("return-arterial-15fr-16cm", LumenPurpose.Return)]
    [InlineData("bicaval-27fr-29cm", LumenPurpose.Return)]
    [InlineData("distal-6fr-9cm", LumenPurpose.Return)]
    public void The_table_follows_the_hydraulics_within_a_percent_or_half_a_mmHg_and_never_falls(string device, LumenPurpose purpose)
    {
        Cannula cannula = DeviceCatalogue.BuiltIn.Cannula(device);
        PressureTable table = new(cannula, purpose, Blood);
        double before = 0;
        for (double flow = 0.06; flow < 8.9; flow += 0.37)
        {
            double exact = CannulaHydraulics.At(cannula, purpose, flow, Blood).PressureDropPa / UnitFactors.PascalsPerMmHg;
            double tabulated = table.DropMmHg(flow);
            Assert.Equal(exact, tabulated, Math.Max(0.5, 0.01 * exact));
            Assert.True(tabulated > before);
            before = tabulated;
        }
    }

    private static CircuitModel At(double flow) => new(flow, DeviceCatalogue.BuiltIn, Blood, Reading.Picture, RuleBookReader.BuiltIn);
}
