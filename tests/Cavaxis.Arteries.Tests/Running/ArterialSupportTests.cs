using Cavaxis.Anatomy.Body;
using Cavaxis.Arteries.Findings;
using Cavaxis.Arteries.Running;
using Cavaxis.Arteries.Scaling;
using Cavaxis.Arteries.Support;
using Cavaxis.Arteries.Tests.Scaling;
using Cavaxis.Arteries.Tree;
using Cavaxis.Circulation.Parameters;
using Cavaxis.Circulation.Presets;
using Cavaxis.Devices.Catalogue;
using Cavaxis.Quantities;
using Cavaxis.Quantities.Faults;
using static Cavaxis.Circulation.Parameters.CirculationParameter;

namespace Cavaxis.Arteries.Tests.Running;

public class ArterialSupportTests
{
    private static readonly CirculationParameters Shock = CirculationPresets.Of("cardiogenic-shock").Parameters()
        .With((SweepLPerMin, 2.5), (ShuntFraction, 0.5), (InspiredOxygenFraction, 0.6));

    private static readonly ArterialReturn Femoral = new(AccessArtery.FemoralRight, DeviceCatalogue.BuiltIn.Cannula("return-arterial-17fr-16cm"));

    private static readonly Lazy<ArterialSupportResult> Supported = new(static () => ArterialSupport.Run(Request(2.5)));

    [Fact]
    public void At_rest_pressure_and_output_of_the_tree_agree_with_the_closed_loop()
    {
        HeartReading heart = ArterialSupport.Run(new ArterialSupportRequest(CirculationParameters.Adult, SampleTrees.Adult, null, 0)).Heart;
        Assert.Equal(heart.ClosedLoopMeanPressureMmHg, heart.MeanPressureMmHg, 0.08 * heart.ClosedLoopMeanPressureMmHg);
        Assert.Equal(heart.ClosedLoopNativeOutputLPerMin, heart.NativeOutputLPerMin, 0.08 * heart.ClosedLoopNativeOutputLPerMin);
    }

    [Fact]
    public void Under_support_pressure_and_output_of_the_tree_agree_with_the_closed_loop()
    {
        HeartReading heart = Supported.Value.Heart;
        Assert.Equal(heart.ClosedLoopMeanPressureMmHg, heart.MeanPressureMmHg, 0.05 * heart.ClosedLoopMeanPressureMmHg);
        Assert.Equal(heart.ClosedLoopNativeOutputLPerMin, heart.NativeOutputLPerMin, 0.15);
    }

    [Fact]
    public void Oxygen_is_conserved_to_a_ten_billionth() => Assert.InRange(Math.Abs(Supported.Value.Settling.OxygenImbalance), 0, 1e-10);

    [Fact]
    public void The_beat_repeats_itself() => Assert.True(Supported.Value.Settling is { FlowChange: < 2e-3, BloodSettled: true });

    [Fact]
    public void What_the_ends_take_is_what_heart_and_pump_give()
    {
        ArterialSupportResult r = Supported.Value;
        HashSet<string> ends = [.. ArterialTable.BuiltIn.Segments.Where(static s => s.Territory is not null).Select(static s => s.Name)];
        double taken = r.Arteries.Where(a => ends.Contains(a.Name)).Sum(static a => a.MeanFlowLPerMin);
        Assert.Equal(r.PumpFlowLPerMin + r.Heart.NativeOutputLPerMin, taken, 0.01 * taken);
    }

    [Fact]
    public void Saturations_lie_between_those_of_the_two_kinds_of_blood() => Assert.All(
        Supported.Value.Organs,
        static o =>
        {
            ArterialSupportResult r = Supported.Value;
            Assert.InRange(o.SaturationPercent.Lowest, r.NativeSaturationPercent - 1e-6, r.MembraneSaturationPercent + 1e-6);
            Assert.InRange(o.SaturationPercent.Highest, o.SaturationPercent.Lowest, r.MembraneSaturationPercent + 1e-6);
            Assert.InRange(o.MeanSaturationPercent.Value, o.MeanSaturationPercent.Low, o.MeanSaturationPercent.High);
        });

