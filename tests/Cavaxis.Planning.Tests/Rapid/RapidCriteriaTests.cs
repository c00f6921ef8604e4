using System.Text;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using Cavaxis.Planning.Rapid;
using Cavaxis.Planning.Tests.Case;
using Cavaxis.Quantities;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Planning.Tests.Rapid;

public partial class RapidCriteriaTests
{
    private static readonly byte[] BuiltIn = File.ReadAllBytes(Path.Combine(RepositoryFolder.Root, "catalogue", "rapid-criteria.json"));

    public static TheoryData<string, FaultCode, string> Faults => new()
    {
        { """{"criteria[0].source":"nobody"}""", FaultCode.NotFound, "nobody" },
        { """{"criteria[0].when.question":"agee"}""", FaultCode.NotFound, "agee" },
        { """{"criteria[0].when.upper":null}""", FaultCode.Contradiction, "between" },
        { """{"criteria[0].when.upper":18}""", FaultCode.Contradiction, "between" },
        { """{"criteria[0].when.comparison":"is"}""", FaultCode.Contradiction, "is" },
        { """{"criteria[0].when.comparison":"around"}""", FaultCode.NotAChoice, "around" },
        { """{"criteria[0].when":null}""", FaultCode.Contradiction, "c001" },
        { """{"criteria[0].certainty":null}""", FaultCode.MissingField, "(nothing)" },
        { """{"criteria[0].situations":[]}""", FaultCode.WrongLength, "(nothing)" },
        { """{"criteria[0].parts":["c002"],"criteria[0].needed":1,"criteria[0].when":null}""", FaultCode.NotFound, "c002" },
        { """{"criteria[1].id":"c001"}""", FaultCode.DuplicateField, "c001" },
        { """{"sources[0].citation":" "}""", FaultCode.WrongLength, "(nothing)" },
        { """{"situations[0].goal":null}""", FaultCode.Contradiction, "arrestOutOfHospital" },
        { """{"situations[0].situation":"trauma"}""", FaultCode.DuplicateField, "trauma" },
        { """{"questions[0].unit":null}""", FaultCode.Contradiction, "ageYears" },
        { """{"cohorts[0].count":15}""", FaultCode.Contradiction, "s001" },
        { """{"cohorts[0].of":null}""", FaultCode.Contradiction, "s001" },
        { """{"cohorts[0].sharePercent":43}""", FaultCode.Contradiction, "s001" },
        { """{"cohorts[0].certainty":"fromMemory"}""", FaultCode.Contradiction, "s001" },
        { """{"cohorts[0].printedLowPercent":50,"cohorts[0].printedHighPercent":60}""", FaultCode.Contradiction, "s001" },
        { """{"conflicts[0].cohorts":["s063","s999"]}""", FaultCode.NotFound, "s999" },
        { """{"criterias":1}""", FaultCode.UnknownField, "1" },
    };

    [Fact]
    public void The_published_file_is_the_built_in_one()
    {
        RapidCriteria read = RapidCriteriaReader.Read(BuiltIn);
        Assert.Empty(RapidCriteriaComparison.Changes(read));
        Assert.Equal(Minutes.Own.Edition, read.Edition);
    }

    [Fact]
    public void Every_criterion_finding_and_row_has_a_source_and_a_certainty()
    {
        HashSet<string> sources = [.. Minutes.Own.Sources.Where(static s => s.Citation.Length > 8).Select(static s => s.Id)];
        Assert.All(Minutes.Own.Criteria, c => Assert.True(sources.Contains(c.Source) && Enum.IsDefined(c.Certainty) && c.Strength.Length > 3 && c.Wording.Length > 3, c.Id));
        Assert.All(Minutes.Own.Cohorts, c => Assert.True(sources.Contains(c.Source) && Enum.IsDefined(c.Certainty), c.Id));
        Assert.All(Minutes.Own.Situations.SelectMany(static s => s.Findings), f => Assert.True(sources.Contains(f.Source) && f.Resolve.Length > 5, f.Id));
        Assert.All(Minutes.Own.Sources, s => Assert.True(Minutes.Own.Criteria.Any(c => c.Source == s.Id) || Minutes.Own.Cohorts.Any(c => c.Source == s.Id) || Minutes.Own.Situations.Any(x => x.Findings.Any(f => f.Source == s.Id)), s.Id));
    }

