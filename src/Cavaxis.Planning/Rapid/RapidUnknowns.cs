using System.Globalization;
using Cavaxis.Planning.Plans;
using Cavaxis.Planning.Search;
using Cavaxis.Quantities;

namespace Cavaxis.Planning.Rapid;

/// <summary>Names everything that is unknown, what was used instead and what it matters for.</summary>
/// <param name="input">What is known.</param>
/// <param name="body">The size.</param>
/// <param name="criteria">The questions.</param>
internal sealed class RapidUnknowns(RapidInput input, RapidBody body, RapidCriteria criteria)
{
    /// <summary>The list: situation, size and clock first, then vessels, then what the planner misses, then open questions, those that most sources ask first.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="middle">What the planner says.</param>
    /// <param name="leading">The situation that says what support is for.</param>
    /// <param name="situations">Situations that hold.</param>
    /// <param name="questions">The questions asked.</param>
    /// <param name="parts">Open questions that stand only in parts of a criterion.</param>
    /// <returns>Everything unknown.</returns>
    public IReadOnlyList<MissingInput> Of(
        RapidPlan? plan, PlanningResult middle, SituationRule leading, IReadOnlyList<SituationRule> situations, IReadOnlyList<QuestionReading> questions, IReadOnlyList<string> parts) =>
    [
        .. Situation(leading, situations), .. Size(), .. Clock(questions), .. Vessels(plan),
        .. middle.Missing.Where(static m => m.Field != "vessels"),
        .. Open(questions), .. Parts(questions, parts),
    ];

    private IEnumerable<MissingInput> Situation(SituationRule leading, IReadOnlyList<SituationRule> situations)
    {
        if (input.Situations.Count == 0)
        {
            yield return new MissingInput("situation", $"taken as: {situations[0].Title}", "which criteria are asked, which plans are made, which published rows are shown");
        }
        else if (!situations.Contains(leading))
        {
            yield return new MissingInput("situation", $"what support is for was not named; planned as for: {leading.Title}", "which plans are made");
        }

        foreach (SituationRule added in situations.Where(s => input.Situations.Count > 0 && !input.Situations.Contains(s.Situation)))
        {
            yield return new MissingInput("situation", $"added by itself from age or size: {added.Title}", "findings and published rows");
        }
    }

    private IEnumerable<MissingInput> Size()
    {
        if (input.HeightCm is null)
        {
            yield return new MissingInput(
                "patient.heightCm", string.Create(CultureInfo.InvariantCulture, $"{body.HeightCm.Value:0} cm ({body.HeightCm.Low:0} to {body.HeightCm.High:0}) for age and sex: {HeightGuess.Source}"),
                "insertion depth, flow needed, vessel sizes");
        }

        yield return new MissingInput(
            "patient.weightKg", string.Create(CultureInfo.InvariantCulture, $"the guess, ± {100 * RapidBody.GuessedWeightRelativeSd:0} % ({body.WeightKg.Low:0} to {body.WeightKg.High:0} kg; {Source.InWords(Certainty.Assumption)})"),
            "flow needed, vessel sizes");
    }

    private IEnumerable<MissingInput> Clock(IReadOnlyList<QuestionReading> questions)
    {
        bool IsAsked(string name) => questions.Any(q => q.Name == name);
        if (input.Clock.NoFlow is null && IsAsked(DerivedAnswers.NoFlow))
        {
            yield return new MissingInput("clock.noFlow", "nothing: unknown", "criteria on time without circulation");
        }

        if (input.Clock.Compressions is null && IsAsked(DerivedAnswers.LowFlow))
        {
            yield return new MissingInput("clock.compressions", "nothing: unknown", "criteria on low flow, minutes left, published rows by time");
        }

        if (input.Clock.ToFlowMin is null && IsAsked(DerivedAnswers.LowFlow))
        {
            yield return new MissingInput("clock.toFlow", "nothing: low flow is only known to be at least what has gone by", "whether limits on low flow will be kept");
        }
    }

    private static IEnumerable<MissingInput> Vessels(RapidPlan? plan) =>
        (plan?.Cannulae ?? []).Where(static c => !c.VesselSeen).Select(static c => new MissingInput(
            $"vessels: {PlainWords.Vessel(c.Route, c.Side)} ({Json.JsonName.Of(AccessVessels.NameOf(c.Route).ToString())}.{PlainWords.Side(c.Side)})",
            string.Create(CultureInfo.InvariantCulture, $"not seen; {c.VesselDiameterMm.Value:0.0} mm ({c.VesselDiameterMm.Low:0.0} to {c.VesselDiameterMm.High:0.0}) for this body size"),
            "whether it is open and free of clot, whether the cannula fits"));

    private IEnumerable<MissingInput> Open(IReadOnlyList<QuestionReading> questions) => criteria.Questions
        .Where(question => !DerivedAnswers.Names.Contains(question.Name, StringComparer.Ordinal))
        .Select(question => (Question: question, Reading: questions.FirstOrDefault(q => q.Name == question.Name)))
        .Where(static pair => pair.Reading is { OpenIn: > 0 })
        .OrderByDescending(static pair => pair.Reading!.OpenIn)
        .Select(static pair => new MissingInput(
            $"answer: {pair.Question.Name}", $"unknown counts neither way; takes {pair.Reading!.Accepted}",
            string.Create(CultureInfo.InvariantCulture, $"{pair.Question.Asks.TrimEnd('?')}: open in {pair.Reading.OpenIn} of {pair.Reading.AskedBy} sources that ask it")));

    private IEnumerable<MissingInput> Parts(IReadOnlyList<QuestionReading> questions, IReadOnlyList<string> parts) => criteria.Questions
        .Where(question => parts.Contains(question.Name, StringComparer.Ordinal) && !DerivedAnswers.Names.Contains(question.Name, StringComparer.Ordinal) && !questions.Any(q => q.Name == question.Name && q.OpenIn > 0))
        .Select(static question => new MissingInput($"answer: {question.Name}", $"unknown counts neither way; takes {AnswerReader.Accepted(question)}", $"{question.Asks.TrimEnd('?')}: part of a criterion that is open"));
}
