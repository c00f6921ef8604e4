using System.Text.RegularExpressions;
using Cavaxis.Cli;
using Cavaxis.EndToEnd.Tests.RecordVerbs;

namespace Cavaxis.EndToEnd.Tests.CourseVerbs;

/// <summary>Every verb of a course against every role.</summary>
public sealed partial class CourseRoleTests(RecordFolder record) : IClassFixture<RecordFolder>
{
    private const string Case = "course case PATIENT CASE";
    private const string Plan = "course plan PATIENT --quick --anatomies 200";
    private const string Place = "course place PATIENT drainage --role drainage";
    private const string Start = "course start PATIENT vaFemoral";
    private const string Wean = "course wean start PATIENT flowSteps";
    private const string Seen = "course complication seen PATIENT stroke --gravity watched";
    private const string Note = "course enter PATIENT note-written --set text=something";

    private static readonly string[] Readers = ["rita", "cleo", "lena"];
    private static readonly string[] Writers = ["cleo", "lena"];
    private static readonly string[] Everyone = ["ada", "rita", "cleo", "lena", "sven", "oda"];

    /// <summary>Verb, the roles that may do it (the table of docs/models/records.md), and what must have been done before.</summary>
    private static readonly (string Verb, string[] Allowed, string[] Before)[] Table =
    [
        ("course show PATIENT", Readers, []),
        ("course positions PATIENT", Readers, []),
        ("course explain PATIENT", Readers, []),
        ("course recirculation PATIENT", Readers, []),
        ("course support PATIENT", Readers, []),
        ("course wean show PATIENT", Readers, []),
        ("course follow-up show PATIENT", Readers, []),
        (Case, Writers, []),
        (Plan, Writers, [Case]),
        ("course step PATIENT 1 --skip looked-elsewhere --second Bo", Writers, [Case, Plan]),
        (Place, Writers, []),
        ("course move PATIENT drainage --depth 20 --reason slipped", Writers, [Place]),
        ("course position PATIENT drainage --depth 20 --seen-by plainFilm", Writers, [Place]),
        ("course remove PATIENT drainage --method skinSuture", Writers, [Place]),
        (Start, Writers, []),
        ("course change PATIENT vavFemoral --reason hypoxaemia", Writers, [Start]),
        ("course stop PATIENT recovered", Writers, [Start]),
        ("course observe PATIENT inletPressureMmHg -80 mmHg", Writers, []),
        ("course import PATIENT CSV", Writers, []),
        (Seen, Writers, []),
        ("course complication over PATIENT 2 --result gone", Writers, [Seen]),
        (Wean, Writers, [Start]),
        ("course wean step PATIENT --flow 1", Writers, [Start, Wean]),
        ("course wean end PATIENT completed", Writers, [Start, Wean]),
        ("course follow-up plan PATIENT call --what telephone --from 2031-02-03T04:05Z --by 2031-02-04T04:05Z", Writers, []),
        ("course follow-up found PATIENT --finding well", Writers, []),
        ("course outcome PATIENT survivedToDischarge", Writers, []),
        (Note, Writers, []),
        ("course correct PATIENT 2 --set text=other --reason slip", Writers, [Note]),
        ("course withdraw PATIENT 2 --reason slip", Writers, [Note]),
        ("programme outcomes --programme north", ["lena"], []),
    ];

    public static TheoryData<string> Verbs => [.. Table.Select(static row => row.Verb)];

    public static TheoryData<string> VerbsOfOnePatient => [.. Table.Select(static row => row.Verb).Where(static v => v.Contains("PATIENT", StringComparison.Ordinal))];

    [Theory]
    [MemberData(nameof(Verbs))]
    public void A_verb_is_done_by_those_whose_role_allows_it_and_refused_to_all_others(string verb)
    {
        (_, string[] allowed, string[] before) = Table.Single(row => row.Verb == verb);
        foreach (string name in Everyone)
        {
            string patient = record.Patient;
            if (allowed.Contains(name) && before.Length > 0)
            {
                patient = record.As("lena", "patient", "admit", "--programme", "north").Out.Trim();
                foreach (string one in before)
                {
                    (ExitCode prepared, string text, string wrong) = record.As("lena", Arguments(one, patient));
                    Assert.True(prepared == ExitCode.Done, $"{one}: {text}{wrong}");
                }
            }
            else if (allowed.Contains(name) && allowed == Writers)
            {
                patient = record.As("lena", "patient", "admit", "--programme", "north").Out.Trim();
            }

            (ExitCode code, string json, string err) = record.As(name, [.. Arguments(verb, patient), "--json"]);
            Assert.True(code == (allowed.Contains(name) ? ExitCode.Done : ExitCode.InputError), $"{name} {code}: {json} {err}");
            if (!allowed.Contains(name))
            {
                Assert.Contains(RecordFolder.CodeOf(json), new[] { "notAllowed", "notThere" });
            }
        }
    }

    [Theory]
    [MemberData(nameof(VerbsOfOnePatient))]
    public void A_patient_outside_ones_programme_looks_like_one_that_does_not_exist(string verb)
    {
        string none = new('0', 32);
        (ExitCode, string, string) Ask(string patient)
        {
            (ExitCode code, string text, string err) = record.As("lena", Arguments(verb, patient));
            return (code, text.Replace(patient, "(asked)", StringComparison.Ordinal), err.Replace(patient, "(asked)", StringComparison.Ordinal));
        }

        Assert.Equal(Ask(none), Ask(record.Foreign));
        Assert.Equal(ExitCode.InputError, Ask(record.Foreign).Item1);
    }

    [Fact]
    public void Whoever_may_not_write_learns_nothing_of_what_is_wrong_with_their_writing() => Assert.All(
        new[] { "course observe PATIENT nothing many furlongs", "course step PATIENT 99", "course import PATIENT nowhere", "course withdraw PATIENT 999", "course place PATIENT d --role none --at yesterday" },
        verb => Assert.Equal("notAllowed", RecordFolder.CodeOf(record.As("rita", [.. Arguments(verb, record.Patient), "--json"]).Out)));

    [Theory]
    [InlineData("course")]
    [InlineData("course wean")]
    [InlineData("course follow-up")]
    [InlineData("course complication")]
    public void No_verb_is_missing_from_this_table(string branch)
    {
        string help = RecordFolder.Run([], [.. branch.Split(' '), "--help"]).Out;
        string[] listed = [.. Command().Matches(help[help.IndexOf("COMMANDS", StringComparison.Ordinal)..]).Select(static m => m.Groups[1].Value)];
        Assert.True(listed.Length > 1, help);
        Assert.All(listed, name => Assert.Contains(Table, row => row.Verb.StartsWith($"{branch} {name} ", StringComparison.Ordinal)));
    }

    [GeneratedRegex("^    ([a-z][a-z-]*) ", RegexOptions.Multiline)]
    private static partial Regex Command();

    private string[] Arguments(string verb, string patient)
    {
        string csv = record["few.csv"];
        File.WriteAllText(csv, "time,pumpFlowLPerMin\n2026-01-02T03:04Z,4.1\n");
        return [.. verb.Split(' ').Select(word => word switch { "PATIENT" => patient, "CASE" => CourseFolder.Demo("running-veno-venous.json"), "CSV" => csv, _ => word })];
    }
}
