using Cavaxis.Planning.Configurations;

namespace Cavaxis.Planning.Steps;

/// <summary>One step of the procedure with the evidence it needs.</summary>
/// <param name="Number">From 1.</param>
/// <param name="Action">What is done.</param>
/// <param name="ShowsIt">Views that can show what must be seen.</param>
/// <param name="CannotShowIt">Views that cannot, and why.</param>
/// <param name="HardStop">Evidence without which the procedure does not go on; null where there is none.</param>
/// <param name="EvidenceAvailable">False when none of the views that can show it is known to be on hand.</param>
/// <param name="Pitfall">What goes wrong here, or null.</param>
public sealed record ProcedureStep(
    int Number,
    string Action,
    IReadOnlyList<string> ShowsIt,
    IReadOnlyList<string> CannotShowIt,
    string? HardStop,
    bool EvidenceAvailable,
    string? Pitfall)
{
    /// <summary>The cannula that the step is about; null for steps about none or all.</summary>
    public CannulaRole? Cannula { get; init; }

    /// <summary>Part of its insertion.</summary>
    public InsertionPhase Phase { get; init; }

    /// <summary>What the insertion study expects to go wrong here; null where it was not asked or expects nothing.</summary>
    public string? PredictedPitfall { get; init; }
}
