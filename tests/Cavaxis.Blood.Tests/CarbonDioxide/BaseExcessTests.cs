using Cavaxis.Blood.CarbonDioxide;
using Cavaxis.Quantities.Faults;
using CsCheck;

namespace Cavaxis.Blood.Tests.CarbonDioxide;

public class BaseExcessTests
{
    private static readonly Gen<(double PH, double Pco2, double Hb, double S)> Blood =
        Gen.Select(Gen.Double[7.0, 7.6], Gen.Double[20, 90], Gen.Double[5, 20], Gen.Double[0, 1]);

    [Fact]
    public void Standard_blood_has_almost_no_base_excess() =>
        Assert.InRange(BaseExcess.MmolPerL(7.4, 40, 15, 1), -0.5, 0.5);

    [Fact]
    public void Base_excess_to_tension_and_back_is_exact() =>
        Blood.Where(InRange).Sample(b =>
            Assert.Equal(b.Pco2, BaseExcess.Pco2At(b.PH, BaseExcess.MmolPerL(b.PH, b.Pco2, b.Hb, b.S), b.Hb, b.S), 1e-9));

    [Fact]
    public void Base_excess_to_acidity_and_back_is_exact() =>
        Blood.Where(InRange).Sample(b =>
            Assert.Equal(b.PH, BaseExcess.PhAt(b.Pco2, BaseExcess.MmolPerL(b.PH, b.Pco2, b.Hb, b.S), b.Hb, b.S), 1e-9));

    [Fact]
    public void Content_gives_back_the_state_it_came_from() =>
        Blood.Where(InRange).Sample(b =>
        {
            double excess = BaseExcess.MmolPerL(b.PH, b.Pco2, b.Hb, b.S);
            AcidBaseState state = BaseExcess.AtContent(
                CarbonDioxideContent.MlPerDl(b.Pco2, b.PH, b.Hb, b.S, 37), excess, b.Hb, b.S);
            Assert.Equal(b.PH, state.PH, 1e-9);
            Assert.InRange(state.Pco2MmHg / b.Pco2, 1 - 1e-9, 1 + 1e-9);
        });

    [Fact]
    public void Taking_carbon_dioxide_out_raises_the_acidity_scale_and_lowers_the_tension() =>
        Blood.Where(b => InRange(b) && b.PH < 7.4).Sample(b =>
        {
            double excess = BaseExcess.MmolPerL(b.PH, b.Pco2, b.Hb, b.S);
            double content = CarbonDioxideContent.MlPerDl(b.Pco2, b.PH, b.Hb, b.S, 37);
            AcidBaseState less = BaseExcess.AtContent(0.97 * content, excess, b.Hb, b.S);
            Assert.True(less.PH > b.PH);
            Assert.True(less.Pco2MmHg < b.Pco2);
        });

    [Fact]
    public void A_content_that_belongs_to_no_acidity_in_range_is_refused() =>
        Assert.Equal(
            FaultCode.Contradiction,
            Assert.Single(Assert.Throws<InputFaultException>(() => BaseExcess.AtContent(199, -30, 15, 1)).Faults).Code);

    [Theory]
    [InlineData(double.NaN, 0, 15, 1, "pco2MmHg")]
    [InlineData(40, 31, 15, 1, "baseExcessMmolPerL")]
    [InlineData(40, double.NaN, 15, 1, "baseExcessMmolPerL")]
    [InlineData(40, 0, -1, 1, "haemoglobinGPerDl")]
    [InlineData(40, 0, 15, 1.1, "saturation")]
    public void An_input_out_of_range_is_refused_by_name(
        double pco2, double excess, double hb, double saturation, string field) =>
        Fault.Names(field, () => BaseExcess.PhAt(pco2, excess, hb, saturation));

    private static bool InRange((double PH, double Pco2, double Hb, double S) b) =>
        Math.Abs(BaseExcess.MmolPerL(b.PH, b.Pco2, b.Hb, b.S)) <= 29;
}
