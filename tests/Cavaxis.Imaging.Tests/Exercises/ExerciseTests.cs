using Cavaxis.Anatomy.Space;
using Cavaxis.Imaging.Echo;
using Cavaxis.Imaging.Exercises;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Imaging.Tests.Exercises;

public class ExerciseTests
{
    private static readonly Exercise Aligned = ExerciseMaker.Make(10, 3);

    public static TheoryData<int> Levels => [.. Enumerable.Range(1, ExerciseMaker.HighestLevel)];

    [Fact]
    public void The_tip_marked_is_worth_all_points_and_anything_else_less()
    {
        ExerciseTruth truth = Aligned.Truth;
        Assert.True(truth.InView);
        ExerciseScore right = ExerciseJudge.Judge(Aligned, ExerciseAnswer.At(Aligned.Frame, truth.X, truth.Y));
        Assert.Equal((100, true, 0.0), (right.Points, right.Found, Math.Round(right.DistanceMm!.Value, 9)));
        double aside = 20 / Aligned.Frame.Grid.MmPerPixel;
        ExerciseScore wrong = ExerciseJudge.Judge(Aligned, ExerciseAnswer.At(Aligned.Frame, truth.X + (aside * truth.AlongX), truth.Y + (aside * truth.AlongY)));
        Assert.False(wrong.Found);
        Assert.Equal((20.0, 0.0), (Math.Round(wrong.AlongMm!.Value, 6), Math.Round(wrong.AcrossMm!.Value, 6)));
        Assert.Equal((int)Math.Round(100 * Math.Exp(-(20 - truth.ToleranceMm) / 8)), wrong.Points);
        ExerciseScore blind = ExerciseJudge.Judge(Aligned, ExerciseAnswer.NotInView);
        Assert.Equal((0, false), (blind.Points, blind.Found));
        Assert.Contains("The tip is in view", blind.Explanation[0], StringComparison.Ordinal);
    }

    // The scene says how far beyond the tip the introducer reaches; the mark on its end must be off by that, and be told so.
    [Fact]
    public void A_mark_on_the_end_of_the_introducer_is_off_by_its_length_and_told_why()
    {
        Lookalike end = Assert.Single(Aligned.Truth.Lookalikes, static l => l.Kind == LookalikeKind.IntroducerEnd);
        ExerciseScore score = ExerciseJudge.Judge(Aligned, ExerciseAnswer.At(Aligned.Frame, end.X, end.Y));
        Assert.Equal(LookalikeKind.IntroducerEnd, score.TakenFor!.Kind);
        Assert.InRange(score.AlongMm!.Value, Aligned.Scene.Device!.IntroducerBeyondTipMm - 0.5, Aligned.Scene.Device.IntroducerBeyondTipMm + 0.5);
        Assert.Contains("introducer", score.Explanation[1], StringComparison.Ordinal);
    }

    [Fact]
    public void The_picture_shows_the_walls_up_to_the_tip_and_not_beyond()
    {
        Exercise exercise = ExerciseMaker.Make(11, 1);
        (double along, double beyond) = (Brightest(exercise, -15), Brightest(exercise, 12));
        Assert.True(along > 150 && beyond < 60, $"{along} before the tip, {beyond} beyond it");
    }

    [Theory]
    [MemberData(nameof(Levels))]
    public void Every_level_is_drawn_from_its_seed_alone(int level)
    {
        for (ulong seed = 0; seed < 30; seed++)
        {
            ExerciseSetup setup = ExerciseMaker.Setup(seed, level);
            ExerciseTruth truth = Truth(setup);
            ExerciseTruth again = Truth(ExerciseMaker.Setup(seed, level));
            Assert.Equal((truth.X, truth.Y, truth.InView), (again.X, again.Y, again.InView));
            Assert.InRange(truth.ToleranceMm, 2, 9);
            if (truth.InView)
            {
                Assert.InRange(truth.X, 0, 639);
                Assert.InRange(truth.Y, 0, 511);
            }
            else
            {
                Assert.True(level >= 4);
                Assert.Contains(truth.Lookalikes, static l => l.Kind is LookalikeKind.CutEnd or LookalikeKind.PictureEdge);
            }
        }
    }

    [Fact]
    public void Hard_levels_ask_for_tips_in_view_and_out_of_it()
    {
        int seen = Enumerable.Range(0, 60).Count(static s => Truth(ExerciseMaker.Setup((ulong)s, 4)).InView);
        Assert.InRange(seen, 12, 50);
    }

