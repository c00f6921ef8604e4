using System.Text.Json.Nodes;
using Cavaxis.Web.Entry;
using UnitsNet;

namespace Cavaxis.Web.Tests.Entry;

public class TypedNumberTests
{
    [Theory]
    [InlineData("18.2", "18.2")]
    [InlineData(" 18,2 ", "18.2")]
    [InlineData("-5", "-5")]
    [InlineData("?", "\"unknown\"")]
    [InlineData("Unknown", "\"unknown\"")]
    [InlineData("not known", "\"unknown\"")]
    [InlineData("abc", "\"abc\"")]
    [InlineData("1.2.3", "\"1.2.3\"")]
    [InlineData("1,000,000", "\"1,000,000\"")]
    [InlineData("1e999", "\"1e999\"")]
    [InlineData("18 furlong", "\"18 furlong\"")]
    [InlineData("18.2 ± 0.7", "{\"value\":18.2,\"sd\":0.7}")]
    [InlineData("18.2+-0.7 mm", "{\"value\":18.2,\"sd\":0.7}")]
    [InlineData("1.82 ± 0.07 cm", "{\"value\":18.2,\"sd\":0.7}")]
    public void What_is_typed_becomes_what_is_saved(string text, string saved) =>
        Assert.Equal(saved, TypedNumber.Read(text, "mm", withError: true)!.ToJsonString());

    [Theory]
    [InlineData("")]
    [InlineData("   ")]
    public void An_empty_field_saves_nothing(string text) => Assert.Null(TypedNumber.Read(text, "mm", withError: true));

    [Fact]
    public void A_field_without_error_hands_an_error_on_to_the_reader_as_text() =>
        Assert.Equal("\"80 ± 3\"", TypedNumber.Read("80 ± 3", "kg", withError: false)!.ToJsonString(Cavaxis.Planning.Json.CavaxisJson.Options));

    // The factors are held against a units library.
    [Fact]
    public void Another_unit_is_carried_over_to_that_of_the_field()
    {
        AssertNear(Length.FromCentimeters(12.3).Millimeters, "12.3 cm", "mm");
        AssertNear(Length.FromMeters(1.82).Centimeters, "1.82 m", "cm");
        AssertNear(Mass.FromGrams(3400).Kilograms, "3400 g", "kg");
        AssertNear(Pressure.FromKilopascals(9.2).MillimetersOfMercury, "9.2 kPa", "mmHg");
        AssertNear(Pressure.FromCentimetersOfWaterColumn(15).MillimetersOfMercury, "15 cmH2O", "mmHg");
        AssertNear(Pressure.FromMillibars(12).CentimetersOfWaterColumn, "12 mbar", "cmH2O");
        AssertNear(Density.FromGramsPerLiter(98).GramsPerDeciLiter, "98 g/L", "g/dL");
        AssertNear(VolumeFlow.FromLitersPerMinute(0.25).MillilitersPerMinute, "0.25 L/min", "mL/min");
        AssertNear(0.6, "60 %", "");
        AssertNear(0.5, "6 months", "years");
    }

    [Theory]
    [InlineData("18.2")]
    [InlineData("\"abc\"")]
    [InlineData("{\"value\":18.2,\"sd\":0.7}")]
    public void What_is_shown_reads_back_as_what_was_saved(string saved)
    {
        JsonNode? node = JsonNode.Parse(saved);
        Assert.True(JsonNode.DeepEquals(node, TypedNumber.Read(TypedNumber.Show(node), "mm", withError: true)));
    }

    private static void AssertNear(double expected, string typed, string unit) =>
        Assert.Equal(expected, TypedNumber.Read(typed, unit, withError: false)!.GetValue<double>(), Math.Abs(expected) * 1e-5);
}
