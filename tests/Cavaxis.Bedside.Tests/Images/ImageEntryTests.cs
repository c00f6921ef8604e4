using Cavaxis.Anatomy.Axis;
using Cavaxis.Anatomy.Body;
using Cavaxis.Anatomy.Landmarks;
using Cavaxis.Anatomy.Lumens;
using Cavaxis.Anatomy.Population;
using Cavaxis.Anatomy.Sampling;
using Cavaxis.Bedside.Images;
using Cavaxis.Course.Events;
using Cavaxis.Course.Observations;
using Cavaxis.Devices.Catalogue;
using Cavaxis.Imaging.Calibration;
using Cavaxis.Imaging.Frames;
using Cavaxis.Imaging.Measurement;
using Cavaxis.Imaging.Tips;
using Cavaxis.Imaging.Tomography;
using Cavaxis.Planning.Case;
using Cavaxis.Quantities;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Bedside.Tests.Images;

public sealed class ImageEntryTests
{
    private static readonly string Hash = new('c', 64);

    private static readonly FrameRuler Ruler = new(
        new FrameIdentity(Hash, 3),
        RegionJudge.Judge(640, 480, [new CalibratedRegion(RegionFormat.TwoDimensional, RegionContent.Tissue, 0, 0, 639, 479, RegionUnit.Centimetre, RegionUnit.Centimetre, 0.02, 0.02)]));

    [Fact]
    public void A_vessel_enters_the_survey_with_its_own_error()
    {
        ImageMeasurement diameter = Ruler.Distance(new(100, 100), new(170, 100));
        VesselEntry entry = CaseEntries.Vessel(diameter, VesselName.InternalJugularVein, BodySide.Right);
        Assert.Equal(14, entry.DiameterMm!.Value, 1e-9);
        Assert.Equal(diameter.Value.Sd, entry.DiameterMm.Sd, 1e-12);
        Assert.True(entry.DiameterMm.SdGiven);
    }

    [Fact]
    public void A_value_that_the_case_does_not_take_is_refused_before_it_is_written()
    {
        Assert.Equal("diameterMm", Fault(() => CaseEntries.Vessel(Ruler.Distance(new(100, 100), new(400, 100)), VesselName.CommonFemoralVein, BodySide.Left)).Field);
        Assert.Equal(FaultCode.WrongKind, Fault(() => CaseEntries.Vessel(Ruler.Area([new(100, 100), new(200, 100), new(150, 200)]), VesselName.CommonFemoralVein, BodySide.Left)).Code);
        Assert.Equal("axis.value", Fault(() => CaseEntries.Axis(Ruler.Distance(new(10, 10), new(20, 10)), AxisDimension.AtrialSpan, AxisMethod.TransoesophagealEcho)).Field);
        Assert.Equal(FaultCode.WrongKind, Fault(() => CaseEntries.Axis(Ruler.Distance(new(10, 10), new(300, 10)), AxisDimension.CavalBendFrontal, AxisMethod.Ct)).Code);
    }

    [Fact]
    public void An_axis_entry_names_method_and_edges_and_a_bend_is_what_is_missing_to_straight()
    {
        AxisEntry span = CaseEntries.Axis(
            Ruler.Distance(new(100, 100), new(400, 100)), AxisDimension.AtrialSpan, AxisMethod.TransoesophagealEcho, JunctionEdge.CristaTerminalis, JunctionEdge.EustachianRim);
        Assert.Equal((60.0, AxisMethod.TransoesophagealEcho, JunctionEdge.CristaTerminalis), (Math.Round(span.Value, 9), span.Method, span.SuperiorEdge));
        AxisEntry bend = CaseEntries.Axis(Ruler.Angle(new(100, 100), new(300, 100), new(500, 150)), AxisDimension.CavalBendSagittal, AxisMethod.Ct, isNegative: true);
        Assert.Equal(-Math.Atan2(50, 200) * 180 / Math.PI, bend.Value, 1e-9);
    }

