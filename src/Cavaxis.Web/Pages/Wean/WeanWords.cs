using System.Globalization;
using Cavaxis.Course.Criteria;
using Cavaxis.Course.Events;
using Cavaxis.Course.Observations;
using Cavaxis.Course.Weaning;
using Cavaxis.Planning.Case;

namespace Cavaxis.Web.Pages.Wean;

/// <summary>Plain words for a weaning trial.</summary>
internal static class WeanWords
{
    /// <summary>Quantities that a published criterion reads, for a kind of trial.</summary>
    public static IReadOnlyList<ObservedQuantity> Quantities(WeaningKind kind) =>
    [
        .. WeaningCriteria.Published.Where(c => c.Kind == kind).Select(static c => c.Quantity).Distinct()
            .Select(static q => q == WeaningQuantity.TidalVolumeMlPerKg ? ObservedQuantity.TidalVolumeMl : Enum.TryParse(q.ToString(), out ObservedQuantity known) ? known : (ObservedQuantity?)null)
            .OfType<ObservedQuantity>(),
    ];

    /// <summary>How a verdict is marked: in a sign and in a word.</summary>
    public static string Of(CriterionJudgement judgement) => judgement.Verdict switch
    {
        CriterionVerdict.Met => judgement.WithinError ? "✓ met, within its error" : "✓ met",
        CriterionVerdict.NotMet => judgement.WithinError ? "✗ not met, within its error" : "✗ not met",
        CriterionVerdict.NotMeasured => "? not measured",
        _ => throw new ArgumentOutOfRangeException(nameof(judgement), judgement, "Not a verdict."),
    };

    /// <summary>What was read for a criterion.</summary>
    public static string Read(CriterionJudgement judgement) => judgement.Observed is { } read
        ? string.Create(CultureInfo.InvariantCulture, $"{read.Value:0.###} ({read.Low:0.###} to {read.High:0.###}){(judgement.Criterion.Unit == "1" ? string.Empty : " " + judgement.Criterion.Unit)}, measured")
        : "—";

    /// <summary>The usual method for a connection.</summary>
    public static WeaningMethod MethodFor(RunningConfiguration configuration) =>
        configuration is RunningConfiguration.VvTwoSite or RunningConfiguration.VvDualLumen ? WeaningMethod.SweepSteps : WeaningMethod.FlowSteps;

    /// <summary>A setting of a step; told where it was not noted.</summary>
    public static string Setting(double? value, string unit) => value is double known ? string.Create(CultureInfo.InvariantCulture, $"{known:0.##} {unit}") : "not noted";
}
