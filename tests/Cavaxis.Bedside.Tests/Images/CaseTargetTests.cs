using System.Text.Json.Nodes;
using Cavaxis.Bedside.Images;
using Cavaxis.Course.Events;
using Cavaxis.Imaging.Calibration;
using Cavaxis.Imaging.Frames;
using Cavaxis.Imaging.Measurement;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Bedside.Tests.Images;

/// <summary>Fields of the case that a measurement fills. A known length of 100 mm over 500 pixels makes 0.2 mm a pixel.</summary>
public class CaseTargetTests
{
    private static readonly FrameRuler Ruler = new(
        new FrameIdentity(new string('c', 64), 3), RegionJudge.Judge(640, 480, Array.Empty<CalibratedRegion>()), known: new KnownLength(100, 0.5, new(50, 50), new(550, 50), "two marks"));

    [Fact]
    public void A_diameter_fills_a_vessel_with_its_own_error_rounded_to_what_the_error_leaves()
    {
        ImageMeasurement fourteen = Ruler.Distance(new(100, 100), new(170, 100));
        CaseTarget target = CaseTargets.For(fourteen)[0];
        Assert.Equal(("vessels[vessel=internalJugularVein,side=right].diameterMm", "right internal jugular vein, diameter"), (target.Path, target.Words));
        CaseFilling filling = CaseTargets.Fill(target, ImagingModality.VascularUltrasound);
        (string path, JsonNode? value) = Assert.Single(filling.Fields);
        Assert.Equal((target.Path, 14.0), (path, value!["value"]!.GetValue<double>()));
        Assert.Equal(Math.Round(fourteen.Value.Sd, 2), value["sd"]!.GetValue<double>());
        Assert.Equal((target.Path, 14.0), (filling.Entry.Field, filling.Entry.Value));
    }

    [Fact]
    public void An_angle_fills_a_bend_of_either_sign_with_the_way_it_was_measured_and_without_the_edges_of_another()
    {
        ImageMeasurement angle = Ruler.Angle(new(100, 100), new(300, 100), new(500, 150));
        CaseTarget negative = CaseTargets.For(angle).Single(static t => t.Words == "axis: caval bend sagittal, negative");
        CaseFilling filling = CaseTargets.Fill(negative, ImagingModality.TransoesophagealUltrasound);
        Assert.Equal(180 - (Math.Atan2(50, -200) * 180 / Math.PI), -filling.Value, 0.05);
        Assert.Equal("transoesophagealEcho", filling.Fields.Single(static f => f.Path.EndsWith(".method", StringComparison.Ordinal)).Value!.GetValue<string>());
        Assert.Equal(2, filling.Fields.Count(static f => f.Path.EndsWith("Edge", StringComparison.Ordinal) && f.Value is null));
    }

    [Fact]
    public void What_no_such_vessel_has_is_refused_and_an_area_has_no_field()
    {
        ImageMeasurement tooWide = Ruler.Distance(new(10, 100), new(600, 100));
        Assert.Equal("diameterMm", Assert.Throws<InputFaultException>(() => CaseTargets.Fill(CaseTargets.For(tooWide)[0], ImagingModality.Other)).Faults[0].Field);
        Assert.Empty(CaseTargets.For(Ruler.Area([new(100, 100), new(200, 100), new(150, 200)])));
    }

    [Fact]
    public void Every_target_of_a_length_has_a_path_of_its_own_but_for_the_sign()
    {
        IReadOnlyList<CaseTarget> all = CaseTargets.For(Ruler.Distance(new(100, 100), new(170, 100)));
        Assert.Equal(all.Count, all.Select(static t => (t.Path, t.IsNegative)).Distinct().Count());
        Assert.Contains(all, static t => t.Path == "heart.lvotDiameterMm");
        Assert.Contains(all, static t => t.Path == "axis[dimension=svcDiameter].value");
    }
}
