using System.Text.Json;
using Cavaxis.Anatomy.Body;
using Cavaxis.Planning.Case;
using Cavaxis.Planning.Configurations;
using Cavaxis.Planning.Json;
using Cavaxis.Planning.Plans;
using Cavaxis.Planning.Rapid;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Planning.Tests.Rapid;

public class RapidAssessmentTests
{
    private static readonly ConfigurationKind[] Arterial = [ConfigurationKind.VaFemoral, ConfigurationKind.VaFemoralWithDistalPerfusion];

    [Fact]
    public void Three_inputs_give_a_plan_with_sizes_flow_and_depth()
    {
        RapidPlan plan = Minutes.Of(Minutes.Man).Plan!;
        Assert.Contains(plan.Configuration, Arterial);
        Assert.InRange(plan.CarriedFlowLPerMin, 3, 7);
        Assert.True(plan.NeededFlowLPerMin.Low < plan.NeededFlowLPerMin.Value && plan.NeededFlowLPerMin.Value < plan.NeededFlowLPerMin.High);
        RapidCannula drainage = plan.Cannulae.Single(static c => c.Role == CannulaRole.Drainage);
        Assert.InRange(drainage.DepthCm!.Value, 30, 65);
        Assert.Contains(plan.Cannulae, static c => c is { Role: CannulaRole.ArterialReturn, DepthCm: null });
        Assert.All(plan.Cannulae, static c => Assert.False(c.VesselSeen));
    }

    [Fact]
    public void Everything_unknown_is_named()
    {
        RapidResult result = Minutes.Of(Minutes.Man);
        string[] fields = [.. result.Missing.Select(static m => m.Field)];
        Assert.All(
            ["situation", "patient.heightCm", "patient.weightKg", "clock.noFlow", "clock.compressions", "clock.toFlow", "axis", "blood.haemoglobinGPerDl", "heart.meanArterialPressureMmHg", "heart.centralVenousPressureMmHg"],
            field => Assert.Contains(field, fields));
        Assert.All(result.Plan!.Cannulae, c => Assert.Contains(fields, f => f.Contains(PlainWords.Vessel(c.Route, c.Side), StringComparison.Ordinal)));

        // Every question that any criterion asked here leaves open, be it alone or as part of another.
        string[] derived = ["ageYears", "weightKg", "bodyMassIndex", "noFlowMin", "lowFlowMin", "compressionMin", "pregnant"];
        IEnumerable<string> open = Minutes.Own.Criteria
            .Where(c => c.Situations.Contains(RapidSituation.ArrestOutOfHospital) && c.Kind != SelectionKind.Context && c.When is not null)
            .Select(static c => c.When!.Question).Distinct().Except(derived);
        Assert.All(open, question => Assert.Contains($"answer: {question}", fields));
        Assert.All(result.Missing, static m => Assert.True(m.UsedInstead.Length > 5 && m.Matters.Length > 5, m.Field));
    }

    [Fact]
    public void What_is_given_is_no_longer_unknown()
    {
        RapidInput known = Minutes.Man with
        {
            HeightCm = 180,
            Situations = [RapidSituation.ArrestInHospital],
            Clock = ArrestClock.FromMinutes(0, 20, 15),
            Answers = Minutes.Answers("witnessed=yes"),
            Vessels = [new VesselEntry { Vessel = VesselName.CommonFemoralArtery, Side = BodySide.Right, DiameterMm = new Measurement(9, 0.5, true), Patency = Patency.Patent }],
        };
        RapidResult result = Minutes.Of(known);
        Assert.DoesNotContain(result.Missing, static m => m.Field is "situation" or "patient.heightCm" or "clock.noFlow" or "clock.compressions" or "clock.toFlow" or "answer: witnessed");
        Assert.Equal(("20 min", "35 min"), (result.Clock.CompressionsSoFar, result.Clock.LowFlow));
    }

    [Fact]
    public void The_depth_interval_holds_the_depths_of_the_small_and_the_large_body_and_narrows_when_height_is_known()
    {
        RapidCannula guessed = Drainage(Minutes.Man);
        RapidCannula known = Drainage(Minutes.Man with { HeightCm = 175 });
        RapidBody body = RapidBody.Of(Minutes.Man);
        Assert.InRange(Drainage(Minutes.Man with { HeightCm = body.HeightCm.Low }).DepthCm!.Value, guessed.DepthCm!.Low, guessed.DepthCm.High);
        Assert.InRange(Drainage(Minutes.Man with { HeightCm = body.HeightCm.High }).DepthCm!.Value, guessed.DepthCm.Low, guessed.DepthCm.High);
        Assert.True(known.DepthCm!.High - known.DepthCm.Low < guessed.DepthCm.High - guessed.DepthCm.Low);
    }

