using Cavaxis.Devices.Wires;
using Cavaxis.Planning.Steps;
using Cavaxis.Quantities;

namespace Cavaxis.Planning.Insertion;

/// <summary>How wire and cannulae of a plan go in.</summary>
/// <param name="CavaxisInsertion">Version of the format.</param>
/// <param name="Caution">Words that every screen and report shows.</param>
/// <param name="CaseTitle">Title of the case.</param>
/// <param name="Invented">Whether the case is invented.</param>
/// <param name="PlanRank">Rank of the plan.</param>
/// <param name="PlanName">Its name.</param>
/// <param name="Wire">Class of wire.</param>
/// <param name="WireSource">Where its stiffness comes from.</param>
/// <param name="Anatomies">Number of anatomies.</param>
/// <param name="Seed">Seed.</param>
/// <param name="EveryCannulaRight">Share of the anatomies in which every part of every venous cannula goes as it should; null where there is none.</param>
/// <param name="Cannulae">Each venous cannula.</param>
/// <param name="NotStudied">Cannulae that were not, and why.</param>
/// <param name="Steps">The step list with the predicted pitfalls.</param>
/// <param name="Assumed">What nobody has published and was drawn from a range.</param>
/// <param name="NotChecked">What was not checked.</param>
public sealed record InsertionResult(
    int CavaxisInsertion,
    string Caution,
    string CaseTitle,
    bool Invented,
    int PlanRank,
    string PlanName,
    WireClass Wire,
    string WireSource,
    int Anatomies,
    ulong Seed,
    Estimate? EveryCannulaRight,
    IReadOnlyList<CannulaInsertion> Cannulae,
    IReadOnlyList<string> NotStudied,
    IReadOnlyList<ProcedureStep> Steps,
    IReadOnlyList<string> Assumed,
    IReadOnlyList<string> NotChecked)
{
    /// <summary>Version that this program writes.</summary>
    public const int CurrentVersion = 1;
}
