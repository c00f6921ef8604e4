using System.Text.Json;
using Cavaxis.Planning.Json;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.EndToEnd.Tests.Programs;

/// <summary>Reads the faults that a command printed and checks that each says what a person needs.</summary>
public static class Faults
{
    private static readonly HashSet<string> Codes = [.. Enum.GetNames<FaultCode>().Select(JsonName.Of)];

    /// <summary>The faults of a JSON answer.</summary>
    public static IReadOnlyList<(string Code, string Field, string Value, string Accepted)> Of(string json)
    {
        using JsonDocument answer = JsonDocument.Parse(json);
        JsonElement[] faults = [.. answer.RootElement.GetProperty("faults").EnumerateArray()];
        Assert.NotEmpty(faults);
        return [.. faults.Select(static fault =>
        {
            string code = Word(fault, "code");
            Assert.Contains(code, Codes);
            Word(fault, "remedy");
            return (code, Word(fault, "field"), Word(fault, "value"), Word(fault, "accepted"));
        })];
    }

    /// <summary>The single fault of a command that was refused.</summary>
    public static (string Code, string Field, string Value, string Accepted) Only(Ended ended)
    {
        Assert.Equal((2, string.Empty), (ended.ExitCode, ended.Complaints));
        return Assert.Single(Of(ended.Out));
    }

    private static string Word(JsonElement fault, string name)
    {
        string? word = fault.GetProperty(name).GetString();
        Assert.False(string.IsNullOrWhiteSpace(word), name);
        Assert.DoesNotContain("   at ", word, StringComparison.Ordinal);
        return word!;
    }
}
