using Cavaxis.Blood.Oxygen;
using CsCheck;

namespace Cavaxis.Blood.Tests.Oxygen;

public class OxygenDissociationTests
{
    [Theory]
    [InlineData(10, 0.0965)]
    [InlineData(40, 0.7495)]
    [InlineData(60, 0.9058)]
    [InlineData(100, 0.9775)]
    [InlineData(300, 0.9991)]
    public void The_standard_curve_stays_within_the_published_equations_own_error(double po2, double saturation) =>
        Assert.Equal(saturation, OxygenDissociation.SaturationAt(po2, BloodConditions.Standard), 0.0055);

    [Fact]
    public void The_standard_curve_rises_everywhere_and_its_inverse_is_exact()
    {
        double before = 0;
        for (double ln = Math.Log(1e-3); ln < Math.Log(2900); ln += 0.01)
        {
            double po2 = Math.Exp(ln);
            double saturation = OxygenDissociation.SaturationAt(po2, BloodConditions.Standard);
            Assert.True(saturation > before, $"{po2}");
            before = saturation;
            if (saturation < 0.9995)
            {
                Assert.Equal(1, OxygenDissociation.Po2At(saturation, BloodConditions.Standard) / po2, 9);
            }
        }
    }

    [Fact]
    public void Blood_without_tension_is_without_oxygen()
    {
        Assert.Equal(0, OxygenDissociation.SaturationAt(0, BloodConditions.Standard));
        Assert.Equal(0, OxygenDissociation.Po2At(0, BloodConditions.Standard));
    }

    [Fact]
    public void Tension_to_saturation_and_back_is_exact() =>
        Gen.Select(Gen.Double[0.01, 700], BloodGen.Conditions).Sample((po2, conditions) =>
        {
            double saturation = OxygenDissociation.SaturationAt(po2, conditions);
            if (saturation <= OxygenDissociation.HighestSaturation)
            {
                double back = OxygenDissociation.Po2At(saturation, conditions);
                Assert.InRange(back / po2, 1 - 1e-9, 1 + 1e-9);
            }
        });

    [Fact]
    public void Saturation_to_tension_and_back_is_exact() =>
        Gen.Select(Gen.Double[0, 0.9995], BloodGen.Conditions).Sample((saturation, conditions) =>
        {
            double po2 = OxygenDissociation.Po2At(saturation, conditions);
            if (po2 <= OxygenDissociation.HighestPo2MmHg)
            {
                Assert.Equal(saturation, OxygenDissociation.SaturationAt(po2, conditions), 1e-12);
            }
        });

    [Fact]
    public void More_tension_never_lowers_the_saturation() =>
        Gen.Select(BloodGen.Po2, BloodGen.Po2, BloodGen.Conditions).Sample((a, b, conditions) =>
            Assert.True(OxygenDissociation.SaturationAt(Math.Min(a, b), conditions)
                <= OxygenDissociation.SaturationAt(Math.Max(a, b), conditions)));

    [Fact]
    public void Saturation_stays_between_nothing_and_one() =>
        Gen.Select(Gen.Double[0, OxygenDissociation.HighestPo2MmHg], BloodGen.Conditions).Sample((po2, conditions) =>
            Assert.InRange(OxygenDissociation.SaturationAt(po2, conditions), 0, 1));

    [Fact]
    public void Acid_warmth_carbon_dioxide_and_diphosphoglycerate_each_shift_the_curve_right() =>
        BloodGen.Conditions.Sample(c =>
        {
            double p50 = OxygenDissociation.P50MmHg(c);
            Assert.True(OxygenDissociation.P50MmHg(new(c.PH - 0.05, c.TemperatureC, c.DpgMmolPerL, c.Pco2MmHg)) > p50);
            Assert.True(OxygenDissociation.P50MmHg(new(c.PH, c.TemperatureC + 1, c.DpgMmolPerL, c.Pco2MmHg)) > p50);
            Assert.True(OxygenDissociation.P50MmHg(new(c.PH, c.TemperatureC, c.DpgMmolPerL + 1, c.Pco2MmHg)) > p50);
            Assert.True(OxygenDissociation.P50MmHg(new(c.PH, c.TemperatureC, c.DpgMmolPerL, c.Pco2MmHg + 5)) > p50);
        });

    [Fact]
    public void The_slope_used_by_the_root_finder_is_the_slope_of_the_curve() =>
        Gen.Double[1, 300].Sample(x =>
        {
            double h = 1e-4 * x;
            double numeric = (OxygenDissociation.StandardSaturation(x + h) - OxygenDissociation.StandardSaturation(x - h)) / (2 * h);
            Assert.Equal(numeric, OxygenDissociation.StandardSlope(x), 1e-9);
        });

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(-1e-9)]
    [InlineData(3001)]
    [InlineData(double.PositiveInfinity)]
    public void A_tension_out_of_range_is_refused(double po2) =>
        Fault.Names("po2MmHg", () => OxygenDissociation.SaturationAt(po2, BloodConditions.Standard));

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(-0.01)]
    [InlineData(1.0)]
    [InlineData(97.0)]
    public void A_saturation_without_a_tension_is_refused(double saturation) =>
        Fault.Names("saturation", () => OxygenDissociation.Po2At(saturation, BloodConditions.Standard));
}
