using Cavaxis.Anatomy.Body;
using Cavaxis.Planning.Case;
using Cavaxis.Planning.Configurations;
using Cavaxis.Planning.Plans;
using Cavaxis.Planning.Rules;

namespace Cavaxis.Planning.Tests.Search;

/// <summary>What the case says must come out on the plans it concerns, on no others, and move cannulae to the better side.</summary>
public class FindingTests
{
    private static readonly CaseFile Heart = Cases.For(SupportGoal.Circulation);
    private static readonly CaseFile Lung = Cases.For(SupportGoal.GasExchange);

    [Fact]
    public void A_caval_filter_stops_every_plan_that_enters_by_a_femoral_vein_and_warns_for_the_dual_lumen()
    {
        PlanningResult result = Cases.Plan(Lung with { Obstacles = new ObstacleSection { CavalFilter = Finding.Present } });
        Assert.Contains(result.Plans, plan => Uses(plan, AccessRoute.FemoralVein));
        Assert.All(result.Plans, plan => Assert.Equal(
            Uses(plan, AccessRoute.FemoralVein), Has(plan, "caval-filter", FindingGrade.Stop)));
        Assert.All(
            result.Plans.Where(plan => plan.Configuration == ConfigurationKind.VvDualLumenJugular),
            plan => Assert.True(Has(plan, "caval-filter-dual", FindingGrade.Warning)));
    }

    [Theory]
    [InlineData(Severity.Moderate)]
    [InlineData(Severity.Severe)]
    public void Aortic_regurgitation_from_moderate_on_stops_every_return_to_an_artery(Severity severity)
    {
        PlanningResult result = Cases.Plan(Heart with { Heart = new HeartSection { AorticRegurgitation = severity } });
        Assert.Contains(result.Plans, IsArterial);
        Assert.All(result.Plans, plan => Assert.Equal(IsArterial(plan), Has(plan, "aortic-regurgitation", FindingGrade.Stop)));
        Assert.True(result.EveryPlanIsStopped);
    }

    [Fact]
    public void Mild_aortic_regurgitation_only_cautions_and_an_unknown_valve_warns()
    {
        PlanningResult mild = Cases.Plan(Heart with { Heart = new HeartSection { AorticRegurgitation = Severity.Mild } });
        PlanningResult unknown = Cases.Plan(Heart);
        Assert.All(mild.Plans.Where(IsArterial), plan => Assert.True(
            Has(plan, "aortic-regurgitation-mild", FindingGrade.Caution) && !Has(plan, "aortic-regurgitation", FindingGrade.Stop)));
        Assert.All(unknown.Plans.Where(IsArterial), plan => Assert.True(
            Has(plan, "aortic-regurgitation-unknown", FindingGrade.Warning) && !Has(plan, "aortic-regurgitation", FindingGrade.Stop)));
    }

    [Fact]
    public void A_dissection_stops_femoral_return_and_warns_for_the_axillary_graft()
    {
        PlanningResult result = Cases.Plan(Heart with { Obstacles = new ObstacleSection { AorticDissection = Finding.Present } });
        Assert.All(result.Plans, plan =>
        {
            Assert.Equal(Uses(plan, AccessRoute.FemoralArtery), Has(plan, "dissection-femoral", FindingGrade.Stop));
            Assert.Equal(Uses(plan, AccessRoute.AxillaryGraft), Has(plan, "dissection-axillary", FindingGrade.Warning));
        });
    }

    [Fact]
    public void Without_any_way_to_see_the_wire_a_dual_lumen_is_stopped_and_every_other_plan_warned()
    {
        PlanningResult result = Cases.Plan(Lung with
        {
            Resources = new ResourceSection
            {
                TransoesophagealEcho = Availability.Missing,
                Fluoroscopy = Availability.Missing,
                HybridRoom = Availability.Missing,
            },
        });
        Assert.All(result.Plans, plan =>
        {
            Assert.Equal(plan.Configuration == ConfigurationKind.VvDualLumenJugular, Has(plan, "no-wire-imaging", FindingGrade.Stop));
            Assert.True(Has(plan, "no-wire-imaging-any", FindingGrade.Warning));
        });
    }

    [Fact]
    public void Whether_the_wire_can_be_seen_is_cautioned_about_when_it_is_not_known() =>
        Assert.All(Cases.Plan(Lung).Plans, plan => Assert.True(Has(plan, "no-wire-imaging-unknown", FindingGrade.Caution)));

