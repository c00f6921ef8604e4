using System.Globalization;
using System.Text;
using Cavaxis.Anatomy.Axis;
using Cavaxis.Planning.Case;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Planning.Tests.Case;

public class CaseConsistencyTests
{
    [Theory]
    [InlineData("\"axis\":[{\"dimension\":\"svcLength\",\"value\":70},{\"dimension\":\"svcLength\",\"value\":71}]", FaultCode.Contradiction, "axis[1].dimension")]
    [InlineData("\"axis\":[{\"dimension\":\"tricuspidFraction\",\"value\":35}]", FaultCode.OutOfRange, "axis[0].value")]
    [InlineData("\"axis\":[{\"dimension\":\"atrialSpan\",\"value\":6.4}]", FaultCode.OutOfRange, "axis[0].value")]
    [InlineData("\"axis\":[{\"dimension\":\"cavalBendFrontal\",\"value\":160}]", FaultCode.OutOfRange, "axis[0].value")]
    [InlineData("\"axis\":[{\"dimension\":\"atrialSpan\",\"value\":64,\"sd\":65}]", FaultCode.Contradiction, "axis[0].sd")]
    [InlineData("\"axis\":[{\"dimension\":\"atrialSpan\",\"value\":64,\"superiorEdge\":\"eustachianRim\"}]", FaultCode.Contradiction, "axis[0].superiorEdge")]
    [InlineData("\"axis\":[{\"dimension\":\"atrialSpan\",\"value\":64,\"inferiorEdge\":\"cristaTerminalis\"}]", FaultCode.Contradiction, "axis[0].inferiorEdge")]
    [InlineData("\"blood\":{\"haemoglobinGPerDl\":12,\"haematocritPercent\":25}", FaultCode.Contradiction, "blood.haematocritPercent")]
    [InlineData("\"blood\":{\"haemoglobinGPerDl\":7,\"haematocritPercent\":36}", FaultCode.Contradiction, "blood.haematocritPercent")]
    [InlineData("\"blood\":{\"lactateMmolPerL\":{\"value\":2,\"sd\":3}}", FaultCode.Contradiction, "blood.lactateMmolPerL.sd")]
    [InlineData("\"vessels\":[{\"vessel\":\"axillaryArtery\",\"side\":\"left\"},{\"vessel\":\"axillaryArtery\",\"side\":\"left\"}]", FaultCode.Contradiction, "vessels[1].vessel")]
    [InlineData("\"ventilation\":{\"peepCmH2O\":15,\"plateauPressureCmH2O\":12}", FaultCode.Contradiction, "ventilation.plateauPressureCmH2O")]
    [InlineData("\"observations\":{\"meanArterialPressureMmHg\":60,\"diastolicPressureMmHg\":70}", FaultCode.Contradiction, "observations.diastolicPressureMmHg")]
    [InlineData("\"observations\":{\"pulmonaryArteryMeanMmHg\":40,\"pulmonaryArterySystolicMmHg\":30}", FaultCode.Contradiction, "observations.pulmonaryArteryMeanMmHg")]
    [InlineData("\"running\":{\"configuration\":\"vvTwoSite\",\"cannulae\":[{\"role\":\"arterialReturn\",\"device\":\"x\"}]}", FaultCode.Contradiction, "running.cannulae[0].role")]
    [InlineData("\"running\":{\"flowLPerMin\":4}", FaultCode.Contradiction, "running.configuration")]
    public void What_cannot_be_true_together_is_one_fault(string part, FaultCode code, string field)
    {
        InputFault fault = Assert.Single(Faults(Case(40, 180, 80, part)));
        Assert.Equal((code, field), (fault.Code, fault.Field));
        Assert.NotNull(fault.Line);
    }

    [Theory]
    [InlineData("\"axis\":[{\"dimension\":\"cavalBendSagittal\",\"value\":4,\"sd\":8},{\"dimension\":\"mouthOffset\",\"value\":-5,\"sd\":6}]")]
    [InlineData("\"axis\":[{\"dimension\":\"atrialSpan\",\"value\":64,\"superiorEdge\":\"firstAtrialSlice\",\"inferiorEdge\":\"myocardialEdge\"}]")]
    [InlineData("\"heart\":{\"ratePerMin\":0,\"centralVenousPressureMmHg\":{\"value\":1,\"sd\":2},\"ejectionFractionPercent\":{\"value\":5,\"sd\":6}}")]
    [InlineData("\"vessels\":[{\"vessel\":\"axillaryArtery\",\"side\":\"left\"},{\"vessel\":\"axillaryArtery\",\"side\":\"right\"}]")]
    [InlineData("\"blood\":{\"haemoglobinGPerDl\":10,\"haematocritPercent\":38}")]
    public void What_can_be_true_passes(string part) => Assert.NotNull(Read(Case(40, 180, 80, part)));

