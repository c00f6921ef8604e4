using System.Text.Json;
using Cavaxis.EndToEnd.Tests.Programs;

namespace Cavaxis.EndToEnd.Tests.Running;

public class RunningPositionTests
{
    private const string Placed = "\"depthCm\": 29, \"rotationDeg\": 0";

    [Fact]
    public void A_dual_lumen_cannula_four_centimetres_too_shallow_or_turned_away_recirculates_more()
    {
        using WorkFolder work = new();
        double placed = Recirculation(work, Placed);
        double shallow = Recirculation(work, "\"depthCm\": 25, \"rotationDeg\": 0");
        double turned = Recirculation(work, "\"depthCm\": 29, \"rotationDeg\": 90");
        Assert.True(shallow > placed + 5, $"{shallow} after {placed} %");
        Assert.True(turned > placed + 3, $"{turned} after {placed} %");
    }

    [Fact]
    public void An_unknown_depth_is_told_among_the_assumptions()
    {
        using WorkFolder work = new();
        Ended ended = CavaxisProcess.Run("circulation", Case(work, "\"rotationDeg\": 0"));
        Assert.Equal((0, string.Empty), (ended.ExitCode, ended.Complaints));
        string assumed = ended.Out[ended.Out.IndexOf("Assumed, because the case does not say", StringComparison.Ordinal)..];
        Assert.Contains("running.cannulae[0].depthCm", assumed, StringComparison.Ordinal);
        Assert.Contains("usually", assumed, StringComparison.Ordinal);
        Assert.DoesNotContain("Ports: ", ended.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_cannula_deeper_than_it_is_long_is_refused()
    {
        using WorkFolder work = new();
        (string code, string field, _, string accepted) = Faults.Only(CavaxisProcess.Run("circulation", Case(work, "\"depthCm\": 40"), "--json"));
        Assert.Equal(("contradiction", "running.cannulae[0].depthCm"), (code, field));
        Assert.Contains("31 cm", accepted, StringComparison.Ordinal);
    }

    private static double Recirculation(WorkFolder work, string place)
    {
        Ended ended = CavaxisProcess.Run("circulation", Case(work, place), "--json");
        Assert.Equal((0, string.Empty), (ended.ExitCode, ended.Complaints));
        using JsonDocument answer = JsonDocument.Parse(ended.Out);
        return answer.RootElement.GetProperty("recirculation").GetProperty("meanPercent").GetDouble();
    }

    private static string Case(WorkFolder work, string place) => work.Write("case.json", $$"""
        {
          "cavaxisCase": 1, "title": "Dual lumen running", "invented": true,
          "patient": { "ageYears": 46, "sex": "male", "heightCm": 182, "weightKg": 88 },
          "support": { "goal": "gasExchange" },
          "blood": { "haemoglobinGPerDl": 10 },
          "running": {
            "configuration": "vvDualLumen", "flowLPerMin": 4.5,
            "cannulae": [ { "role": "dualLumen", "device": "bicaval-31fr-31cm", "route": "jugular", "side": "right", {{place}} } ]
          }
        }
        """);
}
