namespace Cavaxis.Planning.Running;

/// <summary>Everything that <c>whatif</c> says about a case.</summary>
/// <param name="CavaxisWhatIf">Version of this format.</param>
/// <param name="Caution">The caution that stands on every result.</param>
/// <param name="CaseTitle">Title of the case.</param>
/// <param name="Invented">True when the case is invented.</param>
/// <param name="Found">True when there are bands: at least half of the members are left. When false there are no numbers.</param>
/// <param name="Refused">The kind of reason why there are none; null when there are.</param>
/// <param name="Reason">Why there are none; empty when there are.</param>
/// <param name="Patient">What was computed with.</param>
/// <param name="Changes">Changes, as they are for the best fit.</param>
/// <param name="Quantities">Every quantity before, after and its difference.</param>
/// <param name="Members">Members of the fit that were asked.</param>
/// <param name="Used">Members that the bands stand on.</param>
/// <param name="NotSettledBefore">Members left out because they do not settle before the changes.</param>
/// <param name="NotSettledAfter">Members left out because they do not settle after the changes.</param>
/// <param name="OutOfRange">Members left out because the changed numbers leave the range of the model.</param>
/// <param name="LeftOutBecause">One sentence for each reason, with the number of members, the largest group first.</param>
/// <param name="MisfitProbability">Of the fit: chance of a larger misfit if model and spreads were right.</param>
/// <param name="NotDetermined">What the readings leave open.</param>
/// <param name="Warnings">Readings that contradict each other or that the model cannot reach.</param>
public sealed record WhatIfAnswer(
    int CavaxisWhatIf,
    string Caution,
    string CaseTitle,
    bool Invented,
    bool Found,
    WhatIfRefusal? Refused,
    string Reason,
    RunningPatient Patient,
    IReadOnlyList<ChangeMade> Changes,
    IReadOnlyList<WhatIfQuantity> Quantities,
    int Members,
    int Used,
    int NotSettledBefore,
    int NotSettledAfter,
    int OutOfRange,
    IReadOnlyList<string> LeftOutBecause,
    double MisfitProbability,
    IReadOnlyList<string> NotDetermined,
    IReadOnlyList<string> Warnings)
{
    /// <summary>Version of the output format.</summary>
    public const int CurrentVersion = 1;

    /// <summary>What the change would do in the arterial tree; null where that was not asked for or nothing returns to an artery.</summary>
    public ArterialChange? Arteries { get; init; }
}
