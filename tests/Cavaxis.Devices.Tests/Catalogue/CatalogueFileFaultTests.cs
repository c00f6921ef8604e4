using Cavaxis.Devices.Catalogue;
using Cavaxis.Quantities.Faults;
using CsCheck;

namespace Cavaxis.Devices.Tests.Catalogue;

public class CatalogueFileFaultTests
{
    public static TheoryData<string, string, FaultCode, string> Spoiled => new()
    {
        { "{\n  \"format\"", "[{\n  \"format\"", FaultCode.MalformedText, "(the file)" },
        { "\"version\": \"1.0.0\",", "\"version\": \"1.0.0\"", FaultCode.MalformedText, "(the file)" },
        { "\"version\": \"1.0.0\"", "\"version\": NaN", FaultCode.MalformedText, "(the file)" },
        { "\"version\": \"1.0.0\"", "// remark\n\"version\": \"1.0.0\"", FaultCode.MalformedText, "(the file)" },
        { "\"version\": \"1.0.0\"", "\"version\": [[[[[[[[[[[[[[]]]]]]]]]]]]]]", FaultCode.NestedTooDeep, "(the file)" },
        { "\"format\": \"cavaxis.devices\",", "", FaultCode.MissingField, "format" },
        { "cavaxis.devices", "other.devices", FaultCode.NotAChoice, "format" },
        { "\"formatVersion\": 1,", "\"formatVersion\": 2,", FaultCode.UnsupportedVersion, "formatVersion" },
        { "\"formatVersion\": 1,", "\"formatVersion\": \"1\",", FaultCode.WrongKind, "formatVersion" },
        { "\"formatVersion\": 1,", "\"formatVersion\": 1.5,", FaultCode.WrongKind, "formatVersion" },
        { "\"version\": \"1.0.0\"", "\"version\": \"\"", FaultCode.WrongLength, "version" },
        { "\"version\": \"1.0.0\"", "\"version\": 1", FaultCode.WrongKind, "version" },
        { "\"version\": \"1.0.0\"", "\"version\": \"1\\u0000\"", FaultCode.MalformedText, "version" },
        { "\"version\": \"1.0.0\"", "\"version\": \"\\uD800\"", FaultCode.MalformedText, "version" },
        { "\"version\": \"1.0.0\"", "\"version\": \"1\", \"version\": \"2\"", FaultCode.DuplicateField, "version" },
        { "\"version\": \"1.0.0\"", "\"version\": \"1\", \"maker\": \"x\"", FaultCode.UnknownField, "maker" },
        { "\"version\": \"1.0.0\"", "\"version\": \"1\", \"\\uD800\": \"x\"", FaultCode.MalformedText, "(the file)" },
        { "\"cannulae\": [", "\"cannulae\": [ 5,", FaultCode.WrongKind, "cannulae[0]" },
        { "\"cannulae\": [", "\"cannulae\": [ null,", FaultCode.WrongKind, "cannulae[0]" },
        { "\"id\": \"own-drain\", ", "", FaultCode.MissingField, "cannulae[0].id" },
        { "\"own-drain\"", "\"Own Drain\"", FaultCode.NotAChoice, "cannulae[0].id" },
        { "\"own-drain\"", "\"../etc\"", FaultCode.NotAChoice, "cannulae[0].id" },
        { "\"own-drain\"", "\"\"", FaultCode.WrongLength, "cannulae[0].id" },
        { "\"own-drain\"", "\"own-pump\"", FaultCode.Contradiction, "pumps[0].id" },
        { "\"own-wire\"", "\"own-lung\"", FaultCode.Contradiction, "wires[0].id" },
        { "\"description\": \"Drainage\"", "\"description\": null", FaultCode.WrongKind, "cannulae[0].description" },
        { "singleStageDrainage", "SingleStageDrainage", FaultCode.NotAChoice, "cannulae[0].family" },
        { "singleStageDrainage", "0", FaultCode.NotAChoice, "cannulae[0].family" },
        { "singleStageDrainage", "arterialReturn", FaultCode.Contradiction, "cannulae[0].lumens" },
        { "singleStageDrainage", "bicavalDualLumen", FaultCode.Contradiction, "cannulae[0].lumens" },
        { "\"outerDiameterFrench\": 21", "\"outerDiameterFrench\": \"21\"", FaultCode.WrongKind, "cannulae[0].outerDiameterFrench" },
        { "\"outerDiameterFrench\": 21", "\"outerDiameterFrench\": 210", FaultCode.OutOfRange, "cannulae[0].outerDiameterFrench" },
        { "\"outerDiameterFrench\": 21", "\"outerDiameterFrench\": -21", FaultCode.OutOfRange, "cannulae[0].outerDiameterFrench" },
        { "\"outerDiameterFrench\": 21", "\"outerDiameterFrench\": 1e999", FaultCode.OutOfRange, "cannulae[0].outerDiameterFrench" },
        { "\"outerDiameterFrench\": 21", "\"outerDiameterFrench\": null", FaultCode.WrongKind, "cannulae[0].outerDiameterFrench" },
        { "\"outerDiameterFrench\": 21", "\"outerDiameterFrench\": 12", FaultCode.Contradiction, "cannulae[0].outerDiameterFrench" },
        { "\"insertableLengthMm\": 500", "\"insertableLengthMm\": 5", FaultCode.OutOfRange, "cannulae[0].insertableLengthMm" },
        { "\"insertableLengthMm\": 500", "\"insertableLengthMm\": 700", FaultCode.Contradiction, "cannulae[0].lumens[0].segments" },
        { "\"insertableLengthMm\": 500", "\"insertableLengthMm\": 30", FaultCode.Contradiction, "cannulae[0].lumens[0].holeGroups[0].fromTipMm" },
        { "\"purpose\": \"drainage\"", "\"purpose\": \"return\"", FaultCode.Contradiction, "cannulae[0].lumens" },
        { "\"purpose\": \"drainage\"", "\"purpose\": \"\"", FaultCode.WrongLength, "cannulae[0].lumens[0].purpose" },
        { "{ \"lengthMm\": 40, \"innerDiameterMm\": 8 }, { \"lengthMm\": 500, \"innerDiameterMm\": 6.1, \"areaMm2\": 29.3 }", "", FaultCode.WrongLength, "cannulae[0].lumens[0].segments" },
        { "\"segments\": [", "\"segments\": {}, \"x\": [", FaultCode.WrongKind, "cannulae[0].lumens[0].segments" },
        { "\"lengthMm\": 40", "\"lengthMm\": 0", FaultCode.OutOfRange, "cannulae[0].lumens[0].segments[0].lengthMm" },
        { "\"innerDiameterMm\": 6.1", "\"innerDiameterMm\": 61", FaultCode.OutOfRange, "cannulae[0].lumens[0].segments[1].innerDiameterMm" },
        { "\"areaMm2\": 29.3", "\"areaMm2\": 12", FaultCode.Contradiction, "cannulae[0].lumens[0].segments[1].areaMm2" },
        { "\"areaMm2\": 29.3", "\"areaMm2\": 80", FaultCode.Contradiction, "cannulae[0].outerDiameterFrench" },
        { "\"name\": \"tip holes\"", "\"name\": \"\"", FaultCode.WrongLength, "cannulae[0].lumens[0].holeGroups[0].name" },
        { "\"fromTipMm\": 30", "\"fromTipMm\": -30", FaultCode.OutOfRange, "cannulae[0].lumens[0].holeGroups[0].fromTipMm" },
        { "\"fromTipMm\": 30", "\"fromTipMm\": 600", FaultCode.Contradiction, "cannulae[0].lumens[0].holeGroups[0].fromTipMm" },
        { "\"fromTipMm\": 0", "\"fromTipMm\": 50", FaultCode.Contradiction, "cannulae[0].lumens[0].holeGroups[1].fromTipMm" },
        { "\"spanMm\": 0", "\"spanMm\": 5", FaultCode.Contradiction, "cannulae[0].lumens[0].holeGroups[1].facing" },
        { "\"count\": 8", "\"count\": 8.5", FaultCode.WrongKind, "cannulae[0].lumens[0].holeGroups[0].count" },
        { "\"count\": 8", "\"count\": 0", FaultCode.OutOfRange, "cannulae[0].lumens[0].holeGroups[0].count" },
        { "\"count\": 8", "\"count\": true", FaultCode.WrongKind, "cannulae[0].lumens[0].holeGroups[0].count" },
        { "\"count\": 1", "\"count\": 2", FaultCode.Contradiction, "cannulae[0].lumens[0].holeGroups[1].facing" },
        { "\"diameterMm\": 2", "\"diameterMm\": 9", FaultCode.Contradiction, "cannulae[0].lumens[0].holeGroups[0].diameterMm" },
        { "\"facing\": \"allRound\"", "\"facing\": \"inwards\"", FaultCode.NotAChoice, "cannulae[0].lumens[0].holeGroups[0].facing" },
        { "\"referenceDiameterMm\": 6.1", "\"referenceDiameterMm\": 0", FaultCode.OutOfRange, "cannulae[0].lumens[0].waterCurve.referenceDiameterMm" },
        { "[2, -0.25]", "[2]", FaultCode.WrongLength, "cannulae[0].lumens[0].waterCurve.eulerLogCoefficients" },
        { "[2, -0.25]", "[2, \"-0.25\"]", FaultCode.WrongKind, "cannulae[0].lumens[0].waterCurve.eulerLogCoefficients[1]" },
        { "[2, -0.25]", "[2, 1e300]", FaultCode.OutOfRange, "cannulae[0].lumens[0].waterCurve.eulerLogCoefficients[1]" },
        { "[2, -0.25]", "[2, -2.5]", FaultCode.Contradiction, "cannulae[0].lumens[0].waterCurve.eulerLogCoefficients" },
        { "[2, -0.25]", "[900, -0.25]", FaultCode.Contradiction, "cannulae[0].lumens[0].waterCurve.eulerLogCoefficients" },
        { "\"lowestReynolds\": 2000", "\"lowestReynolds\": 20000", FaultCode.Contradiction, "cannulae[0].lumens[0].waterCurve.lowestReynolds" },
        { "\"relativeSd\": 0.02", "\"relativeSd\": -1", FaultCode.OutOfRange, "cannulae[0].lumens[0].waterCurve.relativeSd" },
        { "\"largestWireMm\": 0.97", "\"largestWireMm\": 97", FaultCode.OutOfRange, "cannulae[0].largestWireMm" },
        { "\"depthMarksEveryMm\": 10", "\"depthMarksEveryMm\": \"ten\"", FaultCode.WrongKind, "cannulae[0].depthMarksEveryMm" },
        { "\"low\": 500, \"high\": 2500", "\"low\": 2600, \"high\": 2500", FaultCode.Contradiction, "cannulae[0].bendingStiffnessNMm2" },
        { "\"low\": 500, \"high\": 2500", "\"low\": 500", FaultCode.MissingField, "cannulae[0].bendingStiffnessNMm2.high" },
        { "\"citation\": \"Label\", \"certainty\": \"seen\" }\n    }", "\"certainty\": \"seen\" }\n    }", FaultCode.MissingField, "cannulae[0].geometrySource.citation" },
        { "\"certainty\": \"seen\"", "\"certainty\": \"sure\"", FaultCode.NotAChoice, "cannulae[0].geometrySource.certainty" },
        { "\"shutOffMmHg\": 430", "\"shutOffMmHg\": 0", FaultCode.OutOfRange, "pumps[0].shutOffMmHg" },
        { "\"linearMmHgPerLPerMin\": -8", "\"linearMmHgPerLPerMin\": 8", FaultCode.OutOfRange, "pumps[0].linearMmHgPerLPerMin" },
        { "\"lowestSpeedRpm\": 500", "\"lowestSpeedRpm\": 6000", FaultCode.Contradiction, "pumps[0].lowestSpeedRpm" },
        { "\"quadraticMmHgPerLPerMin2\": -2.6", "\"quadraticMmHgPerLPerMin2\": -26", FaultCode.Contradiction, "pumps[0].highestFlowLPerMin" },
        { "\"lowestInletPressureMmHg\": -100", "\"lowestInletPressureMmHg\": 100", FaultCode.OutOfRange, "pumps[0].lowestInletPressureMmHg" },
        { "\"ratedFlowLPerMin\": 7", "\"ratedFlowLPerMin\": 70", FaultCode.OutOfRange, "membraneLungs[0].ratedFlowLPerMin" },
        { "\"lowestFlowLPerMin\": 0.5", "\"lowestFlowLPerMin\": 8", FaultCode.Contradiction, "membraneLungs[0].lowestFlowLPerMin" },
        { "\"carbonDioxideConductance\": 80", "\"carbonDioxideConductance\": 0", FaultCode.OutOfRange, "membraneLungs[0].carbonDioxideConductance" },
        { "\"lowFlexuralModulusGPa\": 17", "\"lowFlexuralModulusGPa\": 19", FaultCode.Contradiction, "wires[0].lowFlexuralModulusGPa" },
        { "\"floppyTipCm\": 7", "\"floppyTipCm\": 100, \"lengthM\": 1.8", FaultCode.UnknownField, "wires[0].lengthM" },
        { "\"lengthCm\": 180", "\"lengthCm\": 10, \"floppyTipCM\": 1", FaultCode.UnknownField, "wires[0].floppyTipCM" },
        { "\"low\": 1, \"high\": 11", "\"low\": 12, \"high\": 11", FaultCode.Contradiction, "wires[0].floppyTipStiffnessNMm2" },
        { "\"wires\": [", "\"wires\": null, \"x\": [", FaultCode.WrongKind, "wires" },
    };

