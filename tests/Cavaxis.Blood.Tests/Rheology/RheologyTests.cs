using Cavaxis.Blood.Rheology;
using CsCheck;

namespace Cavaxis.Blood.Tests.Rheology;

public class RheologyTests
{
    private static readonly Gen<double> Haematocrit = Gen.Double[0, 0.70];
    private static readonly Gen<double> Temperature = Gen.Double[15, 41];

    [Fact]
    public void Viscosity_rises_with_haematocrit() =>
        Gen.Select(Haematocrit, Temperature).Sample((h, t) =>
            Assert.True(BloodViscosity.PascalSeconds(h + 0.01, t) > BloodViscosity.PascalSeconds(h, t)));

    [Fact]
    public void Viscosity_falls_with_warming() =>
        Gen.Select(Haematocrit, Temperature).Sample((h, t) =>
            Assert.True(BloodViscosity.PascalSeconds(h, t + 1) < BloodViscosity.PascalSeconds(h, t)));

    [Fact]
    public void Plasma_is_thicker_than_water() =>
        Temperature.Sample(t =>
            Assert.True(BloodViscosity.PascalSeconds(0, t) > WaterProperties.ViscosityPascalSeconds(t)));

    [Fact]
    public void Microvascular_viscosity_rises_with_haematocrit_at_every_width() =>
        Gen.Select(Haematocrit, Gen.Double[3.5, 2000]).Sample((h, d) =>
            Assert.True(MicrovascularViscosity.Relative(h + 0.01, d) > MicrovascularViscosity.Relative(h, d)));

    [Fact]
    public void Cell_free_fluid_is_plasma_at_every_width() =>
        Gen.Double[3, 2000].Sample(d => Assert.Equal(1, MicrovascularViscosity.Relative(0, d), 1e-12));

    [Fact]
    public void Microvascular_viscosity_is_smooth_where_the_published_quotient_is_nothing_over_nothing()
    {
        // The exponent passes through zero between 9 and 12 µm.
        double before = MicrovascularViscosity.Relative(0.6, 9);
        for (double d = 9.0001; d < 12; d += 0.0001)
        {
            double now = MicrovascularViscosity.Relative(0.6, d);
            Assert.InRange(Math.Abs(now - before), 0, 1e-3);
            before = now;
        }
    }

    [Fact]
    public void Microvascular_viscosity_scales_with_the_plasma_at_the_temperature() =>
        Assert.Equal(
            BloodViscosity.PascalSeconds(0, 30) * MicrovascularViscosity.Relative(0.4, 50),
            MicrovascularViscosity.PascalSeconds(0.4, 50, 30),
            1e-15);

    [Fact]
    public void Density_rises_with_haematocrit_and_falls_with_warming() =>
        Gen.Select(Haematocrit, Temperature).Sample((h, t) =>
        {
            Assert.True(BloodDensity.KgPerM3(h + 0.01, t) > BloodDensity.KgPerM3(h, t));
            Assert.True(BloodDensity.KgPerM3(h, t + 1) < BloodDensity.KgPerM3(h, t));
        });

    [Fact]
    public void Water_thins_and_lightens_with_warming_above_four_degrees() =>
        Gen.Double[5, 99].Sample(t =>
        {
            Assert.True(WaterProperties.ViscosityPascalSeconds(t + 1) < WaterProperties.ViscosityPascalSeconds(t));
            Assert.True(WaterProperties.DensityKgPerM3(t + 1) < WaterProperties.DensityKgPerM3(t));
        });

    [Theory]
    [InlineData(double.NaN, 37, "haematocrit")]
    [InlineData(40, 37, "haematocrit")]
    [InlineData(-0.1, 37, "haematocrit")]
    [InlineData(0.4, double.NaN, "temperatureC")]
    [InlineData(0.4, 310, "temperatureC")]
    public void An_input_out_of_range_is_refused_by_name(double haematocrit, double temperature, string field)
    {
        Fault.Names(field, () => BloodViscosity.PascalSeconds(haematocrit, temperature));
        Fault.Names(field, () => BloodDensity.KgPerM3(haematocrit, temperature));
        Fault.Names(field, () => MicrovascularViscosity.PascalSeconds(haematocrit, 50, temperature));
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(2.9)]
    [InlineData(2001)]
    public void A_width_out_of_range_is_refused(double diameter) =>
        Fault.Names("diameterMicrometre", () => MicrovascularViscosity.Relative(0.4, diameter));

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(-1)]
    [InlineData(101)]
    public void A_water_temperature_out_of_range_is_refused(double temperature)
    {
        Fault.Names("temperatureC", () => WaterProperties.DensityKgPerM3(temperature));
        Fault.Names("temperatureC", () => WaterProperties.ViscosityPascalSeconds(temperature));
    }
}
