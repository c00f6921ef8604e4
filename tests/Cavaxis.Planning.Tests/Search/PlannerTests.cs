using System.Collections;
using System.Globalization;
using System.Text.Json;
using Cavaxis.Devices.Catalogue;
using Cavaxis.Planning.Case;
using Cavaxis.Planning.Configurations;
using Cavaxis.Planning.Json;
using Cavaxis.Planning.Plans;
using Cavaxis.Planning.Rules;
using Cavaxis.Planning.Search;
using Cavaxis.Planning.Tests.Case;
using Cavaxis.Quantities;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Planning.Tests.Search;

public class PlannerTests
{
    private static readonly CaseFile Tall = Cases.Demo("tall-man-severe-lung-failure");
    private static readonly Dictionary<string, PlanningResult> Demos = RepositoryFolder.DemoFiles.ToDictionary(
        file => Path.GetFileNameWithoutExtension(file), file => Cases.Plan(Cases.Demo(Path.GetFileNameWithoutExtension(file))));

    public static TheoryData<string> DemoNames => new(Demos.Keys.Order(StringComparer.Ordinal));

    [Fact]
    public void The_same_case_and_seed_give_the_same_bytes() => Assert.Equal(Bytes(Cases.Plan(Tall)), Bytes(Cases.Plan(Tall)));