    [Fact]
    public void Every_situation_has_findings_of_its_own()
    {
        Assert.All(Minutes.Own.Situations, static s => Assert.NotEmpty(s.Findings));
        Assert.Equal(Enum.GetValues<RapidSituation>().Order(), Minutes.Own.Situations.Select(static s => s.Situation).Order());
    }

    [Fact]
    public void No_trial_hospital_or_place_is_named_and_nothing_is_promised() => Assert.DoesNotMatch(Names(), Encoding.UTF8.GetString(BuiltIn));

    [Theory]
    [MemberData(nameof(Faults))]
    public void What_is_wrong_is_named(string changes, FaultCode code, string value)
    {
        JsonNode file = Changed(changes);
        InputFaultException fault = Assert.Throws<InputFaultException>(() => RapidCriteriaReader.Read(Encoding.UTF8.GetBytes(file.ToJsonString())));
        Assert.Contains(fault.Faults, f => f.Code == code && f.Value.Contains(value, StringComparison.Ordinal));
        Assert.All(fault.Faults, static f => Assert.True(f.Accepted.Length > 3 && f.Remedy.Length > 5, f.ToString()));
    }

    [Theory]
    [InlineData("")]
    [InlineData("{")]
    [InlineData("[]")]
    [InlineData("null")]
    public void What_is_no_file_of_criteria_is_refused(string text) =>
        Assert.NotEmpty(Assert.Throws<InputFaultException>(() => RapidCriteriaReader.Read(Encoding.UTF8.GetBytes(text))).Faults);

    [Fact]
    public void A_changed_file_needs_who_and_why_and_its_changes_stand_on_the_result()
    {
        const string Change = """{"criteria[0].when.upper":80}""";
        InputFaultException fault = Assert.Throws<InputFaultException>(() => Read(Change));
        Assert.Contains("changedBy", Assert.Single(fault.Faults).Field, StringComparison.Ordinal);
        RapidCriteria own = Read("""{"criteria[0].when.upper":80,"changedBy":"an invented programme","changeReason":"test"}""");
        Assert.Equal(["criterion c001 is changed (changed by an invented programme: test)"], Minutes.Of(Minutes.Man, own).CriteriaChanges);
        CriterionReading At(RapidCriteria criteria) => Minutes.Of(new RapidInput(78, Anatomy.Body.Sex.Male, 80), criteria).Criteria.Single(static c => c.Id == "c001");
        Assert.Equal((CriterionVoice.For, CriterionVoice.Against), (At(own).Voice, At(Minutes.Own).Voice));
    }

    [Fact]
    public void What_is_remembered_says_so()
    {
        Assert.Equal(Certainty.FromMemory, Minutes.Own.Criteria.Single(static c => c.Id == "c071").Certainty);
        Assert.All(Minutes.Own.Criteria.Where(static c => c.Source is "richardson-2021" or "societies-2009" or "michels-2018" && c.Id is not ("c056" or "c074")), static c => Assert.Equal(Certainty.FromMemory, c.Certainty));
    }

    private static RapidCriteria Read(string changes) => RapidCriteriaReader.Read(Encoding.UTF8.GetBytes(Changed(changes).ToJsonString()));

    /// <summary>The built-in file with some fields set, or taken away where the value is null.</summary>
    private static JsonNode Changed(string changes)
    {
        JsonNode file = JsonNode.Parse(BuiltIn)!;
        foreach ((string path, JsonNode? value) in JsonNode.Parse(changes)!.AsObject())
        {
            JsonNode at = file;
            string[] steps = path.Split('.');
            foreach (string step in steps[..^1])
            {
                string[] parts = step.TrimEnd(']').Split('[');
                at = parts.Length > 1 ? at[parts[0]]![int.Parse(parts[1], System.Globalization.CultureInfo.InvariantCulture)]! : at[parts[0]]!;
            }

            if (value is null)
            {
                at.AsObject().Remove(steps[^1]);
            }
            else
            {
                at[steps[^1]] = value.DeepClone();
            }
        }

        return file;
    }

    [GeneratedRegex(@"\b(ARREST|Prague|INCEPTION|SAVE|HOPE|Berlin|EOLIA|ENCOURAGE|RESP|RESCUE|PRESERVE|PRESET|TiPS65|Tromso|Paris|London|Michigan|Minnesota)\b|\bsaf(e|er|est|ely|ety)\b")]
    private static partial Regex Names();
}
