using Cavaxis.Blood.CarbonDioxide;
using CsCheck;

namespace Cavaxis.Blood.Tests.CarbonDioxide;

public class CarbonDioxideContentTests
{
    private static readonly Gen<double> Acidity = Gen.Double[6.8, 7.65];

    [Fact]
    public void Content_to_tension_and_back_is_exact() =>
        Gen.Select(Gen.Double[5, 150], Acidity, Gen.Double[0, 25], Gen.Double[0, 1], Gen.Double[15, 42])
            .Where((pco2, pH, hb, s, t) => CarbonDioxideContent.MlPerDl(pco2, pH, hb, s, t) < 200)
            .Sample((pco2, pH, hb, s, t) =>
            {
                double content = CarbonDioxideContent.MlPerDl(pco2, pH, hb, s, t);
                Assert.InRange(CarbonDioxideContent.Pco2At(content, pH, hb, s, t) / pco2, 1 - 1e-9, 1 + 1e-9);
            });

    [Fact]
    public void Deoxygenated_blood_carries_more_at_the_same_tension() =>
        Gen.Select(Gen.Double[10, 100], Acidity, Gen.Double[1, 25], Gen.Double[0, 0.9], Gen.Double[30, 40])
            .Sample((pco2, pH, hb, s, t) => Assert.True(
                CarbonDioxideContent.MlPerDl(pco2, pH, hb, s, t) > CarbonDioxideContent.MlPerDl(pco2, pH, hb, s + 0.1, t)));

    [Fact]
    public void Whole_blood_never_carries_more_than_its_plasma_alone_would() =>
        Gen.Select(Gen.Double[10, 100], Acidity, Gen.Double[0, 25], Gen.Double[0, 1], Gen.Double[30, 40])
            .Sample((pco2, pH, hb, s, t) => Assert.InRange(
                CarbonDioxideContent.MlPerDl(pco2, pH, hb, s, t), 0, CarbonDioxideContent.PlasmaMlPerDl(pco2, pH, t)));

    [Fact]
    public void Cold_plasma_dissolves_more() =>
        Gen.Double[15, 41].Sample(t => Assert.True(
            CarbonDioxideContent.SolubilityMmolPerLPerMmHg(t) > CarbonDioxideContent.SolubilityMmolPerLPerMmHg(t + 1)));

    [Theory]
    [InlineData(double.NaN, 7.4, 15, 0.9, 37, "pco2MmHg")]
    [InlineData(-1, 7.4, 15, 0.9, 37, "pco2MmHg")]
    [InlineData(40, 6.4, 15, 0.9, 37, "pH")]
    [InlineData(40, double.NaN, 15, 0.9, 37, "pH")]
    [InlineData(40, 7.4, 26, 0.9, 37, "haemoglobinGPerDl")]
    [InlineData(40, 7.4, 15, 90, 37, "saturation")]
    [InlineData(40, 7.4, 15, 0.9, double.NaN, "temperatureC")]
    public void An_input_out_of_range_is_refused_by_name(
        double pco2, double pH, double hb, double saturation, double temperature, string field) =>
        Fault.Names(field, () => CarbonDioxideContent.MlPerDl(pco2, pH, hb, saturation, temperature));

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(-1)]
    [InlineData(201)]
    public void A_content_out_of_range_is_refused(double content) =>
        Fault.Names("carbonDioxideContentMlPerDl", () => CarbonDioxideContent.Pco2At(content, 7.4, 15, 0.9, 37));
}
