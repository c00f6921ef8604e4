using Cavaxis.Planning.Information;
using Cavaxis.Planning.Needs;
using Cavaxis.Planning.Steps;

namespace Cavaxis.Planning.Plans;

/// <summary>Everything that planning says about a case.</summary>
/// <param name="CavaxisPlan">Version of this format.</param>
/// <param name="Caution">The caution that stands on every plan.</param>
/// <param name="CaseTitle">Title of the case.</param>
/// <param name="Invented">True when the case is invented.</param>
/// <param name="Seed">Seed of the sampled anatomies.</param>
/// <param name="Anatomies">Number of sampled anatomies.</param>
/// <param name="RuleBookEdition">Edition of the rule book.</param>
/// <param name="LoosenedRules">Rules that are looser than the built-in ones, with who and why.</param>
/// <param name="Patient">The numbers planning worked with.</param>
/// <param name="Axis">This patient's axis, dimension by dimension.</param>
/// <param name="Plans">Ranked plans, best first.</param>
/// <param name="NotPlanned">Configurations without a plan, with the reason.</param>
/// <param name="ChosenPlan">Rank of the plan that measurements and steps speak of; 0 when there is none.</param>
/// <param name="NextMeasurements">Value of each missing measurement for the chosen plan, best first.</param>
/// <param name="Steps">Step list of the chosen plan.</param>
/// <param name="Missing">Inputs that the case does not give.</param>
/// <param name="Surprises">Measurements far outside what the population suggests.</param>
/// <param name="NotChecked">What was not checked.</param>
public sealed record PlanningResult(
    int CavaxisPlan,
    string Caution,
    string CaseTitle,
    bool Invented,
    ulong Seed,
    int Anatomies,
    string RuleBookEdition,
    IReadOnlyList<string> LoosenedRules,
    PatientPicture Patient,
    IReadOnlyList<AxisValue> Axis,
    IReadOnlyList<CannulationPlan> Plans,
    IReadOnlyList<NotPlanned> NotPlanned,
    int ChosenPlan,
    IReadOnlyList<MeasurementValue> NextMeasurements,
    IReadOnlyList<ProcedureStep> Steps,
    IReadOnlyList<MissingInput> Missing,
    IReadOnlyList<string> Surprises,
    IReadOnlyList<string> NotChecked)
{
    /// <summary>Version of the output format.</summary>
    public const int CurrentVersion = 1;

    /// <summary>True when the first plan, or every plan, carries a stop, or there is no plan at all.</summary>
    public bool EveryPlanIsStopped => Plans.All(plan => plan.HasStop);
}
