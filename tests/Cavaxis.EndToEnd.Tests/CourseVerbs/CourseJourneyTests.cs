using System.Globalization;
using System.Text.Json;
using Cavaxis.EndToEnd.Tests.RecordVerbs;

namespace Cavaxis.EndToEnd.Tests.CourseVerbs;

/// <summary>One invented patient from admission to the examination after support, through the command line alone.</summary>
public sealed class CourseJourneyTests(RecordFolder record) : IClassFixture<RecordFolder>
{
    [Fact]
    public void A_patient_is_admitted_planned_placed_run_weaned_removed_and_followed_up()
    {
        CourseFolder course = new(record);
        course.Does("case", CourseFolder.Demo("running-veno-venous.json"));
        Assert.Equal("course.plan-chosen", Kind(course.Does("plan --quick --anatomies 200")));
        JsonElement sheet = course.Does("show").GetProperty("runSheet");
        Assert.True(sheet.GetProperty("steps").GetArrayLength() >= 10);

        // Step 1 is a hard stop: it is refused without what was seen and by whom, and everything after it is held.
        Assert.Contains(course.Refuses("step 1"), static f => f.Field == "seen");
        Assert.Contains(course.Refuses("step 1"), static f => f.Field == "confirmedBy");
        Assert.Contains(course.Refuses("step 2 --evidence wire"), static f => f.Field == "steps[1]");
        course.Does("step 1 --evidence lengths-agree --second", "Bo (invented)");
        Assert.Equal("skipped", Step(course.Does("step 2 --skip", "done in the referring room", "--second", "Bo (invented)"), 2).GetProperty("state").GetString());

        course.Does("place drainage --role drainage --route femoralVein --side right --french 25 --depth 44");
        course.Does("place return --role venousReturn --route jugular --side right --french 19 --depth 15");
        JsonElement seen = course.Does("position drainage --seen-by plainFilm --depth 44 --tip icaj:-1");
        Assert.Empty(seen.GetProperty("shown").GetProperty("positions")[0].GetProperty("warnings").EnumerateArray());
        JsonElement moved = course.Does("move drainage --depth 41 --reason", "slipped while turning");
        Assert.Equal(-3, moved.GetProperty("shown").GetProperty("positions")[0].GetProperty("depthShiftCm").GetDouble(), 9);
        Assert.Contains("an image last showed it at 44 cm, 3 cm ", course.Tells("positions"), StringComparison.Ordinal);

        course.Does("start vvTwoSite --at", Ago(120));
        foreach (string read in new[]
        {
            "pumpFlowLPerMin 4.2±0.1 L/min", "preMembraneSaturationPercent 78 %", "postMembraneSaturationPercent 100 %", "postMembranePo2MmHg 400 mm[Hg]", "centralVenousSaturationPercent 66 %",
            "haemoglobinGPerDl 9.5 g/dL", "cardiacOutputLPerMin 6 L/min --origin estimated", "rightArmSaturationPercent 90 %",
        })
        {
            course.Does($"observe {read}");
        }

        // (78 − 66)/(100 − 66) = 35.3 % by the published formula; contents give less, because dissolved oxygen binds on mixing.
        JsonElement recirculation = course.Does("recirculation").GetProperty("byReadings");
        Assert.Equal(100 * 12 / 34.0, Percent(recirculation, "bySaturation"), 6);
        Assert.InRange(Percent(recirculation, "byContent"), 20, 34);
        Assert.Equal(100 * 2.1 / 12, course.Does("recirculation --injection 12.0±0.3/2.1±0.2").GetProperty("byInjections").GetProperty("percent").GetProperty("value").GetDouble(), 6);
        JsonElement support = course.Does("support").GetProperty("support");
        Assert.Equal(4.2 * (1 - (Percent(recirculation, "byContent") / 100)), support.GetProperty("effectiveFlowLPerMin").GetProperty("value").GetDouble(), 1);
        string words = course.Tells("support");
        Assert.All(new[] { "output of the heart 6 ± 0.6 L/min (usual error), estimated", "pump flow 4.2 ± 0.1 L/min (given error), measured", "not a certified medical device" }, text => Assert.Contains(text, words, StringComparison.Ordinal));
        Assert.Equal(1, course.Does("explain").GetProperty("report").GetProperty("explanations").EnumerateArray().Sum(static e => e.GetProperty("probability").GetDouble()), 6);
        Assert.Contains("Look at next:", course.Tells("explain"), StringComparison.Ordinal);

        course.Does("wean start sweepSteps --at", Ago(60));
        Assert.Equal("notMeasured", course.Does("wean step --flow 3 --sweep 0 --held 30 --read", "rightArmSaturationPercent=94 %").GetProperty("shown").GetProperty("judgement").GetProperty("success")
            .EnumerateArray().Select(static f => f.GetProperty("judgement").GetProperty("verdict").GetString()).Distinct().Last(static v => v == "notMeasured"));
        course.Does("wean end completed");
        Assert.Contains("unknown, not measured", course.Tells("wean show"), StringComparison.Ordinal);

        course.Does("complication seen cannulationSiteBleeding --gravity treated --cannula drainage");
        course.Does("stop recovered");
        course.Does("remove drainage --method skinSuture --clot no");
        JsonElement due = course.Does("remove return --method pulledAndCompressed").GetProperty("shown").GetProperty("items");
        Assert.Equal(["vein-duplex-early", "vein-duplex-before-discharge"], due.EnumerateArray().Select(static i => i.GetProperty("item").GetProperty("key").GetString()));
        JsonElement after = course.Does("follow-up found --item vein-duplex-early --vein right:commonFemoral=none --vein right:internalJugular=partial").GetProperty("shown").GetProperty("items");
        Assert.Contains(after.EnumerateArray(), static i => i.GetProperty("item").GetProperty("key").GetString() == "thrombus-review");
        course.Does("outcome survivedToDischarge");

        JsonElement outcomes = JsonDocument.Parse(record.As("lena", "programme", "outcomes", "--programme", "north", "--expected-death", "0.4", "--json").Out).RootElement;
        Assert.True(outcomes.GetProperty("isSmall").GetBoolean());
        JsonElement survived = outcomes.GetProperty("outcomes").GetProperty("shares").EnumerateArray().First();
        Assert.Equal((1, 1), (survived.GetProperty("events").GetInt32(), survived.GetProperty("known").GetInt32()));
        Assert.Contains("SMALL NUMBERS", record.As("lena", "programme", "outcomes", "--programme", "north").Out, StringComparison.Ordinal);

        JsonElement end = course.Does("show");
        Assert.Equal(JsonValueKind.Null, end.GetProperty("running").ValueKind);
        Assert.Empty(end.GetProperty("cannulae").EnumerateArray());
        Assert.Single(end.GetProperty("openComplications").EnumerateArray());
        Assert.Equal(end.GetProperty("version").GetInt64() - 1, end.GetProperty("timeline").GetArrayLength());
    }