    [Fact]
    public void With_the_front_in_the_arch_the_right_hand_and_the_right_brain_are_worse_off()
    {
        ArterialSupportResult r = Supported.Value;
        double Mean(ArterialOrgan organ) => r.Organs[(int)organ].SaturationPercent.Mean;
        Assert.Equal(MixingPlace.AscendingOrArch, r.Mixing!.Place);
        Assert.True(Mean(ArterialOrgan.HandRight) < Mean(ArterialOrgan.HandLeft) - 3);
        Assert.True(Mean(ArterialOrgan.BrainRight) < Mean(ArterialOrgan.BrainLeft) - 2);
        Assert.True(Mean(ArterialOrgan.Heart) <= Mean(ArterialOrgan.BrainRight) + 0.1);
        Assert.True(Mean(ArterialOrgan.KidneyLeft) > r.MembraneSaturationPercent - 1);
        Assert.Equal(BodySide.Right, r.Sampling.Arm);
    }

    [Fact]
    public void The_front_moves_to_the_valve_with_the_pump_and_away_from_it_with_the_heart()
    {
        ArterialSweepPoint[] points = [.. ArterialSupport.Sweep(Request(2), [2, 3.2], [1, 1.5])];
        Assert.Equal(4, points.Length);
        Assert.True(points[1].HalfCm.Mean < points[0].HalfCm.Mean);
        Assert.True(points[3].HalfCm.Mean < points[2].HalfCm.Mean);
        Assert.True(points[2].HalfCm.Mean > points[0].HalfCm.Mean);
        Assert.True(points[3].HalfCm.Mean > points[1].HalfCm.Mean);
        Assert.True(points[1].NativeOutputLPerMin < points[0].NativeOutputLPerMin);
    }

    [Fact]
    public void A_cannula_as_wide_as_the_artery_starves_the_leg_and_distal_perfusion_restores_it()
    {
        ArterialSupportRequest tight = Tight(Femoral);
        LimbReading bare = ArterialSupport.Run(tight).Limbs[0];
        Assert.Equal(LimbSupply.Starved, bare.Supply);
        LimbReading perfused = ArterialSupport.Run(Tight(Femoral with { DistalPerfusion = DeviceCatalogue.BuiltIn.Cannula("distal-7fr-10cm") })).Limbs[0];
        Assert.Equal(LimbSupply.Supplied, perfused.Supply);
        Assert.True(perfused.WithoutPerfusionMlPerMin < perfused.NeedMlPerMin.Low);
        Assert.Contains("mL/min", perfused.InWords, StringComparison.Ordinal);
    }

    [Fact]
    public void A_return_into_the_right_axillary_artery_asks_for_the_left_arm()
    {
        ArterialReturn graft = new(AccessArtery.AxillaryRight, Femoral.Cannula, SideGraft: true);
        ArterialSupportResult r = ArterialSupport.Run(new ArterialSupportRequest(Shock, SampleTrees.Adult, graft, 2.5) { WithIntervals = false });
        Assert.Equal(BodySide.Left, r.Sampling.Arm);
        Assert.True(r.Organs[(int)ArterialOrgan.HandRight].MembraneShare.Mean > 0.99);
        Assert.False(r.Limbs[0].HasCannula);
    }

    [Fact]
    public void A_balloon_widens_the_pulse_of_the_aorta()
    {
        ArterialSupportResult balloon = ArterialSupport.Run(new ArterialSupportRequest(Shock.With(BalloonVolumeMl, 30), SampleTrees.Adult, Femoral, 2.5) { WithIntervals = false });
        OverBeat with = balloon.Arteries.First(static a => a.Name == "ascending_aorta").PressureMmHg;
        OverBeat without = Supported.Value.Arteries.First(static a => a.Name == "ascending_aorta").PressureMmHg;
        Assert.True(with.Highest - with.Lowest > without.Highest - without.Lowest);
    }

    [Fact]
    public void Two_runs_of_one_request_are_the_same()
    {
        ArterialSupportRequest request = Request(3.5) with { WithIntervals = false };
        Assert.Equal(ArterialSupport.Run(request).Organs.AsEnumerable(), ArterialSupport.Run(request).Organs.AsEnumerable());
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(40)]
    [InlineData(double.NaN)]
    public void A_pump_flow_that_cannot_be_is_refused(double flow) => Assert.Throws<InputFaultException>(() => Request(flow));

    [Fact]
    public void A_cancelled_run_stops() =>
        Assert.ThrowsAny<OperationCanceledException>(() => ArterialSupport.Run(Request(2.5), null, new CancellationToken(canceled: true)));

    private static ArterialSupportRequest Request(double flow) => new(Shock, SampleTrees.Adult, Femoral, flow);

    private static ArterialSupportRequest Tight(ArterialReturn entry) => new(Shock, SampleTrees.Adult, entry, 4)
    {
        Measured = [new MeasuredDiameter(AccessArtery.FemoralRight, Estimate.Normal(5.8, 0.3, Origin.Measured))],
        WithIntervals = false,
    };
}
