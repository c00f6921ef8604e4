using System.Globalization;
using Cavaxis.Anatomy.Body;
using Cavaxis.Devices.Catalogue;
using Cavaxis.Planning.Plans;
using Cavaxis.Planning.Rules;
using Cavaxis.Planning.Search;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Planning.Rapid;

/// <summary>Age, sex and a guess of the weight in; the shortest plan, what published criteria say, what published patients became, and everything unknown out.</summary>
public static class RapidAssessment
{
    private const RapidSituation Usual = RapidSituation.ArrestOutOfHospital;

    /// <summary>Body mass index from which obesity is added by itself, kg/m² (the limit of the registry study that the findings quote).</summary>
    private const double ObeseIndex = 35;

    private static readonly string[] NotChecked =
    [
        "Whether support is right for this patient: sources disagree, and no sum of their criteria is a verdict.",
        "Several features together: no published row has them with counts, so rows stand side by side and are never multiplied.",
        "The circulation with support, recirculation, wire and cannula in the curved anatomy: plan the case once there is time.",
        "Whether the devices lie on the shelf and who is on call.",
    ];

    /// <summary>Assesses.</summary>
    /// <param name="input">What is known.</param>
    /// <param name="criteria">Criteria and published cohorts.</param>
    /// <param name="catalogue">Devices.</param>
    /// <param name="rules">The rule book.</param>
    /// <returns>The result. Same input, same bytes.</returns>
    /// <exception cref="InputFaultException">Numbers that cannot belong together, or answers that contradict each other.</exception>
    public static RapidResult Of(RapidInput input, RapidCriteria criteria, DeviceCatalogue catalogue, RuleBook rules)
    {
        ArgumentNullException.ThrowIfNull(input);
        ArgumentNullException.ThrowIfNull(criteria);
        ArgumentNullException.ThrowIfNull(catalogue);
        ArgumentNullException.ThrowIfNull(rules);
        RapidBody body = RapidBody.Of(input);
        SituationRule[] situations = [.. SituationsOf(input, body).Select(wanted => criteria.Situations.First(rule => rule.Situation == wanted))];
        SituationRule leading = situations.FirstOrDefault(static s => s.Goal is not null) ?? criteria.Situations.First(static s => s.Situation == Usual);
        AnswerSheet sheet = new(criteria, situations, input, body);
        CriteriaEvaluation evaluation = new(criteria, situations, sheet);
        IReadOnlyList<CriterionReading> readings = evaluation.Criteria();
        IReadOnlyList<QuestionReading> questions = evaluation.Questions(readings);
        IReadOnlyList<CohortReading> cohorts = CohortSelection.Of(criteria, situations, sheet, input.AgeYears);
        (RapidPlan? plan, PlanningResult middle) = new RapidPlanner(catalogue, rules).Of(input, body, leading);
        string who = criteria.ChangedBy is null ? string.Empty : $" (changed by {criteria.ChangedBy}: {criteria.ChangeReason})";
        return new RapidResult(
            RapidResult.CurrentVersion,
            Planner.Caution,
            criteria.Edition,
            [.. RapidCriteriaComparison.Changes(criteria).Select(change => change + who)],
            [.. situations.Select(static s => s.Title)],
            Clock(input.Clock, readings),
            plan,
            middle.NotPlanned,
            [.. situations.SelectMany(s => s.Findings.Select(f => new RapidFinding(s.Situation, f.Id, f.Says, f.Resolve, criteria.SourceOf(f.Source, f.Certainty)))).DistinctBy(static f => f.Says)],
            questions,
            readings,
            CriteriaEvaluation.Sources(readings),
            cohorts,
            [.. criteria.Conflicts.Where(conflict => conflict.Cohorts.Count(id => cohorts.Any(c => c.Id == id)) > 1).Select(static c => c.Says)],
            new RapidUnknowns(input, body, criteria).Of(plan, middle, leading, situations, questions, evaluation.OpenParts()),
            NotChecked);
    }

    private static IEnumerable<RapidSituation> SituationsOf(RapidInput input, RapidBody body)
    {
        IEnumerable<RapidSituation> named = input.Situations.Count == 0 ? [Usual] : input.Situations;
        IEnumerable<RapidSituation> child = input.AgeYears < BodyHabitus.AdultAgeYears ? [RapidSituation.Child] : [];
        IEnumerable<RapidSituation> obese = body.Middle.BodyMassIndex >= ObeseIndex ? [RapidSituation.Obesity] : [];
        return named.Concat(child).Concat(obese).Distinct();
    }

    private static RapidClockReading Clock(ArrestClock clock, IReadOnlyList<CriterionReading> readings)
    {
        const string Minutes = "min";
        CriterionReading[] limits = [.. readings.Where(static r => r.MinutesLeft is not null && r.Voice != CriterionVoice.Aside)];
        return new RapidClockReading(
            clock.NoFlow?.Words(Minutes) ?? "unknown",
            clock.Compressions?.Words(Minutes) ?? "unknown",
            clock.LowFlow?.Words(Minutes) ?? "unknown",
            [.. limits.Where(static r => r.MinutesLeft > 0).OrderBy(static r => r.MinutesLeft).Select(static r => string.Create(CultureInfo.InvariantCulture, $"{r.MinutesLeft:0} min left: {r.Wording}; {r.Source}"))],
            [.. limits.Where(static r => r.MinutesLeft <= 0).Select(static r => $"{r.Wording}; {r.Source}")]);
    }
}
