using Cavaxis.Imaging.Calibration;
using Cavaxis.Imaging.Measurement;
using Cavaxis.Imaging.Tests.Samples;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Imaging.Tests.Calibration;

public sealed class KnownLengthTests
{
    [Fact]
    public void A_frame_without_calibration_is_measured_by_two_marks_of_a_cannula_and_says_so()
    {
        KnownLength marks = new(50, 0.5, new(100, 100), new(300, 100), "two marks of the cannula, 5 cm apart");
        FrameRuler ruler = new(Boxes.Frame, RegionJudge.Judge(800, 600, []), known: marks);
        ImageMeasurement distance = ruler.Distance(new(100, 200), new(180, 260));
        Assert.Equal(25, distance.Value.Value, 1e-9);
        Assert.Equal(ScaleOrigin.KnownLength, distance.Provenance.ScaleOrigin);
        Assert.Null(distance.Provenance.Region);
        Assert.Contains(distance.Remarks, static r => r.Contains("No calibration of the file is used", StringComparison.Ordinal) && r.Contains("two marks of the cannula", StringComparison.Ordinal));
    }

    [Fact]
    public void The_error_of_the_known_length_is_carried_into_every_measurement()
    {
        // Placing: √2 × 1.5/200 of the marks and √2 × 1.5 × 0.25 mm of the points; length 1 %.
        KnownLength marks = new(50, 0.5, new(100, 100), new(300, 100), "two marks");
        FrameRuler ruler = new(Boxes.Frame, RegionJudge.Judge(800, 600, []), known: marks);
        double scale = Math.Sqrt((2 * 1.5 * 1.5 / (200.0 * 200)) + 1e-4);
        double expected = Math.Sqrt(Math.Pow(25 * scale, 2) + (2 * Math.Pow(1.5 * 0.25, 2)));
        Assert.Equal(expected, ruler.Distance(new(100, 200), new(180, 260)).Value.Sd, 1e-6);
    }

    [Theory]
    [InlineData(0.4, 0, "known.lengthMm")]
    [InlineData(501, 0, "known.lengthMm")]
    [InlineData(50, 10.1, "known.sdMm")]
    public void A_length_that_cannot_be_is_refused(double length, double sd, string field) =>
        Assert.Equal(field, Assert.Throws<InputFaultException>(() => new KnownLength(length, sd, new(0, 0), new(100, 0), "marks")).Faults[0].Field);

    [Theory]
    [InlineData(4.9, false)]
    [InlineData(5.0, true)]
    public void Points_too_close_together_give_no_scale(double apart, bool taken)
    {
        InputFaultException? refused = Record.Exception(() => new KnownLength(50, 0, new(0, 0), new(apart, 0), "marks")) as InputFaultException;
        Assert.Equal(taken, refused is null);
    }

    [Fact]
    public void A_scale_too_unsure_to_be_one_is_refused()
    {
        KnownLength near = new(5, 0, new(100, 100), new(106, 100), "outer diameter of the cannula");
        Assert.Equal(
            "scale.relativeSd", Assert.Throws<InputFaultException>(() => new FrameRuler(Boxes.Frame, RegionJudge.Judge(800, 600, []), known: near)).Faults[0].Field);
    }
}
