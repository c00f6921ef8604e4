using Cavaxis.Devices.Catalogue;
using Cavaxis.Devices.Circuit;
using Cavaxis.Devices.Hydraulics;
using Cavaxis.Devices.MembraneLungs;
using Cavaxis.Devices.Pumps;
using Cavaxis.Devices.Wires;
using Cavaxis.Quantities.Faults;
using CsCheck;

namespace Cavaxis.Devices.Tests.Circuit;

public class CircuitTests
{
    private static readonly Fluid Blood = new(1060, 3e-3);
    private static readonly CentrifugalPump Pump = DeviceCatalogue.BuiltIn.FindPump("pump-centrifugal-adult")!;
    private static readonly MembraneLung Lung = DeviceCatalogue.BuiltIn.FindMembraneLung("lung-adult")!;

    [Fact]
    public void The_pump_obeys_the_affinity_laws() =>
        Gen.Select(Gen.Double[1000, 4500], Gen.Double[0, 5], Gen.Double[0.3, 2]).Sample((speed, flow, ratio) =>
            Assert.Equal(Pump.HeadMmHg(speed, flow) * ratio * ratio, Pump.HeadMmHg(speed * ratio, flow * ratio), 1e-6));

    [Fact]
    public void The_speed_for_a_head_gives_that_head() =>
        Gen.Select(Gen.Double[0, 8], Gen.Double[1, 600]).Sample((flow, head) =>
            Assert.Equal(head, Pump.HeadMmHg(Pump.SpeedFor(flow, head), flow), 1e-6));

    [Fact]
    public void More_flow_or_more_head_never_needs_less_speed() =>
        Gen.Select(Gen.Double[0, 7], Gen.Double[1, 500], Gen.Double[0, 1], Gen.Double[0, 100]).Sample((flow, head, more, higher) =>
            Assert.True(Pump.SpeedFor(flow + more, head + higher) >= Pump.SpeedFor(flow, head) - 1e-9));

    [Fact]
    public void The_pump_knows_its_field_and_its_inlet_limit()
    {
        Assert.True(Pump.CanRunAt(3000, 4));
        Assert.False(Pump.CanRunAt(6000, 4));
        Assert.False(Pump.CanRunAt(3000, 9));
        Assert.Equal(40, Pump.InletMarginMmHg(-60), 1e-12);
        Assert.True(Pump.InletMarginMmHg(-130) < 0);
    }

    [Theory]
    [InlineData(-1, 100)]
    [InlineData(4, -1)]
    [InlineData(double.NaN, 100)]
    [InlineData(4, double.NaN)]
    public void Impossible_pump_points_are_refused(double flow, double head) =>
        Assert.Throws<InputFaultException>(() => Pump.SpeedFor(flow, head));

    [Fact]
    public void At_rated_flow_the_rating_blood_leaves_with_its_rating_saturation()
    {
        OxygenTransfer rated = Lung.Oxygen(Lung.RatedFlowLPerMin, 12, 0.75, 1);
        Assert.Equal(0.95, rated.OutletSaturation, 1e-12);
        // 1.34 × 12 g/dL × 0.20 = 3.2 mL/dL.
        Assert.Equal(Lung.RatedFlowLPerMin * 32.16, rated.MlPerMin, 1e-9);
    }

    [Fact]
    public void Oxygen_transfer_lies_between_nothing_and_full_saturation_and_grows_with_oxygen() =>
        Gen.Select(Gen.Double[0.1, 10], Gen.Double[5, 18], Gen.Double[0, 1], Gen.Double[0.21, 0.99]).Sample((flow, hb, inlet, fraction) =>
        {
            OxygenTransfer transfer = Lung.Oxygen(flow, hb, inlet, fraction);
            Assert.InRange(transfer.MlPerMin, 0, transfer.CeilingMlPerMin);
            Assert.InRange(transfer.OutletSaturation, inlet, 1);
            Assert.True(Lung.Oxygen(flow, hb, inlet, fraction + 0.01).MlPerMin >= transfer.MlPerMin);
        });

