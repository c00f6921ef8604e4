using Cavaxis.Devices.Hydraulics;
using Cavaxis.Quantities.Faults;
using CsCheck;

namespace Cavaxis.Devices.Tests.Hydraulics;

public class SingleLossTests
{
    private static readonly Fluid Blood = new(1060, 3e-3);

    [Fact]
    public void A_step_contraction_has_the_handbook_coefficient() =>
        Assert.Equal(0.2777777, LossCoefficient.Contraction(4.0 / 9, 180), 1e-6);

    [Fact]
    public void A_step_expansion_is_that_of_borda_and_carnot() =>
        Assert.Equal(0.5625, LossCoefficient.Expansion(0.25, 180), 1e-12);

    [Fact]
    public void A_transition_between_equal_bores_costs_nothing()
    {
        Assert.Equal(0, LossCoefficient.Contraction(1, 20));
        Assert.Equal(0, LossCoefficient.Expansion(1, 20));
    }

    [Fact]
    public void A_gentler_cone_never_costs_more_than_a_step() =>
        Gen.Select(Gen.Double[0, 1], Gen.Double[0, 45]).Sample((ratio, angle) =>
        {
            Assert.True(LossCoefficient.Contraction(ratio, angle) <= LossCoefficient.Contraction(ratio, 180));
            Assert.True(LossCoefficient.Expansion(ratio, angle) <= LossCoefficient.Expansion(ratio, 180));
        });

    [Theory]
    [InlineData(-0.1, 20)]
    [InlineData(1.1, 20)]
    [InlineData(double.NaN, 20)]
    [InlineData(0.5, -1)]
    [InlineData(0.5, 181)]
    public void Unusable_transitions_are_refused(double ratio, double angle)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => LossCoefficient.Contraction(ratio, angle));
        Assert.Throws<ArgumentOutOfRangeException>(() => LossCoefficient.Expansion(ratio, angle));
    }

    [Fact]
    public void A_fast_hole_obeys_the_orifice_equation()
    {
        // Q = Cd A √(2ΔP/ρ) with Cd 0.62: at 100 mmHg the viscous part is below a percent.
        double velocity = Orifice.VelocityMPerS(13332.2, 3e-3, new Fluid(998, 1e-3));
        Assert.Equal(0.62 * Math.Sqrt(2 * 13332.2 / 998), velocity, 0.01);
    }

    [Fact]
    public void A_creeping_hole_obeys_sampson()
    {
        // ΔP = 3 μ Q / r³, Q = π r² v.
        const double Radius = 0.5e-3;
        double velocity = 1e-9;
        double flow = Math.PI * Radius * Radius * velocity;
        Assert.Equal(3 * 3e-3 * flow / Math.Pow(Radius, 3), Orifice.DropPa(velocity, 2 * Radius, Blood), 1e-12);
    }

    [Fact]
    public void Velocity_and_drop_of_a_hole_are_inverse() =>
        Gen.Select(Gen.Double[1e-6, 10], Gen.Double[3e-4, 1e-2], Gen.Double[5e-4, 2e-2]).Sample((v, d, mu) =>
        {
            Fluid fluid = new(1050, mu);
            Assert.Equal(1, Orifice.VelocityMPerS(Orifice.DropPa(v, d, fluid), d, fluid) / v, 1e-9);
        });

    [Theory]
    [InlineData(10, 999.73, 1.307)]
    [InlineData(20, 998.23, 1.002)]
    [InlineData(30, 995.68, 0.797)]
    [InlineData(37, 993.36, 0.6925)]
    [InlineData(40, 992.2, 0.653)]
    public void Water_has_the_density_and_viscosity_of_printed_tables(double celsius, double density, double milliPascalSeconds)
    {
        Fluid water = Water.At(celsius);
        Assert.Equal(density, water.DensityKgPerM3, 0.1);
        Assert.InRange(water.ViscosityPaS * 1000, milliPascalSeconds * 0.997, milliPascalSeconds * 1.003);
    }

    [Theory]
    [InlineData(4.9)]
    [InlineData(45.1)]
    [InlineData(double.NaN)]
    public void Water_outside_its_range_is_refused(double celsius) =>
        Assert.Equal(FaultCode.OutOfRange, Assert.Throws<InputFaultException>(() => Water.At(celsius)).Faults[0].Code);
}
