using Cavaxis.Anatomy.Space;
using Cavaxis.Devices.Catalogue;
using Cavaxis.Devices.Wires;
using Cavaxis.Planning.Insertion;
using Cavaxis.Planning.Plans;
using Cavaxis.Planning.Steps;

namespace Cavaxis.Planning.Tests.Insertion;

public class InsertionPlayTests
{
    private const int Anatomies = 12;

    private static readonly Told Counted = new();

    private static readonly Lazy<InsertionResult> Played = new(static () => BentAdult.Study(new InsertionOptions { Wire = WireClass.Stiff, Anatomies = Anatomies, Advice = false, Plays = true }, Counted));

    private static CannulaInsertion Cannula => Played.Value.Cannulae[0];

    [Fact]
    public void The_middle_anatomy_is_played_first_and_then_one_anatomy_for_each_way_of_going_wrong()
    {
        Assert.Equal(0, Cannula.Plays[0].Anatomy);
        Assert.Null(Cannula.Plays[0].Share);
        InsertionPlay[] wrong = [.. Cannula.Plays.Skip(1)];
        Assert.NotEmpty(wrong);
        Assert.All(wrong, static p => Assert.InRange(p.Anatomy, 1, Anatomies));
        Assert.All(wrong, static p => Assert.NotEqual(InsertionPhase.None, p.WrongAt));
        Assert.Equal(wrong.Length, wrong.Select(static p => (p.WrongAt, p.End, p.EndAfterCannula, p.CannulaTip)).Distinct().Count());
        Assert.True(wrong.Sum(static p => p.Share!.Value) <= 1 - Cannula.Right.Value + 1e-9);
        Assert.Equal(wrong.OrderByDescending(static p => p.Share!.Value).Select(static p => p.Anatomy), wrong.Select(static p => p.Anatomy));
    }

    [Fact]
    public void Every_moment_lies_in_the_lumen_on_a_line_that_does_not_stretch()
    {
        foreach (InsertionPlay play in Cannula.Plays)
        {
            Assert.NotEmpty(play.Frames);
            foreach (InsertionFrame frame in play.Frames)
            {
                Assert.Equal(frame.PathMm.Count, frame.ArcsMm.Count);
                for (int i = 1; i < frame.PathMm.Count; i++)
                {
                    double span = frame.ArcsMm[i] - frame.ArcsMm[i - 1];
                    Assert.Equal(span, (frame.PathMm[i] - frame.PathMm[i - 1]).Length, 0.05 * span);
                }

                // Behind the skin the tract guides; from there on the middle line is inside.
                Assert.All(frame.PathMm.Skip(3), (Vector3D p) => Assert.True(play.Lumen.At(p).DistanceMm < 0.1));
            }
        }
    }

    [Fact]
    public void Wire_goes_in_before_the_cannula_and_only_the_cannula_is_left_at_its_depth()
    {
        foreach (InsertionPlay play in Cannula.Plays)
        {
            InsertionFrame[] feed = [.. play.Frames.Where(static f => f.Phase == InsertionPhase.WireFeed)];
            Assert.All(feed, static f => Assert.Equal(0, f.CannulaMm));
            Assert.Equal(feed.OrderBy(static f => f.WireMm).Select(static f => f.WireMm), feed.Select(static f => f.WireMm));
            InsertionFrame last = play.Frames[^1];
            Assert.Equal(0, last.WireMm);
            Assert.Equal(0, last.IntroducerMm);
            Assert.Equal(Cannula.DepthCm * 10, last.CannulaMm, 0.01);
            Assert.Equal(play.CannulaTip, last.TipAt);
        }
    }

    [Fact]
    public void The_moment_at_which_it_goes_wrong_belongs_to_the_part_that_does()
    {
        foreach (InsertionPlay play in Cannula.Plays)
        {
            Assert.Equal(play.WrongAt == InsertionPhase.None, play.WrongFrame is null);
            if (play.WrongFrame is int wrong)
            {
                Assert.Equal(play.WrongAt, play.Frames[wrong].Phase);
                Assert.Equal(play.Frames.Last(f => f.Phase == play.WrongAt).TipAt, play.Frames[wrong].TipAt);
            }
        }
    }

    [Fact]
    public void Progress_ends_at_the_number_of_insertions()
    {
        Assert.NotEmpty(Played.Value.Cannulae);
        Assert.Equal(new InsertionProgress(Anatomies, Anatomies), Counted.Furthest);
    }

    [Fact]
    public void Plans_keep_their_ranks_and_each_tells_how_it_goes_in()
    {
        PlanningResult some = BentAdult.Planning with { Plans = [.. BentAdult.Planning.Plans.Where(static p => p.Cannulae.Count == 1).Take(1)], ChosenPlan = BentAdult.OneCannula.Rank };
        (PlanningResult tried, InsertionResult? chosen) = PlanInsertions.On(BentAdult.Case, DeviceCatalogue.BuiltIn, some, new InsertionOptions { Anatomies = Anatomies });
        Assert.Equal(tried.Steps, chosen!.Steps);
        Assert.Equal(some.Plans.Select(static p => p.Rank), tried.Plans.Select(static p => p.Rank));
        Assert.All(tried.Plans, static p => Assert.Equal(Anatomies, p.Insertion!.Anatomies));
        Assert.Equal(Played.Value.EveryCannulaRight, tried.Plans[0].Insertion!.EveryCannulaRight);
        Assert.Equal(Played.Value.Steps.Select(static s => s.PredictedPitfall), tried.Steps.Select(static s => s.PredictedPitfall));
        Assert.Contains(tried.Steps, static s => s.PredictedPitfall is not null);
        Assert.NotEmpty(tried.Plans[0].Insertion!.Pitfall);
        Assert.DoesNotContain(tried.Steps, static s => s.PredictedPitfall?.Contains("wire ends in deep", StringComparison.Ordinal) == true);
    }

    [Fact]
    public void A_study_of_another_plan_is_not_put_into_a_planning_result() => Assert.Throws<ArgumentException>(static () =>
        PlanInsertions.With(BentAdult.Planning with { ChosenPlan = BentAdult.OneCannula.Rank == 1 ? 2 : 1 }, Played.Value));

    private sealed class Told : IProgress<InsertionProgress>
    {
        private readonly Lock gate = new();
        private InsertionProgress furthest;

        public InsertionProgress Furthest
        {
            get
            {
                lock (gate)
                {
                    return furthest;
                }
            }
        }

        public void Report(InsertionProgress value)
        {
            lock (gate)
            {
                furthest = value.Done > furthest.Done ? value : furthest;
            }
        }
    }
}
