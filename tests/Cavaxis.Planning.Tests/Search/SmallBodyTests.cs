using Cavaxis.Anatomy.Body;
using Cavaxis.Planning.Case;
using Cavaxis.Planning.Configurations;
using Cavaxis.Planning.Plans;

namespace Cavaxis.Planning.Tests.Search;

public class SmallBodyTests
{
    private static readonly CaseFile Infant = Cases.Bare with
    {
        Patient = new PatientSection { AgeYears = 0.3, Sex = Sex.Female, HeightCm = 60, WeightKg = 5.2 },
    };

    [Fact]
    public void No_graft_is_planned_on_an_artery_too_narrow_to_sew_it_to()
    {
        PlanningResult result = Cases.Plan(Infant);
        Assert.DoesNotContain(result.Plans, plan => plan.Configuration == ConfigurationKind.VaAxillaryGraft);
        NotPlanned none = Assert.Single(result.NotPlanned, none => none.Configuration == ConfigurationKind.VaAxillaryGraft);
        Assert.Contains("axillary arteries are narrower than 4.0 mm", none.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void A_wide_measured_axillary_artery_makes_the_graft_possible_again()
    {
        CaseFile measured = Infant with
        {
            Vessels = [new VesselEntry { Vessel = VesselName.AxillaryArtery, Side = BodySide.Right, DiameterMm = new Measurement(4.6, 0.05, true) }],
        };
        PlanningResult result = Cases.Plan(measured);
        CannulationPlan graft = result.Plans.First(plan => plan.Configuration == ConfigurationKind.VaAxillaryGraft);
        Assert.Equal(BodySide.Right, graft.Cannulae.Single(cannula => cannula.Route == AccessRoute.AxillaryGraft).Side);
    }

    [Fact]
    public void Below_five_years_every_plan_through_a_femoral_vein_is_warned_of()
    {
        PlanningResult infant = Cases.Plan(Infant);
        Assert.All(infant.Plans, plan => Assert.Equal(
            plan.Cannulae.Any(cannula => cannula.Route == AccessRoute.FemoralVein),
            plan.Findings.Any(finding => finding.Id == "small-child-femoral-vein")));
        Assert.Contains(infant.Plans, plan => plan.Findings.Any(finding => finding.Id == "small-child-femoral-vein"));
        Assert.DoesNotContain(Cases.Plan(Cases.Bare).Plans, plan => plan.Findings.Any(finding => finding.Id == "small-child-femoral-vein"));
    }
}
