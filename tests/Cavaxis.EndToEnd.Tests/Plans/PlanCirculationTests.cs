using System.Text.Json;
using Cavaxis.EndToEnd.Tests.Programs;

namespace Cavaxis.EndToEnd.Tests.Plans;

public class PlanCirculationTests
{
    private static readonly Lazy<JsonElement> Lungs = new(static () => Plan("tall-man-severe-lung-failure.json"));

    [Fact]
    public void Each_plan_tells_recirculation_and_saturation_with_spread_or_why_not()
    {
        JsonElement[] plans = [.. Lungs.Value.GetProperty("plans").EnumerateArray()];
        Assert.NotEmpty(plans);
        int told = 0;
        foreach (JsonElement plan in plans)
        {
            JsonElement circulation = plan.GetProperty("circulation");
            if (circulation.ValueKind == JsonValueKind.Null)
            {
                Assert.NotEmpty(plan.GetProperty("circulationNote").GetString()!);
                continue;
            }

            told++;
            JsonElement saturation = circulation.GetProperty("rightArmSaturationPercent");
            Assert.InRange(saturation.GetProperty("value").GetDouble(), 30, 100);
            Assert.True(saturation.GetProperty("low").GetDouble() <= saturation.GetProperty("high").GetDouble());
            bool venous = plan.GetProperty("configuration").GetString()!.StartsWith("vv", StringComparison.Ordinal);
            JsonElement share = circulation.GetProperty("recirculationPercent");
            Assert.True(!venous || share.GetProperty("value").GetDouble() is > 0 and < 80);
            bool arterial = !venous;
            Assert.Equal(arterial, circulation.GetProperty("leftVentricle").ValueKind == JsonValueKind.Object);
        }

        Assert.True(told >= plans.Length / 2, $"{told} of {plans.Length}");
    }

    [Fact]
    public void Without_the_circulation_the_bounds_are_told()
    {
        Ended ended = CavaxisProcess.Run("plan", DemoCase.PathOf("tall-man-severe-lung-failure.json"), "--anatomies", "1000");
        Assert.Contains("separated and complete mixing", ended.Out, StringComparison.Ordinal);
    }

    private static JsonElement Plan(string name)
    {
        Ended ended = CavaxisProcess.Run("plan", DemoCase.PathOf(name), "--anatomies", "1000", "--json", QuickPlan.Whole);
        return JsonDocument.Parse(ended.Out).RootElement;
    }
}
