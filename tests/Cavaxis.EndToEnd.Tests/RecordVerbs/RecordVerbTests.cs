using System.Text.Json;
using Cavaxis.Cli;
using Microsoft.Data.Sqlite;

namespace Cavaxis.EndToEnd.Tests.RecordVerbs;

/// <summary>The record's life through the command line.</summary>
public sealed class RecordVerbTests : IDisposable
{
    private readonly RecordFolder record = new();

    public void Dispose() => record.Dispose();

    [Fact]
    public void A_record_is_founded_once()
    {
        (ExitCode code, string json, _) = record.As("eve", "record", "create", "--programme", "north", "--json");
        Assert.Equal((ExitCode.InputError, "alreadyThere"), (code, RecordFolder.CodeOf(json)));
    }

    [Fact]
    public void A_mistyped_path_makes_no_new_record()
    {
        (ExitCode code, string json, _) = record.As("ada", "patient", "list", "--store", record["misspelt.db"], "--json");
        Assert.Equal((ExitCode.InputError, "notFound"), (code, RecordFolder.CodeOf(json)));
        Assert.False(File.Exists(record["misspelt.db"]));
    }

    [Fact]
    public void Verify_ends_with_1_where_an_event_was_altered_and_names_it()
    {
        string anchor = record["anchor.txt"];
        Assert.Equal(ExitCode.Done, record.As("ada", "record", "anchor", "--out", anchor).Code);
        Assert.Equal(ExitCode.Done, record.As("ada", "record", "verify", "--anchor", anchor).Code);
        Past("DROP TRIGGER event_is_never_changed; UPDATE event SET payload = CAST(replace(CAST(payload AS TEXT), 'north', 'morth') AS BLOB) WHERE kind = 'patient.admitted' AND CAST(payload AS TEXT) LIKE '%north%'");
        (ExitCode code, string json, _) = record.As("ada", "record", "verify", "--anchor", anchor, "--json");
        using JsonDocument answer = JsonDocument.Parse(json);
        Assert.Equal(ExitCode.StopFound, code);
        Assert.False(answer.RootElement.GetProperty("whole").GetBoolean());
        Assert.Equal("altered", answer.RootElement.GetProperty("brokenHow").GetString());
        Assert.True(answer.RootElement.GetProperty("brokenAt").GetInt64() > 1);
        Assert.Contains("ALTERED", record.As("ada", "record", "verify").Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Verify_tells_where_a_record_is_broken_that_takes_no_sign_in_any_more()
    {
        Past("DROP TRIGGER event_is_never_changed; UPDATE event SET who = 'x' WHERE position = (SELECT max(position) FROM event)");
        (ExitCode code, string json, _) = record.As("ada", "record", "verify", "--json");
        using JsonDocument answer = JsonDocument.Parse(json);
        Assert.Equal((ExitCode.StopFound, true), (code, answer.RootElement.GetProperty("nobodySignedIn").GetBoolean()));
    }

    [Fact]
    public void Events_cut_off_the_end_are_found_against_an_anchor_alone()
    {
        string anchor = record["anchor.txt"];
        string copy = record["early.db"];
        Assert.Equal(ExitCode.Done, record.As("ada", "record", "backup", copy).Code);
        Assert.Equal(ExitCode.Done, record.As("cleo", "patient", "admit", "--programme", "north").Code);
        Assert.Equal(ExitCode.Done, record.As("ada", "record", "anchor", "--out", anchor).Code);
        (ExitCode without, _, _) = record.As("ada", "record", "restore", copy, "--store", record["r1.db"]);
        (ExitCode with, string json, _) = record.As("ada", "record", "restore", copy, "--store", record["r2.db"], "--anchor", anchor, "--json");
        Assert.Equal((ExitCode.Done, ExitCode.InputError, "brokenChain"), (without, with, RecordFolder.CodeOf(json)));
    }

    [Fact]
    public void A_backup_restores_to_a_record_in_which_people_sign_in_and_goes_over_nothing()
    {
        string backup = record["backup.db"];
        string target = record["restored.db"];
        Assert.Equal(ExitCode.Done, record.As("ada", "record", "backup", backup).Code);
        Assert.Equal("alreadyThere", RecordFolder.CodeOf(record.As("ada", "record", "backup", backup, "--json").Out));
        Assert.Equal(ExitCode.Done, record.As("ada", "record", "restore", backup, "--store", target).Code);
        Assert.Equal("alreadyThere", RecordFolder.CodeOf(record.As("ada", "record", "restore", backup, "--store", target, "--json").Out));
        Assert.Equal(record.Patient, record.As("rita", "patient", "list", "--store", target).Out.Trim());
        Assert.Equal(ExitCode.Done, record.As("ada", "record", "verify", "--store", target).Code);
    }

    [Fact]
    public void A_damaged_record_is_recovered_for_its_keeper_alone()
    {
        string target = record["recovered.db"];
        const string Fresh = "five plain words for tonight";
        Past("DROP TRIGGER event_is_never_changed; UPDATE event SET who = 'x' WHERE position = (SELECT max(position) FROM event)");
        (ExitCode refused, string json, _) = RecordFolder.Run([Fresh], "record", "recover", record.Store, "--store", target, "--as", "lena", "--json");
        Assert.Equal((ExitCode.InputError, "notAllowed", false), (refused, RecordFolder.CodeOf(json), File.Exists(target)));
        (ExitCode done, string words, _) = RecordFolder.Run([Fresh], "record", "recover", record.Store, "--store", target, "--as", "ada");
        Assert.Equal(ExitCode.StopFound, done);
        Assert.Contains("events recovered", words, StringComparison.Ordinal);
        Assert.Equal(ExitCode.Done, RecordFolder.Run([Fresh], "people", "list", "--store", target, "--as", "ada").Code);
        Assert.Equal(ExitCode.Done, RecordFolder.Run([Fresh], "record", "verify", "--store", target, "--as", "ada").Code);
    }

    [Fact]
    public void A_locked_name_is_unlocked_by_an_administrator()
    {
        for (int i = 0; i < 5; i++)
        {
            Assert.Equal(ExitCode.InputError, RecordFolder.Run(["wrong and wrong again"], "patient", "list", "--as", "rita", "--store", record.Store).Code);
        }

        Assert.Equal("notSignedIn", RecordFolder.CodeOf(record.As("rita", "patient", "list", "--json").Out));
        Assert.Equal(ExitCode.Done, record.As("ada", "people", "unlock", "rita").Code);
        Assert.Equal(ExitCode.Done, record.As("rita", "patient", "list").Code);
    }

    [Fact]
    public void A_role_that_was_ended_and_a_person_closed_out_open_nothing_any_more()
    {
        Assert.Equal("lastAdministrator", RecordFolder.CodeOf(record.As("ada", "people", "close", "ada", "--json").Out));
        Assert.Equal(ExitCode.Done, record.As("ada", "people", "role", "cleo", "--role", "none", "--programme", "north").Code);
        Assert.Equal("notThere", RecordFolder.CodeOf(record.As("cleo", "patient", "show", record.Patient, "--json").Out));
        Assert.Equal(ExitCode.Done, record.As("ada", "people", "close", "rita").Code);
        Assert.Equal("notSignedIn", RecordFolder.CodeOf(record.As("rita", "patient", "list", "--json").Out));
    }

    [Fact]
    public void One_changes_ones_own_password_and_the_old_one_opens_nothing()
    {
        const string Own = "walnut ferry beneath august";
        Assert.Equal(ExitCode.Done, record.As("rita", [Own], "people", "password", "rita").Code);
        Assert.Equal("notSignedIn", RecordFolder.CodeOf(record.As("rita", "patient", "list", "--json").Out));
        Assert.Equal(ExitCode.Done, RecordFolder.Run([Own], "patient", "list", "--as", "rita", "--store", record.Store).Code);
        Assert.Equal("wrongLength", RecordFolder.CodeOf(RecordFolder.Run([Own, "short"], "people", "password", "rita", "--as", "rita", "--store", record.Store, "--json").Out));
    }

    [Fact]
    public void Who_looked_at_whom_is_shown()
    {
        Assert.Contains("patient.admitted", record.As("rita", "patient", "show", record.Patient).Out, StringComparison.Ordinal);
        using JsonDocument audit = JsonDocument.Parse(record.As("lena", "patient", "audit", "--programme", "north", "--json").Out);
        JsonElement one = Assert.Single(audit.RootElement.GetProperty("events").EnumerateArray());
        Assert.Equal(("rita", record.Patient), (one.GetProperty("who").GetString(), one.GetProperty("payload").GetProperty("patient").GetString()));
    }

    private void Past(string statement)
    {
        using SqliteConnection open = new(new SqliteConnectionStringBuilder { DataSource = record.Store, Pooling = false }.ToString());
        open.Open();
        using SqliteCommand command = open.CreateCommand();
        command.CommandText = statement;
        Assert.True(command.ExecuteNonQuery() >= 1);
    }
}
