using UnitsNet;

namespace Cavaxis.Quantities.Tests;

/// <summary>Factors against a general-purpose unit library and against their definitions.</summary>
public class UnitFactorTests
{
    [Fact]
    public void A_millimetre_of_mercury_is_the_conventional_one()
    {
        // ISO 80000-4: 13 595.1 kg/m³ · 9.80665 m/s² · 1 mm.
        Assert.Equal(UnitFactors.PascalsPerMmHg, 13595.1 * 9.80665 * 1e-3, 6);
        Assert.Equal(UnitFactors.PascalsPerMmHg, Pressure.FromMillimetersOfMercury(1).Pascals, 3);
    }

    [Fact]
    public void A_litre_a_minute_is_a_sixty_thousandth_of_a_cubic_metre_a_second()
    {
        Assert.Equal(UnitFactors.CubicMetresPerSecondPerLPerMin, 1 / 60000.0, 15);
        Assert.Equal(
            UnitFactors.CubicMetresPerSecondPerLPerMin, VolumeFlow.FromLitersPerMinute(1).CubicMetersPerSecond, 12);
    }

    [Theory]
    [InlineData(3, 1)]
    [InlineData(21, 7)]
    [InlineData(31, 10.3333333333)]
    public void A_French_is_a_third_of_a_millimetre(double french, double mm) =>
        Assert.Equal(mm, french * UnitFactors.MillimetresPerFrench, 9);

    [Fact]
    public void A_millimetre_is_a_thousandth_of_a_metre() =>
        Assert.Equal(UnitFactors.MetresPerMm, Length.FromMillimeters(1).Meters, 15);
}
