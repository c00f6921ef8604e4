using Cavaxis.Blood.Oxygen;

namespace Cavaxis.Blood.Tests.Oxygen;

public class BloodConditionsTests
{
    [Fact]
    public void What_is_left_out_is_standard()
    {
        Assert.Equal(BloodConditions.Standard, new BloodConditions());
        Assert.Equal(new BloodConditions(7.2, 37, 5, 40), new BloodConditions(7.2));
    }

    [Fact]
    public void Standard_conditions_do_not_shift_the_curve() =>
        Assert.Equal(1, BloodConditions.Standard.VirtualPo2Factor);

    [Theory]
    [InlineData(double.NaN, 37, 5, 40, "pH")]
    [InlineData(6.4, 37, 5, 40, "pH")]
    [InlineData(8, 37, 5, 40, "pH")]
    [InlineData(7.4, double.PositiveInfinity, 5, 40, "temperatureC")]
    [InlineData(7.4, 9, 5, 40, "temperatureC")]
    [InlineData(7.4, 310, 5, 40, "temperatureC")]
    [InlineData(7.4, 37, -1, 40, "dpgMmolPerL")]
    [InlineData(7.4, 37, double.NaN, 40, "dpgMmolPerL")]
    [InlineData(7.4, 37, 5, 0, "pco2MmHg")]
    [InlineData(7.4, 37, 5, double.NegativeInfinity, "pco2MmHg")]
    public void A_value_out_of_range_is_refused_by_name(double pH, double temperature, double dpg, double pco2, string field) =>
        Fault.Names(field, () => _ = new BloodConditions(pH, temperature, dpg, pco2));

    [Fact]
    public void Conditions_that_no_constructor_made_are_refused()
    {
        Fault.Names("conditions", () => OxygenDissociation.SaturationAt(40, default));
        Fault.Names("conditions", () => OxygenDissociation.Po2At(0.5, default));
        Fault.Names("conditions", () => OxygenContent.FromPo2(15, 40, default, BloodConstants.Default));
        Fault.Names("conditions", () => OxygenContent.Po2At(15, 15, default, BloodConstants.Default));
    }

    [Theory]
    [InlineData(1.2, 0.0031, "huefnerMlPerG")]
    [InlineData(double.NaN, 0.0031, "huefnerMlPerG")]
    [InlineData(1.34, 0.03, "oxygenSolubilityMlPerDlPerMmHg")]
    [InlineData(1.34, double.NaN, "oxygenSolubilityMlPerDlPerMmHg")]
    public void Constants_out_of_range_are_refused_by_name(double huefner, double solubility, string field) =>
        Fault.Names(field, () => _ = new BloodConstants
        {
            HuefnerMlPerG = huefner,
            OxygenSolubilityMlPerDlPerMmHg = solubility,
        });

    [Fact]
    public void Every_constant_has_a_source()
    {
        Assert.NotEmpty(BloodConstants.Sources);
        Assert.NotEmpty(OxygenDissociation.Sources);
        Assert.All(BloodConstants.Sources, source => Assert.False(string.IsNullOrWhiteSpace(source.Citation)));
    }
}