    [Fact]
    public void What_was_wrong_is_put_right_or_taken_back_and_stays_visible()
    {
        CourseFolder course = new(record);
        course.Does("observe pumpFlowLPerMin 9.2 L/min");
        JsonElement corrected = course.Does("correct 2 --set readings[0].value=4.2 --reason", "a slip of the finger");
        Assert.Equal(2, corrected.GetProperty("entries").GetArrayLength());
        JsonElement shown = course.Does("show");
        Assert.Equal(4.2, shown.GetProperty("lastReadings")[0].GetProperty("value").GetDouble());
        Assert.Equal("Pump flow 9.2 L/min", shown.GetProperty("timeline")[0].GetProperty("earlier")[0].GetString());
        Assert.Contains("Entry 2 put right: a slip of the finger", course.Tells("show"), StringComparison.Ordinal);
        course.Does("withdraw 2 --reason", "another patient");
        Assert.Empty(course.Does("show").GetProperty("lastReadings").EnumerateArray());
        Assert.Contains("WITHDRAWN", course.Tells("show"), StringComparison.Ordinal);
        Assert.Equal("notFound", Assert.Single(course.Refuses("withdraw 2 --reason again")).Code);
    }

    private static string Ago(int minutes) => DateTimeOffset.UtcNow.AddMinutes(-minutes).ToString("yyyy-MM-dd'T'HH:mm'Z'", CultureInfo.InvariantCulture);

    private static string Kind(JsonElement done) => done.GetProperty("entries")[0].GetProperty("kind").GetString()!;

    private static JsonElement Step(JsonElement done, int number) => done.GetProperty("shown").GetProperty("steps")[number - 1];

    private static double Percent(JsonElement recirculation, string method) => recirculation.GetProperty(method).GetProperty("percent").GetProperty("value").GetDouble();
}
