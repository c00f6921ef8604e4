using Cavaxis.Devices.Catalogue;
using Cavaxis.Planning.Plans;
using Cavaxis.Reports.AxisDrawings;
using Cavaxis.Reports.PlanReports;
using Cavaxis.Web.Pages.Lie;

namespace Cavaxis.Web.Tests.Lie;

public class LiePlotTests
{
    public static TheoryData<int> Ranks => [.. PlannedCase.Result.Plans.Select(static p => p.Rank)];

    [Theory]
    [MemberData(nameof(Ranks))]
    public void Labels_keep_clear_of_each_other_and_everything_lies_in_the_picture(int rank)
    {
        CannulationPlan plan = PlannedCase.Result.Plans[rank - 1];
        AxisScene scene = PlanScene.Of(PlannedCase.Result, plan, DeviceCatalogue.BuiltIn);
        LiePlot plot = new(scene, 3);
        double[] labels = [.. plot.Landmarks.Select(static l => l.LabelMm).Order()];
        Assert.Equal(scene.Landmarks.Count, labels.Length);
        Assert.All(labels.Zip(labels.Skip(1)), pair => Assert.True(pair.Second - pair.First >= 2.5 * plot.Unit, $"{pair.First} {pair.Second}"));
        Assert.All(scene.Cannulae, c => Assert.InRange(c.TipMm.Median, plot.Top, plot.Bottom));
        Assert.True(plot.Left < 0 && plot.Right > 0 && plot.ScaleMm < plot.Bottom - plot.Top);
    }

    [Theory]
    [InlineData(0.71, "in its zone")]
    [InlineData(0.69, "may miss its zone")]
    [InlineData(0.29, "out of its zone")]
    public void The_word_of_a_zone_changes_at_its_limits_and_differs_in_shape(double probability, string words)
    {
        Assert.Equal(words, ZoneWord.Of(probability).Words);
        Assert.Equal(3, new[] { 1.0, 0.5, 0.0 }.Select(static p => ZoneWord.Of(p).Shape).Distinct().Count());
    }

    [Fact]
    public void Moved_cannulae_stay_with_their_patient_and_plan()
    {
        PlacesKept kept = new();
        IReadOnlyList<CannulaPlace> places = [];
        kept.Keep("a", "plan", places);
        Assert.Same(places, kept.Of("a", "plan"));
        Assert.Null(kept.Of("a", "another"));
        Assert.Null(kept.Of("b", "plan"));
    }
}
