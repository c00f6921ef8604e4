using Cavaxis.Course.Events;
using Cavaxis.Course.Patients;
using Cavaxis.Course.Positions;
using Cavaxis.Planning.Configurations;
using CsCheck;

namespace Cavaxis.Course.Tests.Positions;

public class PositionReviewTests
{
    private static readonly DateTimeOffset Start = new(2031, 2, 3, 4, 0, 0, TimeSpan.Zero);

    [Fact]
    public void A_cannula_that_no_image_showed_is_told() =>
        Assert.Equal(
            "No image of \"drainage\" is in this record: where its tip and ports lie is not known.",
            Assert.Single(Review(new PositionRead { Cannula = "drainage", DepthCm = 40, SeenBy = PositionSight.SkinMark }).Warnings).Text);

    [Theory]
    [InlineData(40, 41, false)]
    [InlineData(40, 39, false)]
    [InlineData(40, 41.1, true)]
    [InlineData(40, 38.9, true)]
    [InlineData(40.1, 41.1, false)]
    public void A_shift_at_the_skin_of_more_than_a_centimetre_is_told_and_one_of_a_centimetre_is_not(double imaged, double now, bool told)
    {
        PositionReview review = Review(Image(imaged), Mark(now));
        Assert.Equal(now - imaged, review.DepthShiftCm!.Value, 9);
        Assert.Equal(told, review.Warnings.Any(static w => w.Rule == PositionRule.Depth));
    }

    [Fact]
    public void The_words_give_both_depths_and_their_difference() =>
        Assert.Equal("\"drainage\" is at 38 cm at the skin; an image last showed it at 40.5 cm, 2.5 cm deeper than now.", Assert.Single(Review(Image(40.5), Mark(38)).Warnings).Text);

    [Fact]
    public void An_image_without_a_depth_confirms_the_depth_that_was_last_written_down_before_it()
    {
        PositionReview review = Review(Mark(41), new PositionRead { Cannula = "drainage", SeenBy = PositionSight.Fluoroscopy, TurnDeg = 0 }, Mark(38));
        Assert.Equal((41, -3), (review.ConfirmedDepthCm, review.DepthShiftCm));
        Assert.Equal(42, Review(new PositionRead { Cannula = "drainage", SeenBy = PositionSight.Fluoroscopy, TurnDeg = 0 }).ConfirmedDepthCm);
    }

    [Fact]
    public void A_move_after_the_last_image_is_told_until_an_image_shows_it_again()
    {
        CannulaMoved moved = new() { Cannula = "drainage", DepthCm = 40.5, Reason = "chatter" };
        Assert.Equal("\"drainage\" was moved 1 time since an image last showed it.", Assert.Single(Review(Image(40), moved).Warnings).Text);
        Assert.Empty(Review(Image(40), moved, Image(40.5)).Warnings);
    }

    [Theory]
    [InlineData(170, -170, 20, false)]
    [InlineData(170, -169, 21, true)]
    [InlineData(10, -15, -25, true)]
    public void A_turn_is_counted_the_short_way_round(double imaged, double now, double shift, bool told)
    {
        PositionReview review = Review(
            new PositionRead { Cannula = "drainage", TurnDeg = imaged, SeenBy = PositionSight.TransoesophagealUltrasound }, new PositionRead { Cannula = "drainage", TurnDeg = now, SeenBy = PositionSight.SkinMark });
        Assert.Equal(shift, review.TurnShiftDeg!.Value, 9);
        Assert.Equal(told, review.Warnings.Any(static w => w.Rule == PositionRule.Turn));
    }

    [Fact]
    public void A_cannula_that_is_out_needs_no_warning() =>
        Assert.Empty(Review(Image(40), Mark(30), new CannulaRemoved { Cannula = "drainage", Method = RemovalMethod.SkinSuture }).Warnings);

    [Fact]
    public void The_shift_is_that_between_the_last_depth_and_the_depth_at_the_last_image_whatever_came_between() =>
        Gen.Select(Gen.Double[20, 50].Array[1, 20], Gen.Int[0, 19]).Sample(static (depths, image) =>
        {
            int at = image % depths.Length;
            PositionReview review = Review([.. depths.Select((d, i) => (CourseEvent)(i == at ? Image(d) : Mark(d)))]);
            Assert.Equal(depths[^1] - depths[at], review.DepthShiftCm!.Value, 9);
        }, iter: 200);

    private static PositionRead Image(double depthCm) => new() { Cannula = "drainage", DepthCm = depthCm, SeenBy = PositionSight.TransoesophagealUltrasound };

    private static PositionRead Mark(double depthCm) => Image(depthCm) with { SeenBy = PositionSight.SkinMark };

    private static PositionReview Review(params CourseEvent[] later) => PositionReview.Of(Assert.Single(PatientCourse.Of(
    [
        new CourseEntry(1, Start, Start, "a", new CannulaPlaced { Cannula = "drainage", Role = CannulaRole.Drainage, DepthCm = 42 }),
        .. later.Select(static (e, i) => new CourseEntry(2 + i, Start.AddMinutes(i + 1), Start, "a", e)),
    ]).Cannulae));
}
