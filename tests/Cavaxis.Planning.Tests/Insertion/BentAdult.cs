using Cavaxis.Devices.Catalogue;
using Cavaxis.Planning.Case;
using Cavaxis.Planning.Insertion;
using Cavaxis.Planning.Plans;
using Cavaxis.Planning.Rules;
using Cavaxis.Planning.Search;

namespace Cavaxis.Planning.Tests.Insertion;

/// <summary>An invented adult whose cavae meet at a wide angle, so that wires go astray in part of the anatomies.</summary>
internal static class BentAdult
{
    public static CaseFile Case { get; } = CaseFileReader.Read(System.Text.Encoding.UTF8.GetBytes(
        """{"cavaxisCase":1,"invented":true,"patient":{"ageYears":45,"sex":"male","heightCm":175,"weightKg":80},"support":{"goal":"gasExchange"},"axis":[{"dimension":"cavalBendSagittal","value":55,"sd":3}]}"""));

    private static readonly Lazy<PlanningResult> Planned = new(static () => Planner.Plan(Case, DeviceCatalogue.BuiltIn, RuleBookReader.BuiltIn, new PlanningOptions { Anatomies = 1000 }));

    public static PlanningResult Planning => Planned.Value;

    /// <summary>The plan with one cannula from the neck: what is asked of one does not depend on how many there are.</summary>
    public static CannulationPlan OneCannula => Planning.Plans.First(static p => p.Cannulae.Count == 1);

    public static InsertionResult Study(InsertionOptions options, IProgress<InsertionProgress>? progress = null) =>
        InsertionStudy.Of(Case, DeviceCatalogue.BuiltIn, Planning, OneCannula, options, progress);
}
