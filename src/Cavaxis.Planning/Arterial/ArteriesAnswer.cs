using System.Collections.Immutable;
using Cavaxis.Arteries.Findings;
using Cavaxis.Planning.Case;
using Cavaxis.Planning.Search;

namespace Cavaxis.Planning.Arterial;

/// <summary>Everything that <c>arteries</c> says about a case: which organ gets which blood, where the two flows meet, and how the legs are supplied.</summary>
/// <param name="CavaxisArteries">Version of this format.</param>
/// <param name="Caution">The caution that stands on every result.</param>
/// <param name="CaseTitle">Title of the case.</param>
/// <param name="Invented">True when the case is invented.</param>
/// <param name="Basis">What was computed: the support that runs, or a plan, in words.</param>
/// <param name="Found">True when there are numbers.</param>
/// <param name="Reason">Why there are none; empty when there are.</param>
/// <param name="Assumed">What the case does not say, and what was used instead.</param>
/// <param name="Result">The tree under this support; null when not found.</param>
/// <param name="Sweep">The same over pump flow and strength of the heart; empty when it was not asked for.</param>
public sealed record ArteriesAnswer(
    int CavaxisArteries,
    string Caution,
    string CaseTitle,
    bool Invented,
    string Basis,
    bool Found,
    string Reason,
    IReadOnlyList<string> Assumed,
    ArterialSupportResult? Result,
    ImmutableArray<ArterialSweepPoint> Sweep)
{
    /// <summary>Version of this format.</summary>
    public const int CurrentVersion = 1;

    /// <summary>An answer without numbers.</summary>
    /// <param name="file">The case.</param>
    /// <param name="basis">What was to be computed.</param>
    /// <param name="reason">Why there are no numbers.</param>
    /// <returns>The answer.</returns>
    public static ArteriesAnswer None(CaseFile file, string basis, string reason)
    {
        ArgumentNullException.ThrowIfNull(file);
        return new ArteriesAnswer(CurrentVersion, Planner.Caution, file.Title ?? "(no title)", file.Invented, basis, false, reason, [], null, []);
    }
}