    [Fact]
    public void The_sample_itself_is_sound() => Assert.Single(CatalogueFile.Parse(SampleCatalogue.Text).Cannulae);

    [Theory]
    [MemberData(nameof(Spoiled))]
    public void A_spoiled_catalogue_gets_its_typed_fault_at_its_place(string old, string replacement, FaultCode code, string field)
    {
        InputFaultException fault = Assert.Throws<InputFaultException>(() => CatalogueFile.Parse(SampleCatalogue.With(old, replacement)));
        Assert.Contains(fault.Faults, f => f.Code == code && f.Field == field);
        Assert.All(fault.Faults, f => Assert.False(string.IsNullOrWhiteSpace(f.Remedy)));
    }

    [Fact]
    public void All_faults_come_at_once()
    {
        string text = SampleCatalogue.Text
            .Replace("\"outerDiameterFrench\": 21", "\"outerDiameterFrench\": 210", StringComparison.Ordinal)
            .Replace("\"shutOffMmHg\": 430", "\"shutOffMmHg\": \"430\"", StringComparison.Ordinal)
            .Replace("\"primingVolumeMl\": 250,", "", StringComparison.Ordinal);
        InputFaultException fault = Assert.Throws<InputFaultException>(() => CatalogueFile.Parse(text));
        Assert.Equal(
            ["cannulae[0].outerDiameterFrench", "pumps[0].shutOffMmHg", "membraneLungs[0].primingVolumeMl"],
            fault.Faults.Select(f => f.Field));
    }

