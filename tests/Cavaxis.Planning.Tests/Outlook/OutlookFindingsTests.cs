using Cavaxis.Planning.Outlook;
using Cavaxis.Planning.Plans;
using Cavaxis.Planning.Rules;
using Cavaxis.Quantities;

namespace Cavaxis.Planning.Tests.Outlook;

public class OutlookFindingsTests
{
    private static readonly RuleBook Rules = RuleBookReader.BuiltIn;

    [Theory]
    [InlineData(29, false)]
    [InlineData(31, true)]
    public void Recirculation_is_called_above_its_limit_only(double percent, bool called) => Assert.Equal(
        called, OutlookFindings.Of(Outlook(percent, null), Rules).Any(static f => f.Id == "recirculation" && f.Grade == FindingGrade.Caution));

    [Theory]
    [InlineData(17, false)]
    [InlineData(19, true)]
    public void A_loaded_ventricle_is_called_above_its_limit_only(double wedge, bool called) => Assert.Equal(
        called, OutlookFindings.Of(Outlook(null, Heart(wedge, 20)), Rules).Any(static f => f.Id == "ventricle-loading"));

    [Theory]
    [InlineData(4, true)]
    [InlineData(6, false)]
    public void A_valve_that_hardly_opens_is_called(double open, bool called) => Assert.Equal(
        called, OutlookFindings.Of(Outlook(null, Heart(10, open)), Rules).Any(static f => f.Id == "aortic-valve-shut"));

    [Fact]
    public void No_finding_of_the_model_forbids_a_plan() => Assert.DoesNotContain(
        OutlookFindings.Of(Outlook(90, Heart(60, 0)), Rules), static f => f.Grade == FindingGrade.Stop);

    [Fact]
    public void A_plan_without_outlook_says_why_and_keeps_to_the_bounds()
    {
        string text = Assert.Single(OutlookSentences.Of(Plan() with { CirculationNote = "the model does not reach this case" }));
        Assert.Contains("the model does not reach this case", text, StringComparison.Ordinal);
        Assert.Contains("separated and complete mixing", text, StringComparison.Ordinal);
    }

    [Fact]
    public void An_outlook_is_told_with_interval_and_number_of_patients()
    {
        string text = string.Join(' ', OutlookSentences.Of(Plan() with { Circulation = Outlook(12, Heart(15, 20)) }));
        Assert.Contains("Recirculation 12 (11 to 13) %", text, StringComparison.Ordinal);
        Assert.Contains("still opens at 5.0 L/min", text, StringComparison.Ordinal);
        Assert.Contains("on 7 patients", text, StringComparison.Ordinal);
        Assert.Contains("1 more did not come to rest", text, StringComparison.Ordinal);
    }

    private static Estimate About(double value) => Estimate.WithInterval(value, 0.6, value - 1, value + 1, Origin.Calculated);

    private static VentricleLoading Heart(double wedge, double open) => new(
        About(8), About(wedge), About(20), About(150), About(2), About(open), null, 5);

    private static CirculationOutlook Outlook(double? recirculation, VentricleLoading? heart) => new(
        8, 1, About(4), recirculation is double r ? About(r) : null, recirculation is double l ? About(l - 3) : null,
        recirculation is double h ? About(h + 3) : null, About(92), About(95), About(70), About(3), About(75), heart, []);

    private static CannulationPlan Plan() => new(
        1, default, "plan", null!, [], null!,
        new GasExchangeOutlook(Estimate.WithInterval(0.2, 0.1, 0, 0.4, Origin.Calculated), About(90), About(99), About(3), null, string.Empty),
        1, 1, [], [], 1, false, []);
}
