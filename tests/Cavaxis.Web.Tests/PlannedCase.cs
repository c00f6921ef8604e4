using System.Text;
using Cavaxis.Devices.Catalogue;
using Cavaxis.Planning.Case;
using Cavaxis.Planning.Plans;
using Cavaxis.Planning.Rules;
using Cavaxis.Planning.Search;

namespace Cavaxis.Web.Tests;

/// <summary>An invented patient with plans, planned once for all tests.</summary>
internal static class PlannedCase
{
    /// <summary>The case.</summary>
    public static CaseFile File { get; } = CaseFileReader.Read(Encoding.UTF8.GetBytes("""{"cavaxisCase":1,"invented":true,"patient":{"ageYears":46,"sex":"male","heightCm":196,"weightKg":104},"support":{"goal":"gasExchange"}}"""));

    private static readonly Lazy<PlanningResult> Planned = new(static () => Planner.Plan(
        File,
        DeviceCatalogue.BuiltIn,
        RuleBookReader.BuiltIn,
        new PlanningOptions { Circulation = false, Anatomies = 1000 }));

    /// <summary>The plans.</summary>
    public static PlanningResult Result => Planned.Value;
}
