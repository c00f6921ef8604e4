using System.Runtime.Versioning;
using Cavaxis.Cli;
using Cavaxis.Cli.Secrets;
using Cavaxis.EndToEnd.Tests.Programs;

namespace Cavaxis.EndToEnd.Tests.RecordVerbs;

/// <summary>Where passwords come from, and that they go nowhere.</summary>
public sealed class SecretTests(RecordFolder record) : IClassFixture<RecordFolder>
{
    private static readonly string[] List = ["patient", "list", "--as", "rita", "--json"];

    [Fact]
    public void No_output_and_no_file_repeats_a_password()
    {
        string[][] tries =
        [
            ["patient", "list"], ["patient", "show", "none"], ["people", "list"], ["record", "verify"], ["people", "password", "rita"],
            ["people", "add", RecordFolder.PasswordOf("rita")], ["patient", "list", "--password", RecordFolder.PasswordOf("rita")],
            ["patient", "list", RecordFolder.PasswordOf("rita")], ["patient", RecordFolder.PasswordOf("rita")], ["record", "verify", "--store", $"Host=127.0.0.1;Password={RecordFolder.Marker}"],
            ["record", "verify", "--store", $"Host=127.0.0.1;PWD={RecordFolder.Marker}"], ["patient", "list", $"--password={RecordFolder.Marker}"],
        ];
        foreach (string[] args in tries)
        {
            foreach (string name in new[] { "rita", "ada", "nobody" })
            {
                foreach (string[] more in new[] { Array.Empty<string>(), ["--json"] })
                {
                    (ExitCode code, string text, string err) = record.As(name, [RecordFolder.PasswordOf("rita"), RecordFolder.PasswordOf("rita")], [.. args, .. more]);
                    Assert.NotEqual(ExitCode.InternalError, code);
                    Assert.DoesNotContain(RecordFolder.Marker, args is ["people", "add", ..] ? string.Empty : text + err, StringComparison.Ordinal);
                }
            }
        }

        foreach (string file in Directory.GetFiles(Path.GetDirectoryName(record.Store)!))
        {
            Assert.True(File.ReadAllBytes(file).AsSpan().IndexOf("quince-lantern"u8) < 0, file);
        }
    }

    [Fact]
    [UnsupportedOSPlatform("windows")]
    public void A_password_file_is_read_where_it_is_for_its_owner_alone()
    {
        string file = record["password.txt"];
        File.WriteAllText(file, RecordFolder.PasswordOf("rita") + "\n");
        File.SetUnixFileMode(file, UnixFileMode.UserRead | UnixFileMode.UserWrite);
        string[] args = [.. List, "--store", record.Store, "--password-file", file];
        Assert.Equal(ExitCode.Done, RecordFolder.Run([], args).Code);
        File.SetUnixFileMode(file, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.OtherRead);
        Assert.Equal("unreadableFile", RecordFolder.CodeOf(RecordFolder.Run([], args).Out));
        File.SetUnixFileMode(file, UnixFileMode.UserRead | UnixFileMode.UserWrite);
        File.WriteAllText(file, "one\ntwo\n");
        Assert.Equal("wrongLength", RecordFolder.CodeOf(RecordFolder.Run([], args).Out));
        Assert.Equal("missingField", RecordFolder.CodeOf(RecordFolder.Run([string.Empty], [.. List, "--store", record.Store]).Out));
    }

    [Fact]
    public void The_real_program_takes_a_password_from_standard_input_and_refuses_one_in_the_environment()
    {
        string line = $"printf '%s\\n' \"$WORD\" | dotnet $CAVAXIS patient list --as rita --json --store '{record.Store}'";
        Ended ended = CavaxisProcess.Shell(line, new Dictionary<string, string> { ["WORD"] = RecordFolder.PasswordOf("rita") });
        Assert.True(ended.ExitCode == 0 && ended.Out.Contains(record.Patient, StringComparison.Ordinal), ended.Err + ended.Out);
        Assert.All(SecretReader.RefusedVariables, name =>
        {
            Ended refused = CavaxisProcess.Shell(line, new Dictionary<string, string> { ["WORD"] = "x", [name] = RecordFolder.PasswordOf("rita") });
            Assert.Equal("badOption", Faults.Only(refused).Code);
            Assert.DoesNotContain(RecordFolder.Marker, refused.Out, StringComparison.Ordinal);
        });
    }

    [Fact]
    public void At_a_terminal_the_password_is_asked_for_and_not_shown()
    {
        // `script` gives the program a terminal of its own; what it prints is what a person would see.
        string line = $"(sleep 3; printf '%s\\r' \"$WORD\"; sleep 6) | script -qec \"dotnet $CAVAXIS patient list --as rita --store {record.Store}\" /dev/null";
        Ended ended = CavaxisProcess.Shell(line, new Dictionary<string, string> { ["WORD"] = RecordFolder.PasswordOf("rita") });
        Assert.True(ended.ExitCode == 0 && ended.Out.Contains("Password of rita:", StringComparison.Ordinal), ended.Out + ended.Err);
        Assert.Contains(record.Patient, ended.Out, StringComparison.Ordinal);
        Assert.DoesNotContain(RecordFolder.Marker, ended.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_new_password_is_typed_twice_at_a_terminal()
    {
        using StringReader nothing = new(string.Empty);
        Assert.Equal("same words", new SecretReader(nothing, new Typist("same words", "same words")).New(null, "New", "--x"));
        Assert.Equal(Quantities.Faults.FaultCode.Contradiction, Assert.Throws<Quantities.Faults.InputFaultException>(
            () => new SecretReader(nothing, new Typist("same words", "other words")).New(null, "New", "--x")).Faults[0].Code);
    }

    private sealed class Typist(params string[] typed) : ISecretTerminal
    {
        private readonly Queue<string> left = new(typed);

        public string? Ask(string question) => left.Dequeue();
    }
}
