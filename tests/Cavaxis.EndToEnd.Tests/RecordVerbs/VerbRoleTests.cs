using Cavaxis.Cli;

namespace Cavaxis.EndToEnd.Tests.RecordVerbs;

/// <summary>Every verb of the record against every role.</summary>
public sealed class VerbRoleTests(RecordFolder record) : IClassFixture<RecordFolder>
{
    private const string FirstPassword = "brisk otter under slate";

    /// <summary>Verb, and the roles that may do it: the table of docs/models/records.md.</summary>
    private static readonly (string Verb, string[] Allowed)[] Table =
    [
        ("record verify", ["ada"]),
        ("record anchor", ["ada"]),
        ("record backup BACKUP", ["ada"]),
        ("record restore KEPT --store NEW", ["ada"]),
        ("record recover KEPT --store NEW", ["ada"]),
        ("people list", ["ada", "oda"]),
        ("people add NEWNAME --role reader --programme north", ["ada"]),
        ("people role rita --role reader --programme north", ["ada"]),
        ("people close SOMEONE", ["ada"]),
        ("people password OTHER", ["ada"]),
        ("people unlock rita", ["ada"]),
        ("patient list", ["rita", "cleo", "lena", "sven"]),
        ("patient show PATIENT", ["rita", "cleo", "lena"]),
        ("patient admit --programme north", ["cleo", "lena"]),
        ("patient audit --programme north", ["ada", "lena"]),
        ("patient handover PATIENT --report SHEET.pdf", ["rita", "cleo", "lena"]),
        ("patient report PATIENT --report SHEET.html", ["rita", "cleo", "lena"]),
        ("patient fhir PATIENT --to SHEET.json", ["rita", "cleo", "lena"]),
        ("programme csv --programme north --to SHEET.csv", ["lena"]),
    ];

    private static readonly string[] Everyone = ["ada", "rita", "cleo", "lena", "sven", "oda"];

    public static TheoryData<string, string, bool> Cells
    {
        get
        {
            TheoryData<string, string, bool> cells = [];
            foreach ((string verb, string[] allowed) in Table)
            {
                foreach (string name in Everyone)
                {
                    cells.Add(verb, name, allowed.Contains(name));
                }
            }

            return cells;
        }
    }

    [Theory]
    [MemberData(nameof(Cells))]
    public void A_verb_is_done_by_those_whose_role_allows_it_and_refused_to_all_others(string verb, string name, bool allowed)
    {
        (ExitCode code, string json, string err) = record.As(name, [FirstPassword], [.. Arguments(verb, name), "--json"]);
        Assert.True(code == (allowed ? ExitCode.Done : ExitCode.InputError), $"{code}: {json} {err}");
        Assert.Equal(string.Empty, err);
        if (!allowed)
        {
            Assert.Contains(RecordFolder.CodeOf(json), new[] { "notAllowed", "notThere" });
        }
    }

    [Theory]
    [MemberData(nameof(Verbs))]
    public void A_verb_is_refused_to_whoever_is_not_signed_in(string verb)
    {
        (ExitCode code, string json, _) = RecordFolder.Run(["not the word of ada"], [.. Arguments(verb, "ada"), "--as", "nobody", .. verb.Contains("--store", StringComparison.Ordinal) ? Array.Empty<string>() : ["--store", record.Store], "--json"]);
        Assert.Equal(ExitCode.InputError, code);
        Assert.Equal(verb.StartsWith("record recover", StringComparison.Ordinal) ? "notAllowed" : "notSignedIn", RecordFolder.CodeOf(json));
    }

    public static TheoryData<string> Verbs => [.. Table.Select(static row => row.Verb)];

    [Theory]
    [InlineData("patient show")]
    public void A_patient_outside_ones_programme_looks_like_one_that_does_not_exist(string verb)
    {
        string none = new('0', 32);
        foreach (bool json in new[] { false, true })
        {
            (ExitCode, string, string) Ask(string patient)
            {
                (ExitCode code, string text, string err) = record.As("lena", [.. verb.Split(' '), patient, .. json ? new[] { "--json" } : []]);
                return (code, text.Replace(patient, "(asked)", StringComparison.Ordinal), err.Replace(patient, "(asked)", StringComparison.Ordinal));
            }

            Assert.Equal(Ask(none), Ask(record.Foreign));
            Assert.Equal(ExitCode.InputError, Ask(record.Foreign).Item1);
        }
    }

    private string[] Arguments(string verb, string name)
    {
        string fresh = Guid.NewGuid().ToString("N");
        string kept = record["kept.db"];
        if (verb.Contains("KEPT", StringComparison.Ordinal) && !File.Exists(kept))
        {
            Assert.Equal(ExitCode.Done, record.As("ada", "record", "backup", kept).Code);
        }

        if (verb.Contains("SOMEONE", StringComparison.Ordinal))
        {
            Assert.Equal(ExitCode.Done, record.As("ada", [FirstPassword], "people", "add", "t" + fresh, "--role", "reader", "--programme", "north").Code);
        }

        return [.. verb.Split(' ').Select(word => word switch
        {
            "BACKUP" or "NEW" => record[fresh + ".db"],
            ['S', 'H', 'E', 'E', 'T', .. string ending] => record[fresh + ending],
            "KEPT" => kept,
            "NEWNAME" => "n" + fresh,
            "SOMEONE" => "t" + fresh,
            // One may always change one's own; the person asked about here is someone else.
            "OTHER" => Spare(),
            "PATIENT" => record.Patient,
            _ => word,
        })];
    }

    private string Spare()
    {
        _ = record.As("ada", [FirstPassword], "people", "add", "spare", "--role", "reader", "--programme", "north");
        return "spare";
    }
}