    [Theory]
    [InlineData(BodySide.Right)]
    [InlineData(BodySide.Left)]
    public void A_hostile_groin_moves_the_femoral_cannulae_to_the_other_side(BodySide hostile)
    {
        ObstacleSection obstacles = hostile == BodySide.Right
            ? new() { HostileRightGroin = Finding.Present, HostileLeftGroin = Finding.Absent }
            : new() { HostileLeftGroin = Finding.Present, HostileRightGroin = Finding.Absent };
        foreach (CannulationPlan plan in Cases.Plan(Lung with { Obstacles = obstacles }).Plans.Where(
            plan => plan.Configuration == ConfigurationKind.VvFemoralJugular))
        {
            Assert.NotEqual(hostile, plan.Cannulae.Single(c => c.Route == AccessRoute.FemoralVein).Side);
            Assert.DoesNotContain(plan.Findings, finding => finding.Id == "hostile-groin");
        }
    }

    [Theory]
    [InlineData(BodySide.Right)]
    [InlineData(BodySide.Left)]
    public void An_occluded_vein_moves_the_cannula_to_the_other_side(BodySide occluded)
    {
        VesselEntry vein = new() { Vessel = VesselName.CommonFemoralVein, Side = occluded, Patency = Patency.Occluded };
        foreach (CannulationPlan plan in Cases.Plan(Lung with { Vessels = [vein] }).Plans.Where(
            plan => plan.Configuration == ConfigurationKind.VvFemoralJugular))
        {
            Assert.NotEqual(occluded, plan.Cannulae.Single(c => c.Route == AccessRoute.FemoralVein).Side);
            Assert.DoesNotContain(plan.Findings, finding => finding.Id == "vessel-occluded");
        }
    }

    [Fact]
    public void Veins_occluded_on_both_sides_stop_the_plan_and_name_the_vein()
    {
        VesselEntry[] veins =
        [
            .. Enum.GetValues<BodySide>().Select(side => new VesselEntry
            {
                Vessel = VesselName.InternalJugularVein,
                Side = side,
                Patency = Patency.Occluded,
            }),
        ];
        PlanningResult result = Cases.Plan(Lung with { Vessels = veins });
        Assert.All(result.Plans.Where(plan => Uses(plan, AccessRoute.Jugular)), plan => Assert.Contains(
            plan.Findings, finding => finding.Id == "vessel-occluded" && finding.Grade == FindingGrade.Stop
                && finding.Says.Contains("internal jugular vein", StringComparison.Ordinal)));
    }

    [Fact]
    public void A_case_that_says_nothing_is_cautioned_about_and_not_taken_as_healthy()
    {
        string[] expected =
        [
            "caval-filter-unknown", "oval-foramen-unknown", "central-thrombus-unknown", "dissection-unknown", "aortic-regurgitation-unknown",
            "no-wire-imaging-unknown", "vessel-not-confirmed",
        ];
        CannulationPlan plan = Cases.Plan(Heart).Plans.First(p => p.Configuration == ConfigurationKind.VaFemoral);
        Assert.All(expected, id => Assert.Contains(plan.Findings, finding => finding.Id == id));
    }

    [Fact]
    public void Veno_venous_support_is_stopped_where_the_heart_needs_support() => Assert.All(
        Cases.Plan(Heart).Plans, plan => Assert.Equal(!IsArterial(plan), Has(plan, "goal-not-met", FindingGrade.Stop)));

    [Fact]
    public void A_return_to_an_artery_is_warned_about_where_only_the_lung_fails() => Assert.All(
        Cases.Plan(Lung).Plans, plan => Assert.Equal(IsArterial(plan), Has(plan, "more-than-goal", FindingGrade.Warning)));

    [Fact]
    public void In_arrest_no_graft_is_sewn() => Assert.All(
        Cases.Plan(Cases.For(SupportGoal.Arrest)).Plans.Where(plan => plan.Configuration == ConfigurationKind.VaAxillaryGraft),
        plan => Assert.True(Has(plan, "surgery-in-arrest", FindingGrade.Stop)));

    [Fact]
    public void Every_finding_says_what_would_resolve_it_and_where_it_comes_from() => Assert.All(
        Cases.Plan(Heart).Plans.SelectMany(plan => plan.Findings), finding => Assert.True(
            finding.Says.Length > 10 && finding.Resolve.Length > 5 && finding.Source.Citation.Length > 5, finding.Id));

    [Fact]
    public void Findings_stand_gravest_first() => Assert.All(
        Cases.Plan(Cases.For(SupportGoal.Both)).Plans,
        plan => Assert.Equal(plan.Findings.OrderByDescending(finding => finding.Grade).Select(f => f.Grade), plan.Findings.Select(f => f.Grade)));

    private static bool Uses(CannulationPlan plan, AccessRoute route) => plan.Cannulae.Any(cannula => cannula.Route == route);

    private static bool IsArterial(CannulationPlan plan) => plan.Cannulae.Any(cannula => cannula.Role == CannulaRole.ArterialReturn);

    private static bool Has(CannulationPlan plan, string id, FindingGrade grade) =>
        plan.Findings.Any(finding => finding.Id == id && finding.Grade == grade);
}