    [Fact]
    public void The_culture_of_the_thread_does_not_change_a_byte()
    {
        byte[] expected = Bytes(Cases.Plan(Tall));
        CultureInfo before = CultureInfo.CurrentCulture;
        CultureInfo odd = (CultureInfo)CultureInfo.InvariantCulture.Clone();
        odd.NumberFormat.NumberDecimalSeparator = ",";
        odd.NumberFormat.NumberGroupSeparator = ".";
        odd.NumberFormat.NegativeSign = "~";
        odd.NumberFormat.PercentDecimalSeparator = ",";
        try
        {
            CultureInfo.CurrentCulture = odd;
            Assert.Equal(expected, Bytes(Cases.Plan(Tall)));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void Another_seed_gives_other_anatomies_and_probabilities_within_sampling_error()
    {
        PlanningResult one = Cases.Plan(Tall, 4000, 1);
        PlanningResult two = Cases.Plan(Tall, 4000, 2);
        Assert.NotEqual(Bytes(one), Bytes(two));
        int compared = 0;
        foreach (CannulationPlan plan in one.Plans)
        {
            CannulationPlan? same = two.Plans.FirstOrDefault(other => Devices(other) == Devices(plan) && other.Configuration == plan.Configuration);
            if (same is null)
            {
                continue;
            }

            // Two shares of 4000: six standard errors of their difference.
            double p = plan.ProbabilityAllPortsInZone;
            double bound = 6 * Math.Sqrt((2 * p * (1 - p) / 4000) + 1e-6);
            Assert.InRange(same.ProbabilityAllPortsInZone, p - bound, p + bound);
            compared++;
        }

        Assert.True(compared >= one.Plans.Count / 2);
    }

    [Theory]
    [MemberData(nameof(DemoNames))]
    public void Probabilities_and_points_lie_between_0_and_1_and_intervals_hold_their_values(string demo)
    {
        PlanningResult result = Demos[demo];
        int estimates = 0;
        foreach (Estimate estimate in EstimatesIn(result))
        {
            Assert.True(estimate.Low <= estimate.Value && estimate.Value <= estimate.High, $"{estimate}");
            Assert.True(estimate.Sd >= 0 && double.IsFinite(estimate.Sd));
            estimates++;
        }

        Assert.True(estimates > 50);
        foreach (CannulationPlan plan in result.Plans)
        {
            Assert.InRange(plan.ProbabilityAllPortsInZoneBlind, 0, plan.ProbabilityAllPortsInZone);
            Assert.InRange(plan.ProbabilityAllPortsInZone, 0, 1);
            Assert.InRange(plan.Score, 0, 1);
            Assert.All(plan.Criteria, criterion => Assert.InRange(criterion.Points, 0, 1));
            Assert.All(plan.Cannulae, cannula =>
            {
                Assert.InRange(cannula.ProbabilityRatioAcceptable, 0, 1);
                Assert.Equal(1, cannula.HoleShares.Sum(share => share.Share), 6);
                Assert.All(cannula.Fit?.Ports ?? [], port => Assert.InRange(port.ProbabilityInZone, 0, 1));
            });
        }

        Assert.All(result.NextMeasurements, value =>
        {
            Assert.InRange(value.FitNarrowing, 0, 1);
            Assert.InRange(value.DepthNarrowing, 0, 1);
            Assert.True(value.FitVarianceAfter <= value.FitVarianceNow && value.DepthSdAfterCm <= value.DepthSdNowCm);
        });
    }

    [Theory]
    [MemberData(nameof(DemoNames))]
    public void Plans_with_a_stop_stand_after_plans_without_and_better_scores_first(string demo)
    {
        IReadOnlyList<CannulationPlan> plans = Demos[demo].Plans;
        Assert.Equal(Enumerable.Range(1, plans.Count), plans.Select(plan => plan.Rank));
        foreach ((CannulationPlan better, CannulationPlan worse) in plans.Zip(plans.Skip(1)))
        {
            Assert.False(better.HasStop && !worse.HasStop);
            Assert.True(better.HasStop != worse.HasStop || better.Score >= worse.Score);
        }
    }

    [Theory]
    [MemberData(nameof(DemoNames))]
    public void Every_result_carries_the_caution_and_says_what_was_not_checked(string demo)
    {
        Assert.Equal(Planner.Caution, Demos[demo].Caution);
        Assert.Contains("not a certified medical device", Demos[demo].Caution, StringComparison.Ordinal);
        Assert.NotEmpty(Demos[demo].NotChecked);
        Assert.NotEmpty(Demos[demo].Steps);
    }

    [Theory]
    [MemberData(nameof(DemoNames))]
    public void No_planned_cannula_is_wider_than_the_limit_of_its_vessel(string demo)
    {
        RuleBook rules = RuleBookReader.BuiltIn;
        Assert.All(Demos[demo].Plans.SelectMany(plan => plan.Cannulae), cannula =>
        {
            bool vein = cannula.Route is AccessRoute.Jugular or AccessRoute.FemoralVein;
            double limit = rules[vein ? LimitName.CannulaToVeinStop : LimitName.CannulaToArteryStop];
            Assert.True(cannula.CannulaToVessel.Value <= limit + 1e-12, cannula.DeviceId);
            Assert.Equal(cannula.OuterDiameterFrench / 3 / cannula.VesselDiameterMm.Value, cannula.CannulaToVessel.Value, 9);
        });
    }

    [Theory]
    [MemberData(nameof(DemoNames))]
    public void No_plan_runs_beyond_the_pressure_limits(string demo)
    {
        RuleBook rules = RuleBookReader.BuiltIn;

        // The table that the search uses is off by at most a percent from the hydraulics that the plan is written with.
        Assert.All(Demos[demo].Plans, plan =>
        {
            Assert.True(plan.Circuit.InletPressureMmHg.Value >= rules[LimitName.InletPressureMmHg] - 2, Devices(plan));
            Assert.True(plan.Circuit.ReturnPressureMmHg.Value <= rules[LimitName.ReturnPressureMmHg] + 4, Devices(plan));
        });
    }

    [Fact]
    public void The_tall_man_is_not_served_by_a_dual_lumen_and_gets_two_sites()
    {
        PlanningResult result = Demos["tall-man-severe-lung-failure"];
        Assert.False(result.EveryPlanIsStopped);
        Assert.Equal(ConfigurationKind.VvFemoralJugular, result.Plans[0].Configuration);
        Assert.All(
            result.Plans.Where(plan => plan.Configuration == ConfigurationKind.VvDualLumenJugular),
            plan => Assert.True(plan.HasStop && plan.Findings.Any(finding => finding.Id == "fit")));
    }

    [Fact]
    public void The_small_woman_in_shock_gets_a_return_to_an_artery_and_her_leg_is_fed()
    {
        PlanningResult result = Demos["small-woman-cardiogenic-shock"];
        Assert.False(result.EveryPlanIsStopped);
        CannulationPlan first = result.Plans[0];
        Assert.Contains(first.Cannulae, cannula => cannula.Role == CannulaRole.ArterialReturn);
        Assert.True(
            first.Cannulae.Any(cannula => cannula.Role == CannulaRole.DistalPerfusion)
            || first.Configuration == ConfigurationKind.VaAxillaryGraft);
        Assert.All(
            first.Cannulae.Where(c => c.Route is AccessRoute.FemoralArtery), cannula => Assert.Equal(Anatomy.Body.BodySide.Right, cannula.Side));
    }

    [Fact]
    public void A_child_gets_devices_of_a_childs_size_or_is_told_that_none_fits()
    {
        PlanningResult result = Demos["child-lung-failure"];
        Assert.NotEmpty(result.Plans);
        Assert.All(result.Plans.SelectMany(plan => plan.Cannulae), cannula => Assert.True(cannula.OuterDiameterFrench <= 21, cannula.DeviceId));
        Assert.All(result.NotPlanned, none => Assert.NotEmpty(none.Reason));
        Assert.Equal(ConfigurationKind.VvFemoralJugular, result.Plans[0].Configuration);
    }

    [Fact]
    public void Where_nearly_everything_is_unknown_all_of_it_is_listed()
    {
        PlanningResult result = Demos["nearly-everything-unknown"];
        string[] fields = [.. result.Missing.Select(missing => missing.Field)];
        Assert.All(
            new[] { "vessels", "axis", "blood.haemoglobinGPerDl", "heart.cardiacOutputLPerMin", "heart.meanArterialPressureMmHg" },
            field => Assert.Contains(field, fields));
        Assert.All(result.Axis, value => Assert.Equal(Origin.Estimated, value.Value.Origin));
        Assert.Contains(result.Plans[0].Cannulae, cannula => cannula.Role == CannulaRole.ArterialReturn);
    }

    [Fact]
    public void More_weight_on_a_criterion_never_brings_first_a_plan_that_is_worse_in_it()
    {
        foreach (CriterionName name in new[] { CriterionName.Punctures, CriterionName.Fit, CriterionName.InletMargin, CriterionName.GroinsUsed })
        {
            double before = double.NegativeInfinity;
            foreach (double weight in new[] { 0.0, 1, 5, 20, 100 })
            {
                PlanningResult result = Planner.Plan(Tall, DeviceCatalogue.BuiltIn, RuleBookReader.BuiltIn, new PlanningOptions
                {
                    Anatomies = 400,
                    Weights = new Dictionary<CriterionName, double> { [name] = weight },
                    PlansPerConfiguration = PlanningOptions.MostPlansPerConfiguration,
                });
                CannulationPlan first = result.Plans[0];
                double points = first.Criteria.Single(criterion => criterion.Name == name).Points;

                // The shown plans are picked by stops and warnings first; among them the score decides.
                Assert.Equal(result.Plans.Where(plan => plan.HasStop == first.HasStop).Max(plan => plan.Score), first.Score);
                Assert.True(points >= before - 1e-9, FormattableString.Invariant($"{name} at weight {weight}: {points} after {before}"));
                before = points;
            }
        }
    }

    [Fact]
    public void Only_devices_on_hand_are_planned_when_they_are_named()
    {
        string[] onHand = ["drain-multi-25fr-55cm", "return-venous-19fr-16cm"];
        PlanningResult result = Cases.Plan(Tall with { DevicesOnHand = onHand });
        Assert.All(result.Plans.SelectMany(plan => plan.Cannulae), cannula => Assert.Contains(cannula.DeviceId, onHand));
        Assert.Contains(result.NotPlanned, none => none.Configuration == ConfigurationKind.VvDualLumenJugular
            && none.Reason.Contains("dual lumen", StringComparison.Ordinal));
    }

    [Fact]
    public void Every_device_on_hand_that_the_catalogue_lacks_is_named()
    {
        InputFaultException fault = Assert.Throws<InputFaultException>(
            () => Cases.Plan(Tall with { DevicesOnHand = ["no-such-device", "drain-multi-25fr-55cm", "nor-this"] }));
        Assert.Equal(["devicesOnHand[0]", "devicesOnHand[2]"], fault.Faults.Select(f => f.Field));
        Assert.All(fault.Faults, f => Assert.Equal(FaultCode.NotFound, f.Code));
    }

    public static TheoryData<string, PlanningOptions> BadOptions => new()
    {
        { "anatomies", new PlanningOptions { Anatomies = PlanningOptions.FewestAnatomies - 1 } },
        { "anatomies", new PlanningOptions { Anatomies = PlanningOptions.MostAnatomies + 1 } },
        { "plan", new PlanningOptions { Anatomies = 200, ChosenRank = 0 } },
        { "plan", new PlanningOptions { Anatomies = 200, ChosenRank = 1000 } },
        { "plansPerConfiguration", new PlanningOptions { Anatomies = 200, PlansPerConfiguration = 0 } },
        { "weights.Fit", new PlanningOptions { Anatomies = 200, Weights = new Dictionary<CriterionName, double> { [CriterionName.Fit] = -1 } } },
    };

    [Theory]
    [MemberData(nameof(BadOptions))]
    public void An_option_out_of_range_is_refused_and_named(string field, PlanningOptions options)
    {
        InputFaultException fault = Assert.Throws<InputFaultException>(
            () => Planner.Plan(Cases.Bare, DeviceCatalogue.BuiltIn, RuleBookReader.BuiltIn, options));
        Assert.Equal(field, Assert.Single(fault.Faults).Field);
    }

    [Fact]
    public void Steps_and_measurements_speak_of_the_plan_that_was_chosen()
    {
        PlanningResult result = Planner.Plan(Tall, DeviceCatalogue.BuiltIn, RuleBookReader.BuiltIn, new PlanningOptions { Anatomies = 400, ChosenRank = 3 });
        Assert.Equal(3, result.ChosenPlan);
        Assert.Contains(
            string.Create(CultureInfo.InvariantCulture, $"{result.Plans[2].Cannulae[0].OuterDiameterFrench:F0} Fr"),
            result.Steps[0].Action, StringComparison.Ordinal);
    }

    [Fact]
    public void A_low_entry_on_the_neck_never_makes_a_dual_lumen_fit_less_often()
    {
        double Fit(NeckEntryHeight entry) => Cases.Plan(
            Cases.For(SupportGoal.GasExchange) with
            {
                Access = new AccessSection { NeckEntry = entry },
                DevicesOnHand = ["bicaval-31fr-31cm"],
                Vessels =
                [
                    new VesselEntry
                    {
                        Vessel = VesselName.InternalJugularVein,
                        Side = Anatomy.Body.BodySide.Right,
                        DiameterMm = Cases.Measured(18, 0.5),
                    },
                ],
            },
            2000).Plans.Max(plan => plan.ProbabilityAllPortsInZone);
        Assert.True(Fit(NeckEntryHeight.LowNeck) > Fit(NeckEntryHeight.Unknown));
        Assert.True(Fit(NeckEntryHeight.Unknown) > Fit(NeckEntryHeight.MidNeck));
    }

    private static byte[] Bytes(PlanningResult result) => JsonSerializer.SerializeToUtf8Bytes(result, CavaxisJson.Options);

    private static string Devices(CannulationPlan plan) =>
        string.Join("+", plan.Cannulae.Select(cannula => $"{cannula.DeviceId} {cannula.Side}"));

    /// <summary>Walks everything that a result holds.</summary>
    private static IEnumerable<Estimate> EstimatesIn(object? value)
    {
        switch (value)
        {
            case null or string:
                return [];
            case Estimate estimate:
                return [estimate];
            case IEnumerable list:
                return list.Cast<object?>().SelectMany(EstimatesIn);
            default:
                return value.GetType().Namespace?.StartsWith("Cavaxis", StringComparison.Ordinal) == true && !value.GetType().IsEnum
                    ? value.GetType().GetProperties().Where(p => p.GetIndexParameters().Length == 0)
                        .SelectMany(property => EstimatesIn(property.GetValue(value)))
                    : [];
        }
    }
}
