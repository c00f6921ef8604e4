using Cavaxis.Planning.Plans;

namespace Cavaxis.Web.Desk;

/// <summary>What makes a plan the same plan in another ranking: configuration, devices, vessels and sides.</summary>
internal static class PlanName
{
    /// <summary>The name of a plan.</summary>
    /// <param name="plan">The plan.</param>
    /// <returns>A name without meaning to people.</returns>
    public static string Of(CannulationPlan plan) =>
        $"{plan.Configuration}:{string.Join('+', plan.Cannulae.Select(static c => $"{c.DeviceId}/{c.Route}/{c.Side}"))}";
}
