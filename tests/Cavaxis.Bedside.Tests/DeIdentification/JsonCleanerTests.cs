using System.Text;
using System.Text.Json.Nodes;
using Cavaxis.Bedside.DeIdentification;

namespace Cavaxis.Bedside.Tests.DeIdentification;

public class JsonCleanerTests
{
    private static readonly DateTimeOffset Start = new(2031, 2, 3, 4, 0, 0, TimeSpan.Zero);
    private static readonly KnownIdentity Nobody = new(["Mira Quell (invented)", "north", "3f2a"]);

    [Fact]
    public void Numbers_flags_and_words_of_the_program_stay()
    {
        JsonObject clean = Clean("""{"readings":[{"quantity":"pumpFlowLPerMin","value":4.2}],"role":"drainage","clotOnCannula":true,"remark":null}""", out _);
        Assert.Equal("""{"readings":[{"quantity":"pumpFlowLPerMin","value":4.2}],"role":"drainage","clotOnCannula":true}""", clean.ToJsonString());
    }

    [Theory]
    [InlineData("""{"name":"Mira Quell"}""")]
    [InlineData("""{"patientName":"Mira"}""")]
    [InlineData("""{"initials":"MQ"}""")]
    [InlineData("""{"mrn":4711}""")]
    [InlineData("""{"birthDate":"1940-01-02"}""")]
    [InlineData("""{"yearOfBirth":1940}""")]
    [InlineData("""{"confirmedBy":{"name":"Mira","person":"mira"}}""")]
    [InlineData("""{"programme":"north","who":"mira"}""")]
    [InlineData("""{"image":{"file":"mira.dcm"}}""")]
    [InlineData("""{"remark":"Mira looked well"}""")]
    [InlineData("""{"deep":[{"er":{"note":"call 0123 456789"}}]}""")]
    [InlineData("""{"caseText":"{\"patient\":{\"sex\":\"male\"},\"notes\":\"Mira\"}"}""")]
    [InlineData("""{"caseText":"{\"patient\":{\"sex\":\"male\",\"name\":\"Mira\",\"kin\":\"Mira\",\"deeper\":{\"patient\":\"Mira\"}}}"}""")]
    [InlineData("""{"caseText":"{broken Mira"}""")]
    [InlineData("""{"number":123456789}""")]
    [InlineData("""{"Mira Quell":1}""")]
    [InlineData("""{"fileSha256":"0b1c2d3e4f50617283940b1c2d3e4f50617283940b1c2d3e4f5061728394aabb"}""")]
    public void What_names_someone_or_was_written_freely_is_taken_out_and_listed(string json)
    {
        JsonObject clean = Clean(json, out JsonCleaner cleaner);
        string text = clean.ToJsonString();
        Assert.All(new[] { "Mira", "mira", "MQ", "4711", "1940", "north", "0123", "123456789", "0b1c" }, part => Assert.DoesNotContain(part, text, StringComparison.Ordinal));
        Assert.NotEmpty(cleaner.TakenOut);
        Assert.All(cleaner.TakenOut, static t => Assert.DoesNotContain("Mira", t.Place + t.Why, StringComparison.OrdinalIgnoreCase));
    }

    [Fact]
    public void Age_sex_and_size_of_the_case_go_along_without_its_name() => Assert.Equal(
        """{"caseText":{"patient":{"ageYears":40,"sex":"male","heightCm":180}}}""",
        Clean("""{"caseText":"{\"title\":\"Mira\",\"patient\":{\"ageYears\":40,\"sex\":\"male\",\"heightCm\":180,\"initials\":\"MQ\"}}"}""", out _).ToJsonString());

    [Fact]
    public void Moments_become_minutes_from_the_start_of_support()
    {
        Assert.Equal("""{"due":"day +7 from the start of support","at":"+125 min from the start of support","was":"-60 min from the start of support"}""",
            Clean("""{"due":"2031-02-10","at":"2031-02-03T06:05:59Z","was":"2031-02-03T04:00:00+01:00"}""", out _).ToJsonString().Replace("\\u002B", "+", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(89, "89")]
    [InlineData(90, "\"90 or older\"")]
    [InlineData(104, "\"90 or older\"")]
    public void Ages_above_89_are_grouped(int age, string told) => Assert.Equal($$"""{"ageYears":{{told}}}""", Clean($$"""{"ageYears":{{age}}}""", out _).ToJsonString());

    [Fact]
    public void A_free_text_stays_where_it_is_confirmed_and_another_text_at_its_place_does_not()
    {
        string code = JsonCleaner.CodeOf("entry 1/remark", "line shakes when coughing");
        Assert.Equal("""{"remark":"line shakes when coughing"}""", Clean("""{"remark":"line shakes when coughing"}""", out _, code).ToJsonString());
        Assert.Equal("{}", Clean("""{"remark":"line shakes when Mira coughs"}""", out _, code).ToJsonString());
    }

    [Theory]
    [InlineData("seen by Quell")]
    [InlineData("seen by QUELL.")]
    [InlineData("moved on 3.2.2031")]
    [InlineData("moved on 03/02/31")]
    [InlineData("moved on 3 Feb")]
    [InlineData("since February 3")]
    [InlineData("since 2031")]
    [InlineData("mail a@b.example")]
    [InlineData("ring 0123 45 67 89")]
    [InlineData("file 1234567")]
    public void A_confirmed_text_that_still_holds_identity_is_taken_out(string text)
    {
        JsonObject clean = Clean(new JsonObject { ["remark"] = text }.ToJsonString(), out JsonCleaner cleaner, JsonCleaner.CodeOf("entry 1/remark", text));
        Assert.Equal("{}", clean.ToJsonString());
        Assert.Contains("was confirmed but holds", Assert.Single(cleaner.TakenOut).Why, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("flow 4.2 L/min at 3400 rpm, inlet -80 to -120 mmHg")]
    [InlineData("tip 2.5 cm below the junction; may be a clot")]
    public void Numbers_of_the_bedside_are_no_identity(string text) => Assert.Null(Nobody.FoundIn(text));

    [Fact]
    public void Names_that_the_team_gave_cannulae_become_numbers_that_still_tell_same_from_other()
    {
        JsonCleaner cleaner = new(Start, new HashSet<string>(), Nobody);
        string[] names = [.. new[] { "drainage", "Mira's second", "third", "Mira's second" }.Select((n, i) =>
            cleaner.Clean(Encoding.UTF8.GetBytes(new JsonObject { ["cannula"] = n }.ToJsonString()), $"entry {i}")["cannula"]!.GetValue<string>())];
        Assert.Equal(["drainage", "cannula 1", "cannula 2", "cannula 1"], names);
    }

    private static JsonObject Clean(string json, out JsonCleaner cleaner, params string[] confirmed)
    {
        cleaner = new JsonCleaner(Start, confirmed.ToHashSet(StringComparer.Ordinal), Nobody);
        return cleaner.Clean(Encoding.UTF8.GetBytes(json), "entry 1");
    }
}