    [Fact]
    public void More_blood_flow_never_transfers_less_oxygen_and_never_leaves_better_saturated() =>
        Gen.Select(Gen.Double[0.2, 10], Gen.Double[1, 1.5], Gen.Double[0, 0.95]).Sample((flow, more, inlet) =>
        {
            OxygenTransfer less = Lung.Oxygen(flow, 10, inlet, 1);
            OxygenTransfer greater = Lung.Oxygen(flow * more, 10, inlet, 1);
            Assert.True(greater.MlPerMin >= less.MlPerMin - 1e-9);
            Assert.True(greater.OutletSaturation <= less.OutletSaturation + 1e-12);
        });

    [Fact]
    public void Sweep_and_carbon_dioxide_removal_are_inverse() =>
        Gen.Select(Gen.Double[10, 500], Gen.Double[25, 80]).Sample((removal, pco2) =>
        {
            if (Lung.SweepFor(removal, pco2) is double sweep)
            {
                Assert.Equal(removal, Lung.CarbonDioxideMlPerMin(sweep, pco2), 1e-6);
            }
            else
            {
                Assert.True(Lung.CarbonDioxideMlPerMin(20, pco2) < removal);
            }
        });

    [Fact]
    public void A_perfect_membrane_needs_the_sweep_of_the_alveolar_equation()
    {
        // V = VCO2 × 713 / PCO2 at standard conditions, times 293.15/273.15 as metered.
        MembraneLung perfect = Lung with { CarbonDioxideConductance = 1e12 };
        Assert.Equal(200 * 713.0 / 45 / 1000 * 293.15 / 273.15, perfect.SweepFor(200, 45)!.Value, 1e-6);
    }

    [Fact]
    public void No_carbon_dioxide_needs_no_sweep_and_too_much_has_none()
    {
        Assert.Equal(0, Lung.SweepFor(0, 40));
        Assert.Null(Lung.SweepFor(1000, 10));
    }

    [Fact]
    public void The_drop_of_the_lung_rises_with_flow_and_viscosity() =>
        Gen.Select(Gen.Double[0, 7], Gen.Double[0.01, 1], Gen.Double[1, 3]).Sample((flow, more, thicker) =>
        {
            Assert.True(Lung.DropPa(flow + more, Blood) > Lung.DropPa(flow, Blood));
            Assert.True(Lung.DropPa(flow, Blood with { ViscosityPaS = 3e-3 * thicker }) >= Lung.DropPa(flow, Blood));
        });

    [Theory]
    [InlineData(0, 12, 0.7, 1)]
    [InlineData(5, 0, 0.7, 1)]
    [InlineData(5, 12, 1.2, 1)]
    [InlineData(5, 12, 0.7, 0.1)]
    [InlineData(5, double.NaN, 0.7, 1)]
    public void Impossible_lung_states_are_refused(double flow, double hb, double inlet, double oxygen) =>
        Assert.Throws<InputFaultException>(() => Lung.Oxygen(flow, hb, inlet, oxygen));

    [Fact]
    public void Tubing_loses_in_proportion_to_its_length_and_nothing_at_rest()
    {
        Tubing metre = new(Tubing.ThreeEighthsInchMm, 1);
        Assert.Equal(2.5 * metre.DropPa(4, Blood), (metre with { LengthM = 2.5 }).DropPa(4, Blood), 1e-9);
        Assert.Equal(0, metre.DropPa(0, Blood));
        Assert.True(new Tubing(Tubing.QuarterInchMm, 1).DropPa(4, Blood) > 5 * metre.DropPa(4, Blood));
    }

    [Theory]
    [InlineData(0, 1, 4)]
    [InlineData(9.5, -1, 4)]
    [InlineData(9.5, 1, double.NaN)]
    public void Impossible_tubing_is_refused(double diameter, double length, double flow) =>
        Assert.Throws<InputFaultException>(() => new Tubing(diameter, length).DropPa(flow, Blood));

    [Theory]
    [InlineData(17, 521)]
    [InlineData(60.3, 1849)]
    [InlineData(158.4, 4857)]
    public void The_stiffness_of_a_wire_is_modulus_times_second_moment(double modulusGPa, double stiffnessNMm2)
    {
        GuideWire wire = DeviceCatalogue.BuiltIn.Wires[0] with { LowFlexuralModulusGPa = modulusGPa, HighFlexuralModulusGPa = modulusGPa };
        Assert.Equal(stiffnessNMm2, wire.BodyStiffness.LowNMm2, 1.0);
        Assert.Equal(0.03066, wire.SecondMomentMm4, 1e-5);
    }
}