    [Fact]
    public void A_closed_artery_is_left_for_the_other_side_and_a_seen_vessel_is_marked()
    {
        VesselEntry closed = new() { Vessel = VesselName.CommonFemoralArtery, Side = BodySide.Right, Patency = Patency.Occluded };
        RapidCannula artery = Minutes.Of(Minutes.Man with { Vessels = [closed] }).Plan!.Cannulae.Single(static c => c.Role == CannulaRole.ArterialReturn);
        Assert.Equal(BodySide.Left, artery.Side);
        VesselEntry open = new() { Vessel = VesselName.CommonFemoralArtery, Side = BodySide.Left, DiameterMm = new Measurement(8, 0.5, true), Patency = Patency.Patent };
        RapidCannula seen = Minutes.Of(Minutes.Man with { Vessels = [closed, open] }).Plan!.Cannulae.Single(static c => c.Role == CannulaRole.ArterialReturn);
        Assert.True(seen.VesselSeen);
        Assert.True(seen.VesselDiameterMm.High - seen.VesselDiameterMm.Low < artery.VesselDiameterMm.High - artery.VesselDiameterMm.Low);
    }

    [Theory]
    [InlineData(RapidSituation.ArrestOutOfHospital, false)]
    [InlineData(RapidSituation.ArrestInHospital, false)]
    [InlineData(RapidSituation.CardiogenicShock, false)]
    [InlineData(RapidSituation.PulmonaryEmbolism, false)]
    [InlineData(RapidSituation.Hypothermia, false)]
    [InlineData(RapidSituation.LungFailure, true)]
    [InlineData(RapidSituation.Trauma, true)]
    [InlineData(RapidSituation.BridgeToTransplant, true)]
    public void A_situation_plans_what_it_asks_for(RapidSituation situation, bool venous)
    {
        RapidResult result = Minutes.Of(Minutes.Man with { Situations = [situation] });
        SituationRule rule = Minutes.Own.Situations.Single(s => s.Situation == situation);
        Assert.Equal(venous, ConfigurationTable.Of(result.Plan!.Configuration).Kind == SupportKind.VenoVenous);
        Assert.Equal(rule.Configurations.Count, 1 + result.Plan.Alternatives.Count + result.NotPlanned.Count);
        Assert.Equal(rule.Findings.Select(static f => f.Id), result.Findings.Select(static f => f.Id));
    }

    [Fact]
    public void What_is_special_about_the_patient_is_added_to_the_emergency()
    {
        RapidResult result = Minutes.Of(new RapidInput(29, Sex.Female, 140) { Situations = [RapidSituation.PulmonaryEmbolism, RapidSituation.Pregnancy], HeightCm = 165 });
        Assert.Equal(["Pulmonary embolism", "Pregnancy", "Obesity"], result.Situations);
        Assert.Contains(result.Missing, static m => m.Field == "situation" && m.UsedInstead.Contains("Obesity", StringComparison.Ordinal));
        Assert.Contains(result.Findings, static f => f.Situation == RapidSituation.Pregnancy);
        RapidResult alone = Minutes.Of(new RapidInput(29, Sex.Female, 70) { Situations = [RapidSituation.Pregnancy] });
        Assert.Contains(alone.Missing, static m => m.Field == "situation" && m.UsedInstead.Contains("was not named", StringComparison.Ordinal));
        Assert.Contains("Child", Minutes.Of(new RapidInput(6, Sex.Male, 21)).Situations);
    }

    [Fact]
    public void The_clock_says_which_limits_lie_ahead_and_which_have_passed()
    {
        RapidClockReading clock = Minutes.Of(Minutes.Man with { Clock = ArrestClock.FromMinutes(2, 70, null) }).Clock;
        Assert.Contains(clock.NextLimits, static l => l.StartsWith("20 min left", StringComparison.Ordinal) && l.Contains("below 90 min", StringComparison.Ordinal));
        Assert.Contains(clock.PassedLimits, static l => l.Contains("60 min", StringComparison.Ordinal));
    }

    [Fact]
    public void The_same_input_gives_the_same_bytes() => Assert.Equal(
        JsonSerializer.Serialize(Minutes.Of(Minutes.Man), CavaxisJson.Options), JsonSerializer.Serialize(Minutes.Of(Minutes.Man), CavaxisJson.Options));

    [Fact]
    public void Every_age_and_weight_gives_a_result_or_a_fault_in_words()
    {
        int results = 0;
        foreach (double age in new[] { 0, 0.5, 3, 13, 18, 110 })
        {
            foreach (double weight in new[] { 2.0, 8, 30, 90, 350 })
            {
                try
                {
                    RapidResult result = Minutes.Of(new RapidInput(age, results % 2 == 0 ? Sex.Female : Sex.Male, weight));
                    Assert.True(result.Plan is not null || result.NotPlanned.Count > 0);
                    results++;
                }
                catch (InputFaultException fault)
                {
                    Assert.All(fault.Faults, static f => Assert.True(f.Remedy.Length > 5));
                }
            }
        }

        Assert.True(results > 8);
    }

    private static RapidCannula Drainage(RapidInput input) => Minutes.Of(input).Plan!.Cannulae.Single(static c => c.Role == CannulaRole.Drainage);
}
