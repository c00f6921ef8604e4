using System.Text;
using System.Text.Json;
using Cavaxis.Course.Imports;
using Cavaxis.EndToEnd.Tests.RecordVerbs;

namespace Cavaxis.EndToEnd.Tests.CourseVerbs;

/// <summary>What cannot be used is refused with its field, and writes nothing.</summary>
public sealed class CourseFaultTests(RecordFolder record) : IClassFixture<RecordFolder>
{
    [Theory]
    [InlineData("observe pumpFlowLPerMin 4.2 mL/min", "notAChoice", "pumpFlowLPerMin")]
    [InlineData("observe pumpFlow 4.2 L/min", "notAChoice", "pumpFlow")]
    [InlineData("observe pumpFlowLPerMin 42 L/min", "outOfRange", "pumpFlowLPerMin")]
    [InlineData("observe pumpFlowLPerMin 4,2 L/min", "wrongKind", "pumpFlowLPerMin")]
    [InlineData("observe pumpFlowLPerMin NaN L/min", "wrongKind", "pumpFlowLPerMin")]
    [InlineData("observe pumpFlowLPerMin 4.2±-1 L/min", "wrongKind", "pumpFlowLPerMin")]
    [InlineData("observe pumpFlowLPerMin 4.2 L/min --origin guessed", "notAChoice", "--origin")]
    [InlineData("observe pumpFlowLPerMin 4.2 L/min --at 2026-01-02T03:04", "wrongKind", "--at")]
    [InlineData("observe pumpFlowLPerMin 4.2 L/min --at 2126-01-02T03:04Z", "outOfRange", "occurredAt")]
    [InlineData("observe pumpFlowLPerMin 4.2 L/min --read pumpFlowLPerMin=4.3", "notAChoice", "--read")]
    [InlineData("move drainage --depth 3 --reason x", "notFound", "CANNULA")]
    [InlineData("place drainage --role arterial", "notAChoice", "--role")]
    [InlineData("place drainage --role drainage --depth 90", "outOfRange", "depthCm")]
    [InlineData("start vv", "notAChoice", "CONFIGURATION")]
    [InlineData("stop recovered", "contradiction", "PATIENT")]
    [InlineData("step 1 --evidence x", "missingField", "PATIENT")]
    [InlineData("plan", "missingField", "PATIENT")]
    [InlineData("wean step --flow 1", "notFound", "PATIENT")]
    [InlineData("complication over 2 --result gone", "notFound", "ENTRY")]
    [InlineData("complication seen stroke", "missingField", "--gravity")]
    [InlineData("follow-up found --vein femoral", "wrongKind", "--vein")]
    [InlineData("follow-up plan x --what y --from 2031-02-03T04:05Z --by 2031-02-02T04:05Z", "contradiction", "dueBy")]
    [InlineData("correct 1 --set programme=south --reason x", "notFound", "ENTRY")]
    [InlineData("enter case-saved --set caseText=x", "notAChoice", "KIND")]
    [InlineData("enter note-written --set text", "malformedText", "--set")]
    [InlineData("enter note-written --set text=x --set colour=red", "unknownField", "colour")]
    [InlineData("recirculation --venous-saturation 620", "outOfRange", "--venous-saturation")]
    [InlineData("recirculation --injection 0/3", "outOfRange", "firstPass")]
    public void A_verb_that_cannot_be_used_names_its_field_and_writes_nothing(string verb, string code, string field)
    {
        CourseFolder course = new(record);
        (string Code, string Field, string Accepted) fault = Assert.Single(course.Refuses(verb));
        Assert.Equal((code, field), (fault.Code, fault.Field));
        Assert.Equal(1, course.Version);
    }

    [Fact]
    public void What_others_wrote_since_ones_look_is_a_conflict_and_nothing_is_written()
    {
        CourseFolder course = new(record);
        long looked = course.Version;
        course.DoesAs("cleo", "observe pumpFlowLPerMin 4.2 L/min");
        (string Code, string Field, string Accepted) fault = Assert.Single(course.Refuses($"start vvTwoSite --version {looked}"));
        Assert.Equal(("changedMeanwhile", "--version"), (fault.Code, fault.Field));
        Assert.Equal(looked + 1, course.Version);
        course.Does($"start vvTwoSite --version {looked + 1}");
        Assert.Equal(looked + 2, course.Version);
    }

    [Fact]
    public void Rows_that_cannot_be_used_are_named_and_the_others_taken_in_only_when_accepted()
    {
        CourseFolder course = new(record);
        string path = Written("mixed.csv", "time,pumpFlowLPerMin,colour\n2026-01-02T03:04Z,4.1,red\n2026-01-02T03:05Z,44,red\nyesterday,4,red\n");
        Assert.Contains(course.Refuses("import", path), static f => f.Field == "--accept-good");
        Assert.Equal(1, course.Version);
        JsonElement taken = course.Does("import", path, "--accept-good");
        Assert.Equal((3, 1, 3), (taken.GetProperty("rowsRead").GetInt32(), taken.GetProperty("rowsGood").GetInt32(), taken.GetProperty("faultCount").GetInt32()));
        Assert.Equal([1, 3, 4], taken.GetProperty("refused").EnumerateArray().Select(static f => f.GetProperty("line").GetInt32()).Order());
        Assert.Equal(2, course.Version);
        Assert.Equal("contradiction", Assert.Single(course.Refuses("import", path, "--accept-good")).Code);
    }

    [Theory]
    [InlineData("", "missingField")]
    [InlineData("time,pumpFlowLPerMin\n2026-01-02T03:04Z,\"4.1\n", "malformedText")]
    [InlineData("pumpFlowLPerMin\n4\n", "missingField")]
    [InlineData("time,pumpFlowLPerMin\n2026-01-02T03:04,4\n", "malformedText")]
    [InlineData("time,pumpFlowLPerMin\n2126-01-02T03:04Z,4\n", "outOfRange")]
    [InlineData("\0\u0001", "wrongEncoding")]
    public void A_malformed_file_is_refused(string text, string code)
    {
        CourseFolder course = new(record);
        Assert.Equal(code, course.Refuses("import", Written($"{Guid.NewGuid():N}.csv", text))[0].Code);
        Assert.Equal(1, course.Version);
    }

    [Fact]
    public void An_oversized_or_missing_file_is_refused()
    {
        CourseFolder course = new(record);
        string large = record["large.csv"];
        File.WriteAllBytes(large, new byte[ObservationCsv.LargestBytes + 1]);
        Assert.Equal("fileTooLarge", Assert.Single(course.Refuses("import", large)).Code);
        Assert.Equal("unreadableFile", Assert.Single(course.Refuses("import", record["nowhere.csv"])).Code);
        Assert.Equal("unreadableFile", Assert.Single(course.Refuses("case", record["nowhere.json"])).Code);
        Assert.Equal(1, course.Version);
    }

    [Fact]
    public void What_someone_wrote_does_not_steer_a_terminal()
    {
        CourseFolder course = new(record);
        Assert.Equal("wrongKind", Assert.Single(course.Refuses("enter note-written --set", "text=\u001b[2Jgone")).Code);
        Assert.Equal(1, course.Version);
    }

    private string Written(string name, string text)
    {
        File.WriteAllText(record[name], text, new UTF8Encoding(false));
        return record[name];
    }
}
