using Cavaxis.Imaging.Calibration;
using Cavaxis.Imaging.Frames;
using Cavaxis.Imaging.Tests.Samples;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Imaging.Tests.Calibration;

public sealed class RegionJudgeTests
{
    [Fact]
    public void A_region_larger_than_the_image_is_named_with_the_scale_that_would_explain_it_and_waits_for_a_person()
    {
        FrameCalibration calibration = RegionJudge.Judge(320, 240, [Boxes.Tissue(84, 31, 595, 414, 0.05105)]);
        JudgedRegion region = calibration.Regions[0];
        Assert.Equal(RegionState.NeedsDecision, region.State);
        Assert.Equal(2, region.SuggestedShrink);
        RegionFinding finding = Assert.Single(region.Findings);
        Assert.Equal(RegionFlaw.LargerThanImage, finding.Flaw);
        Assert.Contains("640 by 480", finding.Words, StringComparison.Ordinal);
        Assert.Contains("0.1021", finding.Words, StringComparison.Ordinal);
        InputFault refused = Refusal(() => calibration.ScaleFor([new(50, 50), new(100, 100)]));
        Assert.Contains("Confirm by how much the image was shrunk, or measure by a known length", refused.Remedy, StringComparison.Ordinal);
    }

    [Fact]
    public void A_person_who_confirms_the_shrink_gets_the_larger_step_in_the_smaller_box_and_the_measurement_says_so()
    {
        FrameCalibration calibration = RegionJudge.Judge(320, 240, [Boxes.Tissue(84, 31, 595, 414, 0.05105)]).Confirm(1, 2);
        CalibratedRegion usable = calibration.Regions[0].Usable;
        Assert.Equal((42, 15, 297, 207), (usable.Left, usable.Top, usable.Right, usable.Bottom));
        LengthScale scale = calibration.ScaleFor([new(50, 50), new(100, 100)]);
        Assert.Equal(1.021, scale.MmPerColumn, 1e-9);
        Assert.Equal(ScaleOrigin.ConfirmedRegion, scale.Origin);
        Assert.Contains("by decision of a person", scale.Words, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(799, 599, RegionState.Sound)]
    [InlineData(800, 599, RegionState.Cut)]
    [InlineData(799, 600, RegionState.Cut)]
    [InlineData(801, 599, RegionState.NeedsDecision)]
    [InlineData(799, 601, RegionState.NeedsDecision)]
    public void One_pixel_outside_is_cut_and_two_need_a_decision(int right, int bottom, RegionState state)
    {
        JudgedRegion region = RegionJudge.Judge(800, 600, [Boxes.Tissue(0, 0, right, bottom)]).Regions[0];
        Assert.Equal(state, region.State);
        if (state == RegionState.Cut)
        {
            Assert.Equal((799, 599), (region.Usable.Right, region.Usable.Bottom));
            Assert.Equal(RegionFlaw.EndsOnePixelOutside, Assert.Single(region.Findings).Flaw);
        }
    }

    [Fact]
    public void A_cut_region_tells_so_in_the_scale()
    {
        LengthScale scale = RegionJudge.Judge(800, 600, [Boxes.Tissue(0, 0, 800, 599)]).ScaleFor([new(10, 10), new(20, 20)]);
        Assert.Contains("one pixel outside", scale.Words, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0.0)]
    [InlineData(-0.02)]
    [InlineData(1.001)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void A_step_that_cannot_be_makes_a_region_unusable(double step)
    {
        JudgedRegion region = RegionJudge.Judge(800, 600, [Boxes.Tissue(0, 0, 799, 599, step)]).Regions[0];
        Assert.Equal(RegionState.Unusable, region.State);
        Assert.Equal(RegionFlaw.ImplausibleStep, Assert.Single(region.Findings).Flaw);
    }

    [Theory]
    [InlineData(1.0)]
    [InlineData(0.0001)]
    public void Steps_at_the_edge_of_what_can_be_are_taken(double step) =>
        Assert.Equal(RegionState.Sound, RegionJudge.Judge(800, 600, [Boxes.Tissue(0, 0, 799, 599, step)]).Regions[0].State);

    [Theory]
    [InlineData(RegionUnit.None)]
    [InlineData(RegionUnit.Second)]
    [InlineData(RegionUnit.Degree)]
    [InlineData(RegionUnit.Percent)]
    public void A_unit_that_is_no_length_is_named(RegionUnit unit)
    {
        JudgedRegion region = RegionJudge.Judge(800, 600, [Boxes.Tissue(0, 0, 799, 599) with { UnitY = unit }]).Regions[0];
        Assert.Equal(RegionState.Unusable, region.State);
        Assert.Equal(RegionFlaw.UnitDoesNotFit, Assert.Single(region.Findings).Flaw);
        Assert.Contains(unit.ToString(), region.Findings[0].Words, StringComparison.Ordinal);
    }

    [Fact]
    public void A_spectrum_in_hertz_is_no_spectrum_of_speed() =>
        Assert.Equal(
            RegionFlaw.UnitDoesNotFit,
            Assert.Single(RegionJudge.Judge(320, 240, [Boxes.Spectrum(0, 0, 319, 239, 40) with { UnitY = RegionUnit.Hertz }]).Findings).Flaw);

    [Fact]
    public void A_region_that_ends_before_it_begins_is_unusable() =>
        Assert.Equal(RegionFlaw.Empty, Assert.Single(RegionJudge.Judge(320, 240, [Boxes.Tissue(100, 10, 90, 100)]).Findings).Flaw);

    [Fact]
    public void Two_regions_of_different_scale_that_overlap_are_named_and_a_point_in_both_is_refused()
    {
        FrameCalibration calibration = RegionJudge.Judge(800, 600, [Boxes.Tissue(0, 0, 400, 599, 0.02), Boxes.Tissue(390, 0, 799, 599, 0.03)]);
        Assert.All(calibration.Regions, static region => Assert.Equal(RegionFlaw.Overlaps, Assert.Single(region.Findings).Flaw));
        Assert.Contains("different scales", Refusal(() => calibration.ScaleFor([new(300, 100), new(395, 100)])).Remedy, StringComparison.Ordinal);
        Assert.Equal(0.2, calibration.ScaleFor([new(300, 100), new(380, 100)]).MmPerColumn, 1e-12);
    }

    [Fact]
    public void A_colour_box_on_its_picture_is_one_scale_with_it()
    {
        FrameCalibration calibration = RegionJudge.Judge(800, 600, [Boxes.Tissue(0, 0, 799, 599), Boxes.Tissue(100, 100, 200, 200) with { Content = RegionContent.ColourFlow }]);
        Assert.Empty(calibration.Findings);
        Assert.Equal(2, calibration.At(new(150, 150))[0].Number);
        Assert.Equal(1, calibration.ScaleFor([new(150, 150), new(300, 300)]).Region);
    }

    [Fact]
    public void A_measurement_across_two_regions_is_refused_by_name()
    {
        FrameCalibration calibration = RegionJudge.Judge(800, 600, [Boxes.Tissue(0, 0, 390, 599), Boxes.Tissue(400, 0, 799, 599)]);
        InputFault fault = Refusal(() => calibration.ScaleFor([new(100, 100), new(500, 100)]));
        Assert.Equal(FaultCode.Contradiction, fault.Code);
        Assert.Contains("region 1", fault.Value, StringComparison.Ordinal);
        Assert.Contains("region 2", fault.Value, StringComparison.Ordinal);
    }

    [Fact]
    public void A_point_outside_every_region_and_one_outside_the_image_are_refused()
    {
        FrameCalibration calibration = RegionJudge.Judge(800, 600, [Boxes.Tissue(0, 0, 390, 599)]);
        Assert.Contains("region 1", Refusal(() => calibration.ScaleFor([new(100, 100), new(391, 100)])).Accepted, StringComparison.Ordinal);
        Assert.Equal(FaultCode.OutOfRange, Refusal(() => calibration.ScaleFor([new(100, 100), new(100, 600)])).Code);
        Assert.Equal(FaultCode.OutOfRange, Refusal(() => calibration.ScaleFor([new(100, 100), new(double.NaN, 10)])).Code);
    }

    [Fact]
    public void An_image_without_regions_measures_nothing_by_itself()
    {
        FrameCalibration calibration = RegionJudge.Judge(800, 600, []);
        Assert.True(calibration.IsUncalibrated);
        Assert.Contains("known length", Refusal(() => calibration.ScaleFor([new(1, 1), new(2, 2)])).Remedy, StringComparison.Ordinal);
    }

    [Fact]
    public void Only_a_region_that_waits_for_a_decision_can_be_confirmed()
    {
        FrameCalibration calibration = RegionJudge.Judge(800, 600, [Boxes.Tissue(0, 0, 390, 599)]);
        Assert.Equal("region", Refusal(() => calibration.Confirm(1, 2)).Field);
        Assert.Equal("region", Refusal(() => calibration.Confirm(2, 2)).Field);
        FrameCalibration waiting = RegionJudge.Judge(320, 240, [Boxes.Tissue(84, 31, 595, 414)]);
        Assert.Equal("shrink", Refusal(() => waiting.Confirm(1, 0.9)).Field);
        Assert.Equal("shrink", Refusal(() => waiting.Confirm(1, 8.1)).Field);
    }

    [Fact]
    public void The_traps_of_the_open_files_are_each_noticed()
    {
        if (SampleFolder.Path is null)
        {
            return;
        }

        PlainFile shrunk = new("us", "echo_30frame_uncompressed_rgb.dcm");
        JudgedRegion larger = Assert.Single(RegionJudge.Judge(shrunk.Width, shrunk.Height, shrunk.Regions()).Regions);
        Assert.Equal((RegionState.NeedsDecision, 2.0), (larger.State, larger.SuggestedShrink));
        PlainFile sound = new("us", "echo_1frame_uncompressed.dcm");
        Assert.Empty(RegionJudge.Judge(sound.Width, sound.Height, sound.Regions()).Findings);
    }

    private static InputFault Refusal(Func<object> act) => Assert.Throws<InputFaultException>(act).Faults[0];
}
