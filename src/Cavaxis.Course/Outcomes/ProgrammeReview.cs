using System.Collections.Frozen;
using System.Globalization;
using Cavaxis.Quantities;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Course.Outcomes;

/// <summary>Counts the outcomes of a programme.</summary>
public static class ProgrammeReview
{
    /// <summary>Fewer known cases than this are small numbers.</summary>
    public const int FewestCases = 20;

    /// <summary>Fewer with, or fewer without, the outcome than this are small numbers.</summary>
    public const int FewestOfEach = 5;

    /// <summary>Where the two numbers come from.</summary>
    public static Source SmallSource { get; } = new(
        "fewer than five expected on either side is the usual limit of tables of counts; twenty keeps a 95 % interval within 44 points", Certainty.Assumption);

    /// <summary>Reviews cases.</summary>
    /// <param name="cases">Finished courses, each key once.</param>
    /// <returns>Counts and shares.</returns>
    /// <exception cref="InputFaultException">A key stands twice.</exception>
    public static ProgrammeOutcomes Of(IReadOnlyList<ProgrammeCase> cases)
    {
        ArgumentNullException.ThrowIfNull(cases);
        Distinct(cases);
        return new ProgrammeOutcomes(
            Mix(cases), Shares(cases),
            cases.GroupBy(static c => c.Support).ToFrozenDictionary(static g => g.Key, static g => Shares([.. g])));
    }

    internal static void Distinct(IReadOnlyList<ProgrammeCase> cases)
    {
        if (cases.GroupBy(static c => c.Key, StringComparer.Ordinal).FirstOrDefault(static g => g.Count() > 1) is { } twice)
        {
            throw new InputFaultException(new InputFault(FaultCode.DuplicateField, "cases", InputFault.Shown(twice.Key), "each key once", "Count every course once."));
        }
    }

    private static IReadOnlyList<OutcomeShare> Shares(ProgrammeCase[] cases) => Shares((IReadOnlyList<ProgrammeCase>)cases);

    private static IReadOnlyList<OutcomeShare> Shares(IReadOnlyList<ProgrammeCase> cases) => [.. OutcomeDefinitions.All.Select(d => Share(d, cases))];

    private static OutcomeShare Share(OutcomeDefinition definition, IReadOnlyList<ProgrammeCase> cases)
    {
        bool?[] known = [.. cases.Where(c => definition.AppliesTo.Contains(c.Support)).Select(c => c.Of(definition.Kind))];
        int events = known.Count(static k => k == true);
        int of = known.Count(static k => k is not null);
        int unknown = known.Length - of;
        string missing = unknown == 0 ? string.Empty : string.Create(CultureInfo.InvariantCulture, $" Not recorded of {unknown}.");
        if (of == 0)
        {
            return new OutcomeShare(definition, 0, 0, unknown, null, null, null, true, $"{definition.Words}: known of nobody.{missing}");
        }

        (double low, double high) = WilsonShare.Limits(events, of, WilsonShare.NormalQuantile975);
        bool small = of < FewestCases || Math.Min(events, of - events) < FewestOfEach;
        string words = string.Create(
            CultureInfo.InvariantCulture,
            $"{definition.Words}: {events} of {of} ({100.0 * events / of:0} %, 95 % interval {100 * low:0} to {100 * high:0} %){(small ? "; small numbers, not fit for a comparison" : string.Empty)}.{missing}");
        return new OutcomeShare(definition, events, of, unknown, WilsonShare.Of(events, of), low, high, small, words);
    }

    private static CaseMix Mix(IReadOnlyList<ProgrammeCase> cases)
    {
        FrozenDictionary<SupportKind, int> support = Enum.GetValues<SupportKind>().ToFrozenDictionary(static k => k, k => cases.Count(c => c.Support == k));
        double[] ages = [.. cases.Select(static c => c.AgeYears).Order()];
        double[] risks = [.. cases.Where(static c => c.ExpectedDeath is not null).Select(static c => c.ExpectedDeath!.Value)];
        double? median = ages.Length == 0 ? null : Estimate.Quantile(ages, 0.5);
        string kinds = string.Join(", ", Enum.GetValues<SupportKind>().Where(k => support[k] > 0).Select(k => string.Create(CultureInfo.InvariantCulture, $"{support[k]} {Name(k)}")));
        string words = ages.Length == 0
            ? "No case."
            : string.Create(
                CultureInfo.InvariantCulture,
                $"{ages.Length} cases: {kinds}; age {ages[0]:0} to {ages[^1]:0}, median {median:0} years; a risk before support is known of {risks.Length}{(risks.Length == 0 ? string.Empty : string.Create(CultureInfo.InvariantCulture, $", mean {100 * risks.Average():0} %"))}.");
        return new CaseMix(
            ages.Length, support, ages.Length == 0 ? null : ages[0], median, ages.Length == 0 ? null : ages[^1], risks.Length, risks.Length == 0 ? null : risks.Average(), words);
    }

    private static string Name(SupportKind kind) => kind switch
    {
        SupportKind.VenoVenous => "veno-venous",
        SupportKind.VenoArterial => "veno-arterial",
        SupportKind.Resuscitation => "veno-arterial during resuscitation",
        _ => "veno-arterio-venous",
    };
}
