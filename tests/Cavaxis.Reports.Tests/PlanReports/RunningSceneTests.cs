using System.Text;
using Cavaxis.Anatomy.Axis;
using Cavaxis.Devices.Catalogue;
using Cavaxis.Planning.Case;
using Cavaxis.Planning.Plans;
using Cavaxis.Planning.Rules;
using Cavaxis.Planning.Search;
using Cavaxis.Reports.AxisDrawings;
using Cavaxis.Reports.PlanReports;

namespace Cavaxis.Reports.Tests.PlanReports;

public class RunningSceneTests
{
    private const string Running = """
        {"cavaxisCase":1,"invented":true,"patient":{"ageYears":40,"sex":"male","heightCm":180,"weightKg":80},
         "running":{"configuration":"vvTwoSite","cannulae":[
           {"role":"drainage","device":"drain-multi-25fr-55cm","route":"femoralVein","side":"right","depthCm":43},
           {"role":"venousReturn","device":"return-venous-21fr-16cm","route":"jugular","side":"right","depthCm":15}]}}
        """;

    [Fact]
    public void Support_that_runs_is_drawn_at_the_depths_that_the_case_tells()
    {
        CaseFile file = CaseFileReader.Read(Encoding.UTF8.GetBytes(Running));
        PlanningResult result = Planner.Plan(file, DeviceCatalogue.BuiltIn, RuleBookReader.BuiltIn, new PlanningOptions { Circulation = false, Anatomies = 500 });
        AxisScene scene = PlanScene.Of(result, file.Running, DeviceCatalogue.BuiltIn);
        double Of(AxisDimension dimension) => result.Axis.Single(a => a.Dimension == dimension).Value.Value;
        Assert.Equal(2, scene.Cannulae.Count);

        // From the skin inward: down from the neck, up from the groin.
        Assert.Equal(150 - Of(AxisDimension.RightNeckSkinToScaj), scene.Cannulae.Single(c => c.Entry == EntrySite.RightNeck).TipMm.Median, 6);
        Assert.Equal(Of(AxisDimension.AtrialSpan) + Of(AxisDimension.RightGroinSkinToIcaj) - 430, scene.Cannulae.Single(c => c.Entry == EntrySite.RightGroin).TipMm.Median, 6);
        Assert.All(scene.Cannulae, c => Assert.NotEmpty(c.Ports));
        Assert.Contains("43.0 cm", scene.Description, StringComparison.Ordinal);
    }

    [Fact]
    public void A_cannula_without_a_depth_is_not_drawn_anywhere()
    {
        CaseFile file = CaseFileReader.Read(Encoding.UTF8.GetBytes(Running.Replace(",\"depthCm\":43", string.Empty, StringComparison.Ordinal)));
        PlanningResult result = Planner.Plan(file, DeviceCatalogue.BuiltIn, RuleBookReader.BuiltIn, new PlanningOptions { Circulation = false, Anatomies = 500 });
        Assert.Equal(EntrySite.RightNeck, Assert.Single(PlanScene.Of(result, file.Running, DeviceCatalogue.BuiltIn).Cannulae).Entry);
    }
}
