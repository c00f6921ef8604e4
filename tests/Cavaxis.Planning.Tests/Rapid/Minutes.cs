using Cavaxis.Anatomy.Body;
using Cavaxis.Devices.Catalogue;
using Cavaxis.Planning.Rapid;
using Cavaxis.Planning.Rules;

namespace Cavaxis.Planning.Tests.Rapid;

/// <summary>Rapid results shared by the tests.</summary>
internal static class Minutes
{
    public static RapidInput Man { get; } = new(54, Sex.Male, 85);

    public static RapidCriteria Own => RapidCriteriaReader.BuiltIn;

    public static RapidResult Of(RapidInput input, RapidCriteria? criteria = null) => RapidAssessment.Of(input, criteria ?? Own, DeviceCatalogue.BuiltIn, RuleBookReader.BuiltIn);

    public static RapidAnswer[] Answers(params string[] typed) => [.. AnswerReader.Read(Own, typed)];

    /// <summary>Criteria alone, without a plan.</summary>
    public static IReadOnlyList<CriterionReading> Criteria(RapidInput input)
    {
        (CriteriaEvaluation evaluation, _) = Evaluation(input);
        return evaluation.Criteria();
    }

    public static IReadOnlyList<QuestionReading> Questions(RapidInput input)
    {
        (CriteriaEvaluation evaluation, _) = Evaluation(input);
        return evaluation.Questions(evaluation.Criteria());
    }

    public static IReadOnlyList<CohortReading> Cohorts(RapidInput input)
    {
        (_, AnswerSheet sheet) = Evaluation(input);
        return CohortSelection.Of(Own, Rules(input), sheet, input.AgeYears);
    }

    private static (CriteriaEvaluation Evaluation, AnswerSheet Sheet) Evaluation(RapidInput input)
    {
        AnswerSheet sheet = new(Own, Rules(input), input, RapidBody.Of(input));
        return (new CriteriaEvaluation(Own, Rules(input), sheet), sheet);
    }

    private static SituationRule[] Rules(RapidInput input) =>
        [.. (input.Situations.Count == 0 ? [RapidSituation.ArrestOutOfHospital] : input.Situations).Select(static s => Own.Situations.First(rule => rule.Situation == s))];
}