    [Theory]
    [InlineData(40, 60, 12, "patient.heightCm")]
    [InlineData(1, 150, 50, "patient.heightCm")]
    [InlineData(0.1, 102, 16, "patient.heightCm")]
    [InlineData(40, 180, 8, "patient.weightKg")]
    [InlineData(40, 100, 200, "patient.weightKg")]
    [InlineData(0.5, 65, 40, "patient.weightKg")]
    public void A_body_nobody_has_is_a_contradiction(double age, double height, double weight, string field)
    {
        InputFault fault = Assert.Single(Faults(Case(age, height, weight)));
        Assert.Equal((FaultCode.Contradiction, field), (fault.Code, fault.Field));
    }

    // World records and growth charts' edges: adults of 74 and 230 cm, a newborn of 2 kg, a wasted child, 350 kg.
    [Theory]
    [InlineData(30, 74, 17)]
    [InlineData(30, 230, 180)]
    [InlineData(0, 43, 2)]
    [InlineData(0, 56, 5.5)]
    [InlineData(4, 100, 9)]
    [InlineData(35, 165, 350)]
    [InlineData(12, 185, 110)]
    public void A_rare_body_passes(double age, double height, double weight) =>
        Assert.Equal(weight, Read(Case(age, height, weight)).Patient.WeightKg);

    // Median length and weight of girls and boys by age, read to whole numbers off the WHO growth charts, from memory.
    [Theory]
    [InlineData(0, 50, 3.3)]
    [InlineData(1, 75, 9.3)]
    [InlineData(2, 87, 12)]
    [InlineData(5, 110, 18)]
    [InlineData(10, 138, 32)]
    [InlineData(15, 166, 55)]
    public void A_median_child_lies_far_inside(double age, double height, double weight)
    {
        Assert.NotNull(Read(Case(age, height * 1.15, weight * 1.6)));
        Assert.NotNull(Read(Case(age, height * 0.85, weight * 0.62)));
    }

    [Fact]
    public void A_faulty_field_takes_no_part_in_checks_between_fields()
    {
        IReadOnlyList<InputFault> faults = Faults(Case(
            40, 180, 80, "\"vessels\":[{\"vessel\":\"x\",\"side\":\"left\"},{\"vessel\":\"internalJugularVein\",\"side\":\"left\"}],\"axis\":[{\"dimension\":\"atrialSpan\",\"value\":\"64\",\"sd\":5}]"));
        Assert.Equal(["vessels[0].vessel", "axis[0].value"], faults.Select(static f => f.Field));
    }

    [Fact]
    public void Every_dimension_has_a_range_that_holds_its_usual_adult_values_in_the_bounds_of_the_field()
    {
        foreach (AxisDimension dimension in Enum.GetValues<AxisDimension>())
        {
            AxisRange range = AxisRange.Of(dimension);
            Assert.True(range.Low < range.High && range.Low >= -90 && range.High <= 900, dimension.ToString());
            Assert.Contains(range.Unit, (string[])["mm", "deg", "1"]);
        }
    }

    [Theory]
    [InlineData("\"blood\":{\"arterialSaturationPercent\":98,\"arterialPo2MmHg\":32}", "blood.arterialSaturationPercent")]
    [InlineData("\"blood\":{\"arterialSaturationPercent\":70,\"arterialPo2MmHg\":300}", "blood.arterialSaturationPercent")]
    [InlineData("\"blood\":{\"arterialSaturationPercent\":70,\"venousSaturationPercent\":85}", "blood.venousSaturationPercent")]
    [InlineData("\"vessels\":[{\"vessel\":\"axillaryArtery\",\"side\":\"left\",\"diameterMm\":6}],\"axis\":[{\"dimension\":\"leftAxillaryArteryDiameter\",\"value\":9}]", "axis[0]")]
    public void What_is_odd_but_possible_is_a_note(string part, string field) =>
        Assert.Equal(field, Assert.Single(CaseNotes.Of(Read(Case(40, 180, 80, part)))).Field);

    // Pairs of the standard human curve, Severinghaus 1979 table at pH 7.40 and 37 degrees, from memory; and an acidotic pair.
    [Theory]
    [InlineData(27, 50)]
    [InlineData(40, 75)]
    [InlineData(60, 90.6)]
    [InlineData(100, 97.5)]
    [InlineData(55, 76)]
    public void Saturation_and_tension_of_one_sample_give_no_note(double po2, double saturation) => Assert.Empty(CaseNotes.Of(Read(Case(
        40, 180, 80, string.Create(CultureInfo.InvariantCulture, $"\"blood\":{{\"arterialSaturationPercent\":{saturation},\"arterialPo2MmHg\":{po2}}}")))));

    private static string Case(double age, double height, double weight, string part = "\"notes\":\"\"") => string.Create(
        CultureInfo.InvariantCulture,
        $"{{\"cavaxisCase\":1,\"patient\":{{\"ageYears\":{age},\"sex\":\"female\",\"heightCm\":{height},\"weightKg\":{weight}}},{part}}}");

    private static CaseFile Read(string text) => CaseFileReader.Read(Encoding.UTF8.GetBytes(text));

    private static IReadOnlyList<InputFault> Faults(string text) => Assert.Throws<InputFaultException>(() => Read(text)).Faults;
}
