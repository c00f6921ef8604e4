namespace Cavaxis.Course.Outcomes;

/// <summary>Outcomes of a programme.</summary>
/// <param name="Mix">Who was treated.</param>
/// <param name="Shares">Every outcome, of all.</param>
/// <param name="BySupport">Every outcome, of each kind of support that was used.</param>
public sealed record ProgrammeOutcomes(
    CaseMix Mix, IReadOnlyList<OutcomeShare> Shares, IReadOnlyDictionary<SupportKind, IReadOnlyList<OutcomeShare>> BySupport);
