using Cavaxis.Planning.Case;
using Cavaxis.Planning.Configurations;
using Cavaxis.Planning.Plans;
using Cavaxis.Planning.Steps;

namespace Cavaxis.Planning.Tests.Steps;

/// <summary>Hard stops stand where they must, and nowhere is a view said to show what it cannot.</summary>
public class StepListTests
{
    private static readonly ResourceSection Everything = new()
    {
        TransoesophagealEcho = Availability.OnHand,
        TransthoracicEcho = Availability.OnHand,
        VascularUltrasound = Availability.OnHand,
        Fluoroscopy = Availability.OnHand,
        HybridRoom = Availability.OnHand,
        StiffWire = Availability.OnHand,
        VascularSurgeon = Availability.OnHand,
    };

    /// <summary>Both goals without a stop on any kind of return, so that each configuration has a plan.</summary>
    private static readonly CaseFile Well = Cases.For(SupportGoal.Both) with { Resources = Everything };

    private static readonly Lazy<PlanningResult> Planned = new(() => Cases.Plan(Well, 400));

    public static TheoryData<ConfigurationKind> Configurations => new(Enum.GetValues<ConfigurationKind>());

    [Theory]
    [MemberData(nameof(Configurations))]
    public void Steps_are_numbered_from_one_and_end_by_confirming_every_port(ConfigurationKind configuration)
    {
        IReadOnlyList<ProcedureStep> steps = Steps(configuration, Everything);
        Assert.Equal(Enumerable.Range(1, steps.Count), steps.Select(step => step.Number));
        Assert.Contains("Confirm every port again", steps[^1].Action, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Configurations))]
    public void Every_vein_is_told_from_its_artery_in_two_planes_before_any_dilator(ConfigurationKind configuration)
    {
        CannulationPlan plan = Plan(configuration);
        IReadOnlyList<ProcedureStep> steps = Steps(configuration, Everything);
        int veins = plan.Cannulae.Count(cannula => cannula.Route is AccessRoute.Jugular or AccessRoute.FemoralVein);
        ProcedureStep[] proofs = [.. steps.Where(step => Says(step.HardStop, "and not in the artery beside it, seen in two planes, before any dilator"))];
        Assert.Equal(veins, proofs.Length);
        foreach (ProcedureStep proof in proofs)
        {
            // The next dilation comes after the proof, never between the puncture and it.
            int index = steps.ToList().IndexOf(proof);
            Assert.StartsWith("Puncture", proof.Action, StringComparison.Ordinal);
            Assert.Contains(steps.Skip(index + 1), step => step.Action.StartsWith("Dilate", StringComparison.Ordinal));
        }
    }

    [Theory]
    [MemberData(nameof(Configurations))]
    public void A_femoral_artery_is_told_from_its_vein_and_its_wire_seen_in_the_aorta(ConfigurationKind configuration)
    {
        bool femoral = Plan(configuration).Cannulae.Any(cannula => cannula.Route == AccessRoute.FemoralArtery);
        Assert.Equal(femoral, Steps(configuration, Everything).Any(
            step => Says(step.HardStop, "in the artery and not in the vein") && Says(step.HardStop, "descending aorta")));
    }

    [Theory]
    [MemberData(nameof(Configurations))]
    public void The_wire_is_in_the_upper_SVC_before_femoral_drainage_advances(ConfigurationKind configuration)
    {
        bool drains = Plan(configuration).Cannulae.Any(cannula => cannula.Role == CannulaRole.Drainage);
        AssertBefore(Steps(configuration, Everything), drains, "upper SVC before the drainage cannula advances", "Advance the drainage cannula");
    }

    [Theory]
    [MemberData(nameof(Configurations))]
    public void The_wire_is_deep_in_the_IVC_and_not_in_the_ventricle_or_a_hepatic_vein_before_the_dual_lumen_advances(ConfigurationKind configuration)
    {
        bool dual = configuration == ConfigurationKind.VvDualLumenJugular;
        IReadOnlyList<ProcedureStep> steps = Steps(configuration, Everything);
        AssertBefore(
            steps, dual, "deep in the IVC, and neither in the right ventricle nor in a hepatic vein, before the dual-lumen", "Advance the dual-lumen");
        Assert.Equal(dual, steps.Any(step => Says(step.HardStop, "jet is seen to enter the tricuspid valve")));
    }

    [Theory]
    [MemberData(nameof(Configurations))]
    public void No_venous_cannula_advances_without_a_wire_in_view(ConfigurationKind configuration)
    {
        ProcedureStep[] advances = [.. Steps(configuration, Everything).Where(step => System.Text.RegularExpressions.Regex.IsMatch(
            step.Action, "^Advance the (drainage|return|dual-lumen) cannula over the wire to .* from the skin"))];
        int venous = Plan(configuration).Cannulae.Count(cannula => cannula.Fit is not null);
        Assert.Equal(venous, advances.Length);
        Assert.All(advances, step => Assert.Equal("No wire in view, no advance.", step.HardStop));
    }

    [Theory]
    [MemberData(nameof(Configurations))]
    public void Once_the_wire_is_out_the_tip_is_said_to_be_out_of_sight(ConfigurationKind configuration)
    {
        IReadOnlyList<ProcedureStep> steps = Steps(configuration, Everything);
        ProcedureStep[] hidden = [.. steps.Where(step => step.Action.StartsWith("Take out introducer and wire", StringComparison.Ordinal))];
        Assert.Equal(Plan(configuration).Cannulae.Count(cannula => cannula.Fit is not null), hidden.Length);
        Assert.All(hidden, step =>
        {
            Assert.True(Says(step.Pitfall, "not visible once the wire is out"));
            Assert.Contains(step.CannotShowIt, view => Says(view, "no view shows the tip reliably"));
        });
    }

    [Theory]
    [MemberData(nameof(Configurations))]
    public void Fluoroscopy_and_chest_film_are_said_not_to_show_the_valve_and_never_to_show_it(ConfigurationKind configuration)
    {
        IReadOnlyList<ProcedureStep> steps = Steps(configuration, Everything);
        Assert.Contains(steps, step => step.CannotShowIt.Any(view =>
            Says(view, "fluoroscopy and chest film do not show the tricuspid valve")));
        ProcedureStep[] valve = [.. steps.Where(step => Says(step.Action, "tricuspid") || Says(step.HardStop, "tricuspid"))];
        Assert.All(valve, step =>
        {
            Assert.All(step.ShowsIt, view => Assert.False(Says(view, "fluoroscopy") || Says(view, "chest film")));
            Assert.Contains(step.CannotShowIt, view => Says(view, "do not show the tricuspid valve"));
        });
        Assert.All(steps, step => Assert.Empty(step.ShowsIt.Intersect(step.CannotShowIt)));
    }

    [Theory]
    [MemberData(nameof(Configurations))]
    public void With_everything_on_hand_every_step_has_its_evidence(ConfigurationKind configuration) =>
        Assert.All(Steps(configuration, Everything), step => Assert.True(step.EvidenceAvailable, step.Action));

    [Theory]
    [InlineData(Availability.Missing)]
    [InlineData(Availability.Unknown)]
    public void With_nothing_known_to_be_on_hand_no_step_that_needs_a_view_has_its_evidence(Availability state)
    {
        ResourceSection nothing = new()
        {
            TransoesophagealEcho = state,
            TransthoracicEcho = state,
            VascularUltrasound = state,
            Fluoroscopy = state,
            HybridRoom = state,
            StiffWire = state,
            VascularSurgeon = state,
        };
        foreach (ConfigurationKind configuration in Enum.GetValues<ConfigurationKind>())
        {
            string always = ImagingView.CircuitPressures.Words;
            Assert.All(Steps(configuration, nothing), step => Assert.Equal(
                step.ShowsIt.Count == 0 || step.ShowsIt.Contains(always), step.EvidenceAvailable));
        }
    }

    [Fact]
    public void The_leg_is_fed_before_its_artery_is_filled()
    {
        IReadOnlyList<ProcedureStep> steps = Steps(ConfigurationKind.VaFemoralWithDistalPerfusion, Everything);
        int distal = steps.First(step => Says(step.Action, "distal perfusion cannula in the")).Number;
        int arterial = steps.First(step => Says(step.Action, "Advance the") && Says(step.Action, "return cannula over the wire to its hub")).Number;
        Assert.True(distal < arterial);
    }

    private static void AssertBefore(IReadOnlyList<ProcedureStep> steps, bool expected, string stop, string advance)
    {
        int[] stops = [.. steps.Where(step => Says(step.HardStop, stop)).Select(step => step.Number)];
        int[] advances = [.. steps.Where(step => step.Action.StartsWith(advance, StringComparison.Ordinal)).Select(step => step.Number)];
        Assert.Equal(expected ? 1 : 0, stops.Length);
        Assert.Equal(stops.Length, advances.Length);
        Assert.All(stops.Zip(advances), pair => Assert.True(pair.First < pair.Second));
    }

    private static CannulationPlan Plan(ConfigurationKind configuration) =>
        Planned.Value.Plans.First(plan => plan.Configuration == configuration);

    private static IReadOnlyList<ProcedureStep> Steps(ConfigurationKind configuration, ResourceSection resources) =>
        StepListBuilder.For(Plan(configuration), Well with { Resources = resources });

    private static bool Says(string? text, string part) => text?.Contains(part, StringComparison.OrdinalIgnoreCase) == true;
}