    [Fact]
    public void A_traced_axis_enters_as_one_entry_a_dimension_to_a_tenth_with_method_and_edges()
    {
        SpaceCurve line = new([new(0, 0, 0), new(0, 0, -150)]);
        LumenSection[] sections = [.. Enumerable.Range(0, 76).Select(static i => new LumenSection(
            2 * i, new(0, 0, -2 * i), new(1, 0, 0), new(0, 1, 0), [.. Enumerable.Repeat(i < 38 ? 8.333 : 10.277, 48)], 200, 150, 0))];
        AxisLandmark At(CavalLandmark landmark, double arc, JunctionEdge edge) => new(landmark, LandmarkOrigin.Confirmed, arc, 3, line.At(arc), edge, "confirmed on the pictures");
        IReadOnlyList<AxisEntry> entries = CaseEntries.Axis(new TracedAxis(
            line, sections, [At(CavalLandmark.Scaj, 50, JunctionEdge.CristaTerminalis), At(CavalLandmark.Icaj, 105.04, JunctionEdge.EustachianRim)], 0.3, null));
        Assert.Equal([AxisDimension.SvcDiameter, AxisDimension.IvcDiameter], entries.Select(static e => e.Dimension));
        Assert.Equal([16.7, 20.6], entries.Select(static e => e.Value));
        Assert.All(entries, static e => Assert.Equal((AxisMethod.Ct, Math.Round(e.Sd!.Value, 1)), (e.Method, e.Sd.Value)));
        Assert.Empty(CaseEntries.Axis(new TracedAxis(line, sections, [], 0.3, null)));
    }

    [Fact]
    public void Flow_of_the_heart_enters_case_and_record()
    {
        ImageMeasurement integral = Ruler.Distance(new(100, 100), new(170, 100)) with { Kind = MeasurementKind.VelocityTimeIntegral, Value = Estimate.Normal(17.5, 0.9, Origin.Measured), Unit = "cm" };
        HeartSection heart = CaseEntries.Flow(CaseEntries.OutflowDiameter(new HeartSection(), Ruler.Distance(new(100, 100), new(205, 100))), integral);
        Assert.Equal((21.0, 17.5, 0.9), (Math.Round(heart.LvotDiameterMm!.Value, 9), heart.LvotVtiCm!.Value, heart.LvotVtiCm.Sd));
        Reading reading = RecordEntries.Reading(integral, ObservedQuantity.OutflowVtiCm);
        Assert.Equal((17.5, 0.9), (reading.Value, reading.Sd));
        Assert.Contains("frame 3 of file cccccccccccc", reading.Method, StringComparison.Ordinal);
        Assert.Equal(FaultCode.WrongKind, Fault(() => RecordEntries.Reading(integral, ObservedQuantity.HeartRatePerMin)).Code);
        Assert.Equal(FaultCode.OutOfRange, Fault(() => RecordEntries.Reading(integral with { Value = Estimate.Normal(51, 1, Origin.Measured) }, ObservedQuantity.OutflowVtiCm)).Code);
    }

    [Fact]
    public void A_length_by_a_known_length_says_so_in_the_record()
    {
        FrameRuler byMarks = new(new FrameIdentity(Hash, 1), RegionJudge.Judge(640, 480, []), known: new KnownLength(50, 0.5, new(100, 100), new(300, 100), "two marks"));
        ImagingDone done = RecordEntries.Examination(ImagingModality.TransoesophagealUltrasound, [byMarks.Distance(new(100, 200), new(200, 200))]);
        Assert.Contains("known length given by a person", done.Finding, StringComparison.Ordinal);
        Assert.Equal(Hash, done.Image!.FileSha256);
        Assert.Equal(FaultCode.Contradiction, Fault(() => RecordEntries.Examination(ImagingModality.Other, [])).Code);
    }

    [Fact]
    public void A_tip_that_was_not_seen_is_written_as_inferred_and_the_port_as_seen()
    {
        AxisSamples samples = AxisSampler.Draw(PopulationModel.For(new BodyHabitus(45, Sex.Male, 175, 80)), 500, 4);
        SeenFeature port = SeenFeature.ReturnPort(DeviceCatalogue.BuiltIn.FindCannula("bicaval-27fr-29cm")!);
        SeenDistance seen = new(CavalLandmark.Scaj, true, Estimate.Normal(30, 2, Origin.Measured), DistanceWay.AlongVein, PlaneTilt.InPlane, JunctionEdge.AppendageBorder);
        TipPlacement tip = TipFinder.Find(new TipQuestion(port, seen, SkinSite.RightNeck, DeviceCourse.AlongAxis), samples, 4);
        PositionRead read = RecordEntries.Position("dual lumen", tip, PositionSight.TransoesophagealUltrasound, "bicaval", new FrameIdentity(Hash, 2));
        Assert.Equal((CavalLandmark.Scaj, true), (read.Tip!.Landmark, read.Tip.IsInferred));
        Assert.Equal(12.4, read.Tip.OffsetCm, 0.1);
        Assert.Equal((false, 3.0), (read.ReturnPort!.IsInferred, Math.Round(read.ReturnPort.OffsetCm, 1)));
        Assert.Null(read.FirstHole);
        Assert.InRange(read.Remark!.Length, 1, 2000);
    }

    private static InputFault Fault(Func<object> act) => Assert.Throws<InputFaultException>(act).Faults[0];
}
