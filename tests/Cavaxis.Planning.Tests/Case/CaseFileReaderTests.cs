using System.Text;
using Cavaxis.Anatomy.Axis;
using Cavaxis.Anatomy.Body;
using Cavaxis.Planning.Case;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Planning.Tests.Case;

public class CaseFileReaderTests
{
    private const string Patient = """ "patient":{"ageYears":40,"sex":"male","heightCm":180,"weightKg":80} """;

    [Fact]
    public void Every_demo_case_is_read_without_faults_or_notes_and_is_marked_invented()
    {
        Assert.True(RepositoryFolder.DemoFiles.Count >= 4);
        foreach (string path in RepositoryFolder.DemoFiles)
        {
            CaseFile file = CaseFileReader.Read(File.ReadAllBytes(path), path);
            Assert.True(file.Invented, path);
            Assert.Empty(CaseNotes.Of(file));
        }
    }

    [Fact]
    public void A_full_case_arrives_field_by_field()
    {
        CaseFile file = CaseFileReader.Read(File.ReadAllBytes(Path.Combine(RepositoryFolder.Demo, "tall-man-severe-lung-failure.json")));

        Assert.Equal(
            new PatientSection { AgeYears = 46, Sex = Sex.Male, HeightCm = 196, WeightKg = 104 }, file.Patient);
        Assert.Equal(SupportGoal.GasExchange, file.Support.Goal);
        Assert.Equal(88, file.Support.TargetSaturationPercent);
        Assert.Null(file.Support.FlowLPerMin);
        Assert.Equal(new Measurement(9.8, 0.2, SdGiven: false), file.Blood.HaemoglobinGPerDl);
        Assert.Null(file.Blood.OxygenConsumptionMlPerMin);
        Assert.Equal(new Measurement(24, 1, SdGiven: true), file.Heart.LvotDiameterMm);
        Assert.Equal(Severity.None, file.Heart.AorticRegurgitation);
        Assert.Equal(4, file.Vessels.Count);
        Assert.Equal(new Measurement(18.2, 0.7, SdGiven: true), file.Vessels[0].DiameterMm);
        Assert.Equal([VesselConfirmation.Compression, VesselConfirmation.Doppler, VesselConfirmation.TwoPlanes], file.Vessels[0].ConfirmedBy);
        Assert.Equal(Finding.Present, file.Vessels[1].Thrombus);
        Assert.Equal(
            new AxisEntry
            {
                Dimension = AxisDimension.AtrialSpan,
                Value = 80,
                Sd = 4,
                Method = AxisMethod.TransoesophagealEcho,
                SuperiorEdge = JunctionEdge.CristaTerminalis,
                InferiorEdge = JunctionEdge.EustachianRim,
            },
            file.Axis[1]);
        Assert.Equal(NeckEntryHeight.MidNeck, file.Access.NeckEntry);
        Assert.Equal(new Measurement(30, 5, SdGiven: false), file.Access.LengthOutsideMm);
        Assert.Equal(Finding.Unknown, file.Obstacles.AorticDissection);
        Assert.Equal(Availability.Missing, file.Resources.Fluoroscopy);
    }

    [Fact]
    public void What_a_case_leaves_out_and_what_it_calls_unknown_read_the_same()
    {
        CaseFile bare = Read($$$"""{"cavaxisCase":1,{{{Patient}}}}""");
        CaseFile said = Read($$$"""
            {"cavaxisCase":1,{{{Patient}}},"support":"unknown","vessels":"unknown","axis":[],"devicesOnHand":"unknown",
             "blood":{"haemoglobinGPerDl":"unknown"},"heart":{"aorticRegurgitation":"unknown"},"access":{"neckEntry":"unknown"},
             "obstacles":{"cavalFilter":"unknown"},"resources":{"stiffWire":"unknown"}}
            """);

        Assert.Equal(bare.Support, said.Support);
        Assert.Null(said.Support.Goal);
        Assert.Empty(said.Vessels);
        Assert.Empty(said.DevicesOnHand);
        Assert.Equal(bare.Blood, said.Blood);
        Assert.Equal(bare.Heart, said.Heart);
        Assert.Equal(bare.Access, said.Access);
        Assert.Equal(Finding.Unknown, bare.Obstacles.CavalFilter);
        Assert.Equal(bare.Obstacles, said.Obstacles);
        Assert.Equal(bare.Resources, said.Resources);
    }

    [Fact]
    public void An_unknown_goal_is_no_goal() =>
        Assert.Null(Read($$$"""{"cavaxisCase":1,{{{Patient}}},"support":{"goal":"unknown","flowLPerMin":"unknown"}}""").Support.Goal);

    [Fact]
    public void A_mark_of_UTF_8_at_the_start_is_passed_over() => Assert.Equal(
        180, CaseFileReader.Read([0xEF, 0xBB, 0xBF, .. Encoding.UTF8.GetBytes($$$"""{"cavaxisCase":1,{{{Patient}}}}""")]).Patient.HeightCm);

    [Fact]
    public void A_stream_gives_the_same_case_as_its_bytes()
    {
        byte[] bytes = File.ReadAllBytes(RepositoryFolder.DemoFiles[0]);
        using MemoryStream stream = new(bytes);
        Assert.Equal(CaseFileReader.Read(bytes).Patient, CaseFileReader.ReadStream(stream, "case.json").Patient);
        Assert.True(stream.CanRead);
    }