    [Fact]
    public void Broken_text_is_told_with_its_line()
    {
        InputFaultException fault = Assert.Throws<InputFaultException>(() => CatalogueFile.Parse("{\n  \"format\": \"x\"\n  \"version\": 1\n}"));
        Assert.Equal(3, fault.Faults[0].Line);
    }

    [Theory]
    [InlineData("")]
    [InlineData("null")]
    [InlineData("[]")]
    [InlineData("5")]
    [InlineData("\"text\"")]
    [InlineData("{}")]
    [InlineData("{\"format\":\"\uD800\"}")]
    public void Something_else_than_a_catalogue_is_refused(string text) =>
        Assert.NotEmpty(Assert.Throws<InputFaultException>(() => CatalogueFile.Parse(text)).Faults);

    [Fact]
    public void Too_long_a_text_is_refused_before_it_is_read() =>
        Assert.Equal(
            FaultCode.FileTooLarge,
            Assert.Throws<InputFaultException>(() => CatalogueFile.Parse(new string(' ', CatalogueFile.LongestText + 1))).Faults[0].Code);

    [Fact]
    public void Any_damage_ends_in_a_typed_fault_or_a_catalogue() =>
        Gen.Select(Gen.Int[0, SampleCatalogue.Text.Length - 1], Gen.Int[0, 12], Gen.String[0, 6]).Array[1, 4].Sample(
            damages =>
            {
                string text = SampleCatalogue.Text;
                foreach ((int place, int length, string put) in damages)
                {
                    int at = Math.Min(place, text.Length);
                    text = string.Concat(text.AsSpan(0, at), put, text.AsSpan(Math.Min(text.Length, at + length)));
                }

                OnlyTypedFaults(text);
            },
            iter: 3000);

    [Fact]
    public void Any_number_in_any_place_ends_in_a_typed_fault_or_a_catalogue()
    {
        (int At, int Length)[] numbers = [.. System.Text.RegularExpressions.Regex.Matches(SampleCatalogue.Text, @"(?<=[:\[,] )-?\d+(\.\d+)?").Select(m => (m.Index, m.Length))];
        Assert.True(numbers.Length > 30);
        string[] values = ["0", "-1", "1e-300", "1e300", "1e999", "0.5", "1000000", "-0", "3"];
        Gen.Select(Gen.Int[0, numbers.Length - 1], Gen.Int[0, values.Length - 1]).Sample(
            (n, v) => OnlyTypedFaults(string.Concat(
                SampleCatalogue.Text.AsSpan(0, numbers[n].At), values[v], SampleCatalogue.Text.AsSpan(numbers[n].At + numbers[n].Length))),
            iter: 1500);
    }

    private static void OnlyTypedFaults(string text)
    {
        try
        {
            Assert.NotNull(CatalogueFile.Parse(text).Version);
        }
        catch (InputFaultException fault)
        {
            Assert.NotEmpty(fault.Faults);
        }
    }
}
