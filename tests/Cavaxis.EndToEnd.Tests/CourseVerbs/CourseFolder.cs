using System.Text.Json;
using Cavaxis.Cli;
using Cavaxis.EndToEnd.Tests.RecordVerbs;
using Cavaxis.Planning.Tests.Case;

namespace Cavaxis.EndToEnd.Tests.CourseVerbs;

/// <summary>Runs verbs of a course on one new and invented patient.</summary>
internal sealed class CourseFolder(RecordFolder record)
{
    /// <summary>The patient.</summary>
    public string Patient { get; } = record.As("lena", "patient", "admit", "--programme", "north").Out.Trim();

    /// <summary>A case of the demonstration, marked as invented.</summary>
    public static string Demo(string name) => Path.Combine(RepositoryFolder.Demo, name);

    /// <summary>Does a verb as the lead of the programme; it must be done.</summary>
    public JsonElement Does(string verb, params string[] more) => DoesAs("lena", verb, more);

    /// <summary>Does a verb as someone; it must be done.</summary>
    public JsonElement DoesAs(string name, string verb, params string[] more)
    {
        (ExitCode code, string json, string err) = record.As(name, [.. Words(verb), .. more, "--json"]);
        Assert.True(code == ExitCode.Done, $"{verb}: {json}{err}");
        using JsonDocument told = JsonDocument.Parse(json);
        return told.RootElement.Clone();
    }

    /// <summary>Does a verb in words; it must be done. Lines are joined again.</summary>
    public string Tells(string verb, params string[] more)
    {
        (ExitCode code, string text, string err) = record.As("lena", [.. Words(verb), .. more]);
        Assert.True(code == ExitCode.Done, $"{verb}: {text}{err}");
        return string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
    }

    /// <summary>A verb that must be refused.</summary>
    /// <returns>The faults.</returns>
    public IReadOnlyList<(string Code, string Field, string Accepted)> Refuses(string verb, params string[] more)
    {
        (ExitCode code, string json, string err) = record.As("lena", [.. Words(verb), .. more, "--json"]);
        Assert.True(code == ExitCode.InputError, $"{verb}: {code} {json}{err}");
        using JsonDocument told = JsonDocument.Parse(json);
        JsonElement[] faults = [.. told.RootElement.GetProperty("faults").EnumerateArray()];
        Assert.NotEmpty(faults);
        Assert.All(faults, static f => Assert.All(new[] { "field", "value", "accepted", "remedy" }, name => Assert.False(string.IsNullOrWhiteSpace(f.GetProperty(name).GetString()), name)));
        return [.. faults.Select(static f => (f.GetProperty("code").GetString()!, f.GetProperty("field").GetString()!, f.GetProperty("accepted").GetString()!))];
    }

    /// <summary>Version of the record.</summary>
    public long Version => Does("show").GetProperty("version").GetInt64();

    /// <summary>The patient stands behind the verb, which may be of two words.</summary>
    private string[] Words(string verb)
    {
        string[] words = verb.Split(' ');
        int place = words[0] is "wean" or "follow-up" or "complication" ? 2 : 1;
        return ["course", .. words[..place], Patient, .. words[place..]];
    }
}
