using Cavaxis.Planning.Rapid;

namespace Cavaxis.Planning.Tests.Rapid;

public class CriteriaEvaluationTests
{
    private static readonly CriterionVoice[] Judging = [CriterionVoice.For, CriterionVoice.Against, CriterionVoice.NoObjection, CriterionVoice.NotYet];

    private static readonly string[] Known = ["ageYears", "weightKg", "bodyMassIndex", "pregnant"];

    public static TheoryData<RapidSituation> Situations => [.. Enum.GetValues<RapidSituation>()];

    [Theory]
    [MemberData(nameof(Situations))]
    public void Unknown_is_never_met_and_never_not_met(RapidSituation situation)
    {
        RapidInput bare = Minutes.Man with { Situations = [situation] };
        string[] implied = [.. Minutes.Own.Situations.Single(s => s.Situation == situation).Implies.Select(static i => i.Question)];
        if (situation == RapidSituation.Pregnancy)
        {
            bare = new RapidInput(30, Anatomy.Body.Sex.Female, 70) { Situations = [situation] };
        }

        foreach (CriterionReading reading in Minutes.Criteria(bare))
        {
            AnswerCondition? when = Minutes.Own.Criteria.Single(c => c.Id == reading.Id).When;
            if (when is not null && !Known.Contains(when.Question) && !implied.Contains(when.Question))
            {
                Assert.Equal(CriterionState.Unknown, reading.State);
                Assert.DoesNotContain(reading.Voice, Judging);
            }
        }
    }

    [Fact]
    public void Another_answer_can_settle_what_is_open_and_nothing_else()
    {
        // Fixed seed: the same random answers at every run.
        Random chance = new(20261128);
        for (int round = 0; round < 60; round++)
        {
            RapidAnswer[] all = [.. Minutes.Own.Questions.Where(q => !DerivedAnswers.Names.Contains(q.Name) && q.Name != "pregnant").Select(q => q.Kind switch
            {
                QuestionKind.YesNo => RapidAnswer.Of(q.Name, chance.Next(2) == 0),
                QuestionKind.Word => RapidAnswer.Of(q.Name, q.Words[chance.Next(q.Words.Count)]),
                _ => RapidAnswer.Of(q.Name, NumberRange.Exactly(q.Low!.Value + (chance.NextDouble() * (q.High!.Value - q.Low.Value)))),
            })];
            RapidAnswer[] some = [.. all.Where(_ => chance.Next(3) > 0)];
            RapidInput input = Minutes.Man with { Situations = [RapidSituation.ArrestOutOfHospital, RapidSituation.ArrestInHospital, RapidSituation.LungFailure] };
            IReadOnlyList<CriterionReading> more = Minutes.Criteria(input with { Answers = all });
            Assert.All(Minutes.Criteria(input with { Answers = some }).Zip(more), static pair => Assert.True(
                pair.First.State == CriterionState.Unknown || pair.First.State == pair.Second.State, $"{pair.First.Id}: {pair.First.State}, then {pair.Second.State}"));
        }
    }

    [Fact]
    public void More_low_flow_never_speaks_less_against()
    {
        CriterionReading[]? before = null;
        int sources = 0;
        for (double minutes = 0; minutes <= 150; minutes += 0.5)
        {
            RapidInput input = Minutes.Man with { Situations = [RapidSituation.ArrestOutOfHospital, RapidSituation.ArrestInHospital], Answers = Minutes.Answers("coldBody=no"), Clock = ArrestClock.FromMinutes(1, minutes, 0) };
            CriterionReading[] now = [.. Minutes.Criteria(input).Where(static r => r.Kind is SelectionKind.Include or SelectionKind.Exclude)];
            QuestionReading question = Minutes.Questions(input).Single(static q => q.Name == "lowFlowMin");
            Assert.True(before is null || before.Zip(now).All(static p => p.First.Voice != CriterionVoice.Against || p.Second.Voice == CriterionVoice.Against));
            Assert.True(question.RefusedBy + question.NotTakenBy >= sources);
            (before, sources) = (now, question.RefusedBy + question.NotTakenBy);
        }

        Assert.True(sources >= 4);
    }