    [Fact]
    public void All_faults_of_a_file_come_at_once_sorted_by_place()
    {
        IReadOnlyList<InputFault> faults = Faults("""
            {
              "cavaxisCase": 1,
              "titel": "x",
              "patient": { "ageYears": "forty", "heightCm": 18, "weightKg": null },
              "support": { "goal": "gasExchang", "goal": "both" },
              "vessels": [
                { "vessel": "axillaryArtery", "side": "left" },
                { "vessel": "axillaryArtery", "side": "left", "diameterMm": { "value": 5, "sd": 6 } }
              ],
              "blood": { "haemoglobinGPerDl": 8, "haematocritPercent": 60 }
            }
            """);

        Assert.Equal(
            [
                (FaultCode.UnknownField, "titel", 3, 3),
                (FaultCode.MissingField, "patient.sex", 4, 14),
                (FaultCode.WrongKind, "patient.ageYears", 4, 28),
                (FaultCode.OutOfRange, "patient.heightCm", 4, 49),
                (FaultCode.WrongKind, "patient.weightKg", 4, 65),
                (FaultCode.NotAChoice, "support.goal", 5, 24),
                (FaultCode.DuplicateField, "support.goal", 5, 38),
                (FaultCode.Contradiction, "vessels[1].vessel", 8, 17),
                (FaultCode.Contradiction, "vessels[1].diameterMm.sd", 8, 85),
                (FaultCode.Contradiction, "blood.haematocritPercent", 10, 60),
            ],
            faults.Select(static f => (f.Code, f.Field, f.Line!.Value, f.Column!.Value)));
    }

    [Fact]
    public void A_fault_names_value_range_with_unit_and_remedy()
    {
        InputFault fault = Assert.Single(Faults($$$"""{"cavaxisCase":1,{{{Patient}}},"blood":{"arterialPo2MmHg":7.2}}"""));
        Assert.Equal("7.2", fault.Value);
        Assert.Contains("10 to 700 mmHg", fault.Accepted, StringComparison.Ordinal);
        Assert.Contains("mmHg", fault.Remedy, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("\"blod\":{}", "blood")]
    [InlineData("\"Heart\":{}", "heart")]
    [InlineData("\"heart\":{\"ejectionFraction\":15}", "ejectionFractionPercent")]
    [InlineData("\"blood\":{\"haemoglobinGPerDl\":{\"value\":8,\"std\":1}}", "sd")]
    [InlineData("\"resources\":{\"stiffWire\":\"onhand\"}", "onHand")]
    [InlineData("\"vessels\":[{\"vessel\":\"femoralArtery\",\"side\":\"left\"}]", "commonFemoralArtery")]
    public void The_closest_known_word_is_suggested(string part, string suggested)
    {
        InputFault fault = Assert.Single(Faults($$$"""{"cavaxisCase":1,{{{Patient}}},{{{part}}}}"""));
        Assert.Equal($"Did you mean \"{suggested}\"?", fault.Remedy);
    }

    [Theory]
    [InlineData("\"blood\":{\"arterialPh\":null}", "Write \"unknown\" or leave the field out.")]
    [InlineData("\"heart\":{\"mitralRegurgitation\":null}", "Write \"unknown\" or leave the field out.")]
    [InlineData("\"blood\":null", "Write \"unknown\" or leave the field out.")]
    [InlineData("\"title\":null", "Leave the field out.")]
    [InlineData("\"vessels\":[{\"vessel\":null,\"side\":\"left\"}]", "This field is needed; write its value.")]
    [InlineData("\"axis\":[{\"dimension\":\"svcLength\",\"value\":null}]", "This number is needed; measure or estimate it.")]
    [InlineData("\"axis\":[{\"dimension\":\"svcLength\",\"value\":\"unknown\"}]", "This number is needed; measure or estimate it.")]
    [InlineData("\"blood\":{\"arterialPh\":\"7.3\"}", "Write the number without quotes and without its unit.")]
    [InlineData("\"blood\":{\"arterialPh\":7,3}", "Write decimals with a point, not a comma, and numbers without leading zeros.")]
    public void The_remedy_fits_the_field(string part, string remedy) =>
        Assert.Equal(remedy, Assert.Single(Faults($$$"""{"cavaxisCase":1,{{{Patient}}},{{{part}}}}""")).Remedy);

    [Fact]
    public void A_word_unlike_any_other_gets_no_suggestion_but_all_the_words()
    {
        InputFault fault = Assert.Single(Faults($$$"""{"cavaxisCase":1,{{{Patient}}},"heart":{"mitralRegurgitation":"loud murmur"}}"""));
        Assert.Equal((FaultCode.NotAChoice, "one of unknown, none, mild, moderate, severe"), (fault.Code, fault.Accepted));
        Assert.DoesNotContain("Did you mean", fault.Remedy, StringComparison.Ordinal);
    }

    [Fact]
    public void Another_version_is_the_only_thing_said_about_a_file()
    {
        InputFault fault = Assert.Single(Faults("""{"cavaxisCase": 2, "body": {}}"""));
        Assert.Equal((FaultCode.UnsupportedVersion, "cavaxisCase", "2", 17), (fault.Code, fault.Field, fault.Value, fault.Column));
    }

    [Fact]
    public void A_file_full_of_unknown_fields_lists_the_first_and_counts_the_rest()
    {
        string fields = string.Join(',', Enumerable.Range(0, 900).Select(static i => $"\"field{i}\":0"));
        IReadOnlyList<InputFault> faults = Faults($$$"""{"cavaxisCase":1,{{{Patient}}},{{{fields}}}}""");
        Assert.Equal(501, faults.Count);
        Assert.Equal("900 faults", faults[^1].Value);
    }

    private static CaseFile Read(string text) => CaseFileReader.Read(Encoding.UTF8.GetBytes(text));

    private static IReadOnlyList<InputFault> Faults(string text) => Assert.Throws<InputFaultException>(() => Read(text)).Faults;
}