    // A straight cannula and a plane turned by an angle about a point of its middle: the middle lies x sin(angle) beside the plane at a way
    // x from there, and leaves the slice where that is its radius and half the slice's thickness.
    [Theory]
    [InlineData(10)]
    [InlineData(16)]
    public void The_cut_end_lies_where_geometry_puts_it(double angle)
    {
        DeviceAssembly device = new(
            Aligned.Scene.Device!.Cannula, AssemblyState.CannulaAlone, new SpaceCurve([new Vector3D(0, 0, 0), new Vector3D(0, 0, 400)]), 240);
        Probe probe = new(ProbeKind.Convex, 3.5, 115, 60, 22, radiusMm: 50, angleDeg: 62, sliceApertureMm: 12, sliceFocusMm: 62);
        double reach = (device.OuterRadiusMm(60) + (probe.SliceWidthMm(60) / 2)) / Math.Sin(angle * Math.PI / 180);
        double crossing = 240 - reach - 15;
        ScanPlane plane = new(new Vector3D(0, -60, crossing), new Vector3D(0, 1, 0), angle);
        PictureGrid grid = ScanConversion.Grid(new BeamLayout(probe), plane, new EchoDisplay());
        ExerciseTruth truth = ExerciseGeometry.Truth(device, probe, grid);
        Assert.False(truth.InView);
        Lookalike cut = Assert.Single(truth.Lookalikes, static l => l.Kind == LookalikeKind.CutEnd);
        Assert.InRange(cut.FromTipMm, 14.4, 15.6);
        double right = reach * Math.Cos(angle * Math.PI / 180);
        Assert.InRange(cut.X - grid.Pixel(right, 60).X, -3, 3);
    }

    [Fact]
    public void A_tip_out_of_view_is_right_when_said_and_wrong_when_marked()
    {
        ulong seed = (ulong)Enumerable.Range(0, 60).First(static s => !Truth(ExerciseMaker.Setup((ulong)s, 4)).InView);
        Exercise exercise = ExerciseMaker.Make(seed, 4);
        ExerciseScore said = ExerciseJudge.Judge(exercise, ExerciseAnswer.NotInView);
        Assert.Equal((100, true), (said.Points, said.Found));
        Lookalike cut = exercise.Truth.Lookalikes.First(static l => l.Kind == LookalikeKind.CutEnd);
        ExerciseScore marked = ExerciseJudge.Judge(exercise, ExerciseAnswer.At(exercise.Frame, cut.X, cut.Y));
        Assert.Equal((0, LookalikeKind.CutEnd), (marked.Points, marked.TakenFor!.Kind));
        Assert.Null(marked.DistanceMm);
        Assert.Contains("slantwise", marked.Explanation[1], StringComparison.Ordinal);
    }

    [Fact]
    public void A_series_goes_up_after_two_good_answers_and_down_after_two_bad_ones()
    {
        ExerciseScore good = ExerciseJudge.Judge(Aligned, ExerciseAnswer.At(Aligned.Frame, Aligned.Truth.X, Aligned.Truth.Y));
        ExerciseScore bad = ExerciseJudge.Judge(Aligned, ExerciseAnswer.NotInView);
        ExerciseSeries series = ExerciseSeries.Empty;
        Assert.Equal((1, null), (series.NextLevel, series.Mean));
        series = series.With(Aligned, good).With(Aligned, good);
        Assert.Equal((2, 100.0), (series.NextLevel, series.Mean));
        series = series.With(Aligned, bad);
        Assert.Equal(2, series.NextLevel);
        series = series.With(Aligned, bad);
        Assert.Equal((1, 50.0), (series.NextLevel, series.Mean));
    }

    [Fact]
    public void Levels_and_marks_that_are_none_are_refused()
    {
        Assert.Equal("exercise.level", Assert.Throws<InputFaultException>(static () => ExerciseMaker.Make(1, 6)).Faults[0].Field);
        Assert.Equal("answer.x", Assert.Throws<InputFaultException>(static () => ExerciseAnswer.At(Aligned.Frame, 700, 5)).Faults[0].Field);
        Assert.Equal("answer.y", Assert.Throws<InputFaultException>(static () => ExerciseAnswer.At(Aligned.Frame, 5, double.NaN)).Faults[0].Field);
        Assert.Equal(ExerciseMaker.HighestLevel, ExerciseMaker.Levels.Count);
    }

    private static ExerciseTruth Truth(ExerciseSetup setup) =>
        ExerciseGeometry.Truth(setup.Scene.Device!, setup.Probe, ScanConversion.Grid(new BeamLayout(setup.Probe), setup.Plane, setup.Display));

    // Brightest pixel across the cannula at a way along it from the tip, mm.
    private static double Brightest(Exercise exercise, double along)
    {
        ExerciseTruth truth = exercise.Truth;
        double step = exercise.Frame.Grid.MmPerPixel;
        return Enumerable.Range(-30, 61).Max(i => exercise.Frame.Image.Brightness(
            (int)(truth.X + (along / step * truth.AlongX) - (i * 0.2 / step * truth.AlongY)), (int)(truth.Y + (along / step * truth.AlongY) + (i * 0.2 / step * truth.AlongX))));
    }
}