    [Fact]
    public void A_clock_that_still_runs_keeps_no_limit_but_passes_it()
    {
        CriterionReading At(double minutes) => Minutes.Criteria(Minutes.Man with { Clock = ArrestClock.FromMinutes(null, minutes, null) }).Single(static r => r.Id == "c037");
        Assert.Equal((CriterionVoice.Open, 20.0), (At(40).Voice, At(40).MinutesLeft));
        Assert.Equal((CriterionVoice.Open, 0.0), (At(60).Voice, At(60).MinutesLeft));
        Assert.Equal(CriterionVoice.Against, At(60.1).Voice);
        Assert.Equal(CriterionVoice.NoObjection, Minutes.Criteria(Minutes.Man with { Clock = ArrestClock.FromMinutes(null, 40, 20) }).Single(static r => r.Id == "c037").Voice);
    }

    [Theory]
    [InlineData("endTidalCo2MmHg=9", "lactateMmolPerL=19", null, CriterionState.Met)]
    [InlineData("endTidalCo2MmHg=9", "lactateMmolPerL=18", null, CriterionState.Unknown)]
    [InlineData("endTidalCo2MmHg=10", "lactateMmolPerL=18", null, CriterionState.NotMet)]
    [InlineData("endTidalCo2MmHg=9", "arterialSaturationPercent=84", null, CriterionState.Met)]
    [InlineData("endTidalCo2MmHg=9", "arterialSaturationPercent=85", "arterialPo2MmHg=50", CriterionState.Unknown)]
    [InlineData("lactateMmolPerL=10", "arterialSaturationPercent=85", "arterialPo2MmHg=49", CriterionState.Unknown)]
    public void Two_of_three_are_counted_with_what_is_unknown_left_open(string first, string second, string? third, CriterionState state) => Assert.Equal(
        state, Minutes.Criteria(Minutes.Man with { Answers = Minutes.Answers([first, second, .. third is null ? Array.Empty<string>() : [third]]) }).Single(static r => r.Id == "c006-two-of-three").State);

    [Fact]
    public void Too_early_is_not_against()
    {
        RapidInput early = Minutes.Man with { Clock = ArrestClock.FromMinutes(0, 8, null) };
        QuestionReading question = Minutes.Questions(early).Single(static q => q.Name == "compressionMin");
        Assert.False(question.Decisive);
        Assert.True(question.TooEarlyFor >= 3);
        Assert.All(Minutes.Criteria(early).Where(static r => r.Kind == SelectionKind.NotBefore), static r => Assert.NotEqual(CriterionVoice.Against, r.Voice));
    }

    [Fact]
    public void Decisive_answers_stand_first_with_the_number_of_sources_that_refuse()
    {
        IReadOnlyList<QuestionReading> questions = Minutes.Questions(new RapidInput(78, Anatomy.Body.Sex.Female, 60) { Answers = Minutes.Answers("witnessed=yes") });
        QuestionReading age = questions[0];
        Assert.Equal("ageYears", age.Name);
        Assert.True(age.Decisive);

        // Entries up to 75, 65, 70, 65 years and below 70, and one refusal above 75, each by another source.
        Assert.Equal((5, 1, 0), (age.NotTakenBy, age.RefusedBy, age.TakenBy));
        QuestionReading witnessed = questions.Single(static q => q.Name == "witnessed");
        Assert.False(witnessed.Decisive);
        Assert.Equal(witnessed.AskedBy, witnessed.TakenBy);
        Assert.All(questions.Zip(questions.Skip(1)), static p => Assert.True(p.First.RefusedBy + p.First.NotTakenBy >= p.Second.RefusedBy + p.Second.NotTakenBy));
    }

    [Fact]
    public void The_sources_counts_are_those_of_their_criteria()
    {
        IReadOnlyList<CriterionReading> readings = Minutes.Criteria(Minutes.Man with { Clock = ArrestClock.FromMinutes(4, 50, 20) });
        IReadOnlyList<SourceReading> sources = CriteriaEvaluation.Sources(readings);
        Assert.Equal(readings.Count(static r => r.Voice != CriterionVoice.Aside), sources.Sum(static s => s.For + s.Against + s.NoObjection + s.NotYet + s.Open));
        Assert.All(sources, static s => Assert.Equal(s.Against, s.AgainstInWords.Count));
    }
}
