using Cavaxis.Planning.Configurations;
using Cavaxis.Planning.Plans;
using Cavaxis.Planning.Search;

namespace Cavaxis.Planning.Outlook;

/// <summary>A plan with what it was made from, so that the circulation can be computed for it.</summary>
/// <param name="Plan">The plan.</param>
/// <param name="Combination">Devices and sides.</param>
/// <param name="Search">The search that found it.</param>
internal sealed record PlannedSupport(CannulationPlan Plan, Combination Combination, ConfigurationSearch Search)
{
    /// <summary>How patient and circuit are connected.</summary>
    public ConfigurationTable Configuration => ConfigurationTable.Of(Plan.Configuration);
}
