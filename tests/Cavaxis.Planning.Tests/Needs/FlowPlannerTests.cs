using Cavaxis.Planning.Case;
using Cavaxis.Planning.Configurations;
using Cavaxis.Planning.Needs;
using Cavaxis.Planning.Rules;
using Cavaxis.Quantities;
using CsCheck;

namespace Cavaxis.Planning.Tests.Needs;

public class FlowPlannerTests
{
    private static readonly Gen<CaseFile> LungCases =
        from output in Gen.Double[2, 12]
        from consumption in Gen.Double[100, 400]
        from haemoglobin in Gen.Double[6, 16]
        from target in Gen.Double[80, 97]
        select Case(output, consumption, haemoglobin, target);

    [Fact]
    public void The_flow_with_midway_recirculation_leaves_just_the_effective_flow_that_oxygen_needs() => LungCases.Sample(file =>
    {
        FlowPlanner planner = Planner(file);
        FlowNeed need = planner.For(ConfigurationKind.VvFemoralJugular);
        if (!need.Candidates[0].Reason.Contains("midway", StringComparison.Ordinal))
        {
            return true;
        }

        double flow = need.Candidates[0].FlowLPerMin;
        double output = file.Heart.CardiacOutputLPerMin!.Value;
        double effective = flow * (1 - (flow / (2 * (flow + output))));

        // Apart from the engine: arterial content = post − VO2/(10 Qe) + VO2/(10 CO) must be the content at the target.
        double consumption = file.Blood.OxygenConsumptionMlPerMin!.Value;
        double reached = planner.PostMembraneContentMlPerDl - (consumption / (10 * effective)) + (consumption / (10 * output));
        double wanted = Blood.Oxygen.OxygenContent.MlPerDl(
            file.Blood.HaemoglobinGPerDl!.Value, file.Support.TargetSaturationPercent!.Value / 100,
            Blood.Oxygen.OxygenDissociation.Po2At(
                file.Support.TargetSaturationPercent.Value / 100, new PatientReading(file).Conditions), Blood.Oxygen.BloodConstants.Default);
        return Math.Abs(reached - wanted) < 1e-6;
    });

    [Fact]
    public void The_need_is_the_largest_candidate_held_within_what_is_considered() => LungCases.Sample(file =>
    {
        FlowNeed need = Planner(file).For(ConfigurationKind.VvDualLumenJugular);
        double largest = need.Candidates.Max(candidate => candidate.FlowLPerMin);
        return Math.Abs(need.FlowLPerMin.Value - Math.Clamp(largest, 0.1, 8)) < 1e-12
            && need.Candidates.Single(candidate => candidate.Used).FlowLPerMin == largest
            && need.Candidates.All(candidate => candidate.Source.Citation.Length > 0);
    });

    [Fact]
    public void More_consumption_or_less_haemoglobin_never_lowers_the_flow() => LungCases.Sample(file =>
    {
        double flow = Planner(file).For(ConfigurationKind.VvFemoralJugular).Candidates[0].FlowLPerMin;
        Measurement consumption = file.Blood.OxygenConsumptionMlPerMin!;
        Measurement haemoglobin = file.Blood.HaemoglobinGPerDl!;
        CaseFile hungry = file with { Blood = file.Blood with { OxygenConsumptionMlPerMin = consumption with { Value = consumption.Value * 1.2 } } };
        CaseFile pale = file with { Blood = file.Blood with { HaemoglobinGPerDl = haemoglobin with { Value = haemoglobin.Value * 0.9 } } };

        // Where not even the whole output suffices the flow is sized for the output, which neither changes.
        return Reached(hungry) && Reached(pale);

        bool Reached(CaseFile other)
        {
            FlowCandidate candidate = Planner(other).For(ConfigurationKind.VvFemoralJugular).Candidates[0];
            return !candidate.Reason.Contains("midway", StringComparison.Ordinal) || candidate.FlowLPerMin >= flow - 1e-9;
        }
    });

    [Fact]
    public void Veno_arterial_flow_is_the_index_times_the_surface()
    {
        CaseFile file = Cases.For(SupportGoal.Circulation) with
        {
            Support = new SupportSection { Goal = SupportGoal.Circulation, TargetCardiacIndexLPerMinPerM2 = 2.5 },
        };
        double expected = 2.5 * Math.Sqrt(175 * 78 / 3600.0);
        Assert.Equal(expected, Planner(file).For(ConfigurationKind.VaFemoral).FlowLPerMin.Value, 9);
    }

    [Fact]
    public void Veno_arterio_venous_flow_sends_the_whole_target_to_the_artery()
    {
        FlowPlanner planner = Planner(Cases.For(SupportGoal.Both));
        double pump = planner.For(ConfigurationKind.VavFemoralJugular).FlowLPerMin.Value;
        double toArtery = pump * (1 - RuleBookReader.BuiltIn[LimitName.VenousShareOfReturn]);
        Assert.Equal(planner.SystemicTargetLPerMin, toArtery, 9);
    }

    [Fact]
    public void A_heart_that_still_gives_something_does_not_make_the_cannulae_smaller()
    {
        CaseFile file = Cases.For(SupportGoal.Circulation) with
        {
            Heart = new HeartSection { CardiacOutputLPerMin = Cases.Measured(2, 0.3) },
        };
        FlowNeed need = Planner(file).For(ConfigurationKind.VaFemoral);
        Assert.Equal(2, need.Candidates.Count);
        Assert.Equal(Planner(file).SystemicTargetLPerMin, need.FlowLPerMin.Value, 9);
        Assert.Equal(need.FlowLPerMin.Value - 2, need.Candidates[1].FlowLPerMin, 9);
    }

    [Fact]
    public void In_arrest_the_pump_carries_everything_and_the_output_is_zero()
    {
        CaseFile file = Cases.For(SupportGoal.Arrest);
        Assert.Equal(0, new PatientReading(file).Picture.CardiacOutputLPerMin.Value);
        Assert.Equal(Planner(file).SystemicTargetLPerMin, Planner(file).For(ConfigurationKind.VaFemoral).FlowLPerMin.Value, 9);
    }

    [Fact]
    public void A_flow_asked_for_in_the_case_is_taken_as_it_is()
    {
        CaseFile file = Cases.Bare with { Support = new SupportSection { Goal = SupportGoal.GasExchange, FlowLPerMin = 3.3 } };
        foreach (ConfigurationKind configuration in Enum.GetValues<ConfigurationKind>())
        {
            FlowNeed need = Planner(file).For(configuration);
            Assert.Equal(3.3, need.FlowLPerMin.Value);
            Assert.Equal(Origin.Measured, need.FlowLPerMin.Origin);
        }
    }

    private static FlowPlanner Planner(CaseFile file) => new(new PatientReading(file), file.Support, RuleBookReader.BuiltIn);

    private static CaseFile Case(double output, double consumption, double haemoglobin, double target) => Cases.Bare with
    {
        Support = new SupportSection { Goal = SupportGoal.GasExchange, TargetSaturationPercent = target },
        Blood = new BloodSection
        {
            HaemoglobinGPerDl = Cases.Measured(haemoglobin, 0.2),
            OxygenConsumptionMlPerMin = Cases.Measured(consumption, 20),
        },
        Heart = new HeartSection { CardiacOutputLPerMin = Cases.Measured(output, 0.5) },
    };
}
