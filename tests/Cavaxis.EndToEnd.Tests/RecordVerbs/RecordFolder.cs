using System.Text.Json;
using Cavaxis.Cli;
using Cavaxis.Cli.Output;
using Cavaxis.Cli.Secrets;
using Cavaxis.EndToEnd.Tests.Programs;

namespace Cavaxis.EndToEnd.Tests.RecordVerbs;

/// <summary>A record with invented people of every role, in a folder that is gone after the tests.</summary>
public sealed class RecordFolder : IDisposable
{
    /// <summary>No invented password holds these words by chance.</summary>
    public const string Marker = "quince-lantern";

    private readonly WorkFolder work = new();

    public RecordFolder()
    {
        Store = work["record.db"];
        Assert.Equal(ExitCode.Done, Run([PasswordOf("ada")], "record", "create", "--store", Store, "--as", "ada", "--name", "Ada (invented)", "--programme", "north").Code);
        foreach ((string name, string role, string programme) in new[] { ("rita", "reader", "north"), ("cleo", "clinician", "north"), ("lena", "lead", "north"), ("sven", "lead", "south"), ("oda", "administrator", "south") })
        {
            Assert.Equal(ExitCode.Done, Run([PasswordOf("ada"), PasswordOf(name)], "people", "add", name, "--role", role, "--programme", programme == "south" && name == "oda" ? "west" : programme, "--store", Store, "--as", "ada").Code);
        }

        Patient = Admit("cleo", "north");
        Foreign = Admit("sven", "south");
    }

    public string Store { get; }

    /// <summary>A patient of the programme north.</summary>
    public string Patient { get; }

    /// <summary>A patient of the programme south.</summary>
    public string Foreign { get; }

    public string this[string name] => work[name];

    public static string PasswordOf(string name) => $"{Marker} stands beside {name[..1]}{name.Length}{name[^1..]}";

    /// <summary>Runs a verb as someone.</summary>
    public (ExitCode Code, string Out, string Err) As(string name, params string[] args) => As(name, [], args);

    /// <summary>Runs a verb as someone who gives more secrets.</summary>
    public (ExitCode Code, string Out, string Err) As(string name, string[] secrets, params string[] args) =>
        Run([PasswordOf(name), .. secrets], [.. args, "--as", name, .. args.Contains("--store") ? Array.Empty<string>() : ["--store", Store]]);

    /// <summary>Runs a verb with lines of standard input.</summary>
    public static (ExitCode Code, string Out, string Err) Run(string[] lines, params string[] args)
    {
        using StringReader input = new(string.Join('\n', lines) + "\n");
        using StringWriter results = new();
        using StringWriter faults = new();
        ExitCode code = new CavaxisApplication(new CommandOutput(results, faults, colours: false), new SecretReader(input, null)).Run(args);
        return (code, results.ToString(), faults.ToString());
    }

    /// <summary>The code of the one fault in a JSON answer.</summary>
    public static string CodeOf(string json)
    {
        using JsonDocument answer = JsonDocument.Parse(json);
        JsonElement fault = Assert.Single(answer.RootElement.GetProperty("faults").EnumerateArray());
        Assert.All(new[] { "field", "value", "accepted", "remedy" }, name => Assert.False(string.IsNullOrWhiteSpace(fault.GetProperty(name).GetString()), name));
        return fault.GetProperty("code").GetString()!;
    }

    public void Dispose() => work.Dispose();

    private string Admit(string name, string programme)
    {
        (ExitCode code, string text, string err) = As(name, "patient", "admit", "--programme", programme);
        Assert.True(code == ExitCode.Done, err);
        return text.Trim();
    }
}
