using Cavaxis.Imaging.Frames;
using Cavaxis.Imaging.Measurement;
using Cavaxis.Web.Pages.Images;
using Cavaxis.Web.Pointing;

namespace Cavaxis.Web.Tests.Images;

public sealed class ImageWorkTests
{
    private const string Sha = "0123456789abcdef0123456789abcdef0123456789abcdef0123456789abcdef";
    private static readonly CalibratedRegion Tissue = new(RegionFormat.TwoDimensional, RegionContent.Tissue, 0, 0, 199, 199, RegionUnit.Centimetre, RegionUnit.Centimetre, 0.02, 0.02);

    [Fact]
    public void Two_points_a_hundred_pixels_apart_are_twenty_millimetres_at_a_fifth_of_a_millimetre_a_pixel()
    {
        ImageWork work = new(Sha, 200, 200, [Tissue]);
        Assert.Equal(MeasureTool.Distance, work.Tool);
        work.Put(new PicturePoint(20, 50));
        Assert.Empty(work.Measure(null).Measurements);
        work.Put(new PicturePoint(120, 50));
        ImageMeasurement distance = Assert.Single(work.Measure(null).Measurements);
        Assert.Equal(20, distance.Value.Value, 1e-9);
        Assert.True(distance.Value.Sd > 0);
        Assert.Equal("mm", distance.Unit);
    }

    [Fact]
    public void A_third_point_of_a_distance_begins_anew_and_the_last_point_is_taken_back()
    {
        ImageWork work = new(Sha, 200, 200, [Tissue]);
        work.Put(new PicturePoint(1, 1));
        work.Put(new PicturePoint(50, 1));
        work.Put(new PicturePoint(9, 9));
        Assert.Equal([new PicturePoint(9, 9)], work.Points);
        work.Undo();
        work.Undo();
        Assert.Empty(work.Points);
    }

    [Fact]
    public void Without_calibration_nothing_is_measured_until_a_length_is_known()
    {
        ImageWork work = new(Sha, 200, 200, []);
        Assert.Equal(MeasureTool.KnownLength, work.Tool);
        work.Take(MeasureTool.Distance);
        work.Put(new PicturePoint(20, 50));
        work.Put(new PicturePoint(120, 50));
        MeasureOutcome refused = work.Measure(null);
        Assert.Empty(refused.Measurements);
        Assert.Contains("known length", Assert.Single(refused.Faults).Remedy, StringComparison.Ordinal);

        work.Take(MeasureTool.KnownLength);
        work.Put(new PicturePoint(10, 10));
        work.Put(new PicturePoint(60, 10));
        work.Know(10);
        work.Take(MeasureTool.Distance);
        work.Put(new PicturePoint(20, 50));
        work.Put(new PicturePoint(120, 50));
        ImageMeasurement distance = Assert.Single(work.Measure(null).Measurements);
        Assert.Equal(20, distance.Value.Value, 1e-9);
        Assert.Contains(distance.Remarks, static r => r.Contains("known length", StringComparison.Ordinal));
        work.Know(null);
        Assert.NotEmpty(work.Measure(null).Faults);
    }

    [Fact]
    public void A_region_larger_than_the_image_is_measured_in_only_after_a_person_decided()
    {
        ImageWork work = new(Sha, 320, 240, [Tissue with { Left = 84, Right = 595, Top = 31, Bottom = 414, StepX = 0.05, StepY = 0.05 }]);
        work.Take(MeasureTool.Distance);
        work.Put(new PicturePoint(100, 100));
        work.Put(new PicturePoint(200, 100));
        Assert.NotEmpty(work.Measure(null).Faults);
        work.Confirm(1, 2);
        Assert.Equal(100, Assert.Single(work.Measure(null).Measurements).Value.Value, 1e-9);
    }

    [Fact]
    public void The_middle_of_the_first_pixel_is_half_a_pixel_from_the_corner_of_the_picture()
    {
        Assert.Equal(new(0, 0), ImageWork.Pixel(new PicturePoint(0.5, 0.5)));
        Assert.Equal(new PicturePoint(0.5, 0.5), ImageWork.Place(new(0, 0)));
    }

    [Fact]
    public void A_number_has_as_many_digits_as_its_error_leaves() =>
        Assert.Equal("13.60 mm (90 % interval 12.78 to 14.42), measured", MeasureWords.Value(Quantities.Estimate.Normal(13.6, 0.5, Quantities.Origin.Measured), "mm"));
}
