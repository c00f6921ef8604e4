using System.Text.Json;
using Cavaxis.EndToEnd.Tests.Programs;

namespace Cavaxis.EndToEnd.Tests.Plans;

/// <summary>The parts of a JSON plan that the tests look at, read as any other program would.</summary>
/// <param name="Plans">Rank, name, score and devices of each plan.</param>
/// <param name="Root">The whole answer.</param>
public sealed record PlanJson(IReadOnlyList<PlanJson.Plan> Plans, JsonElement Root)
{
    /// <summary>One plan.</summary>
    public sealed record Plan(int Rank, string Name, double Score, IReadOnlyList<string> Devices);

    /// <summary>Reads an answer.</summary>
    public static PlanJson Of(Ended ended)
    {
        using JsonDocument document = JsonDocument.Parse(ended.Out);
        JsonElement root = document.RootElement.Clone();
        return new PlanJson([.. root.GetProperty("plans").EnumerateArray().Select(static plan => new Plan(
            plan.GetProperty("rank").GetInt32(),
            plan.GetProperty("name").GetString()!,
            plan.GetProperty("score").GetDouble(),
            [.. plan.GetProperty("cannulae").EnumerateArray().Select(static c => c.GetProperty("deviceId").GetString()!)]))], root);
    }
}
