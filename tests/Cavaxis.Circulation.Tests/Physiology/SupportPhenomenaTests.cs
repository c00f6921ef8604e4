using Cavaxis.Circulation.Axis;
using Cavaxis.Circulation.Parameters;
using Cavaxis.Circulation.Presets;
using Cavaxis.Circulation.Signals;
using Cavaxis.Circulation.Simulation;
using static Cavaxis.Circulation.Parameters.CirculationParameter;
using static Cavaxis.Circulation.Signals.CirculationQuantity;

namespace Cavaxis.Circulation.Tests.Physiology;

/// <summary>What support does to a circulation, in direction and size, against published series.</summary>
public class SupportPhenomenaTests
{
    private static readonly CirculationParameters Shock = CirculationPresets.Of("cardiogenic-shock").Parameters().With(SweepLPerMin, 2.5);

    private static readonly CirculationParameters Closing = VenoArterial(Shock.With(LeftVentricleElastanceMmHgPerMl, 0.3), 4.5);

    private static readonly CirculationParameters JustClosed = Closing.With(LeftVentricleElastanceMmHgPerMl, 0.55);

    private static readonly AxisPorts FemoralDrainage = new([0, 0, 0, 0, 0, 0, 0.2, 0.5, 0.3, 0], AxisPorts.Default.VenousReturn.AsSpan());

    private static readonly CirculationParameters FixedSpeed = VenoArterial(CirculationParameters.Adult, 5)
        .With(FlowControlPerS, 0).With(CirculationParameter.PumpSpeedRatio, 1).With(FemoralDrainage);

    private static readonly Lazy<Dictionary<string, SettledState>> States = new(static () => Settle(new()
    {
        ["1 L/min"] = VenoArterial(Shock, 1),
        ["3 L/min"] = VenoArterial(Shock, 3),
        ["5 L/min"] = VenoArterial(Shock, 5),
        ["closing"] = Closing,
        ["less flow"] = Closing.With(TargetFlowLPerMin, 1.5),
        ["stronger"] = Closing.With(LeftVentricleElastanceMmHgPerMl, 0.9),
        ["just closed"] = JustClosed,
        ["just closed, balloon"] = JustClosed.With(BalloonVolumeMl, 40),
        ["closed, balloon"] = Closing.With(BalloonVolumeMl, 40),
        ["vented"] = Closing.With(VentFlowLPerMin, 1),
        ["septal opening"] = Closing.With(SeptalOpeningCm2, 1),
        ["weak with balloon"] = VenoArterial(Shock, 3).With(BalloonVolumeMl, 40),
        ["bled"] = FixedSpeed.With(BloodVolumeMl, 4400),
        ["refilled"] = FixedSpeed.With(BloodVolumeMl, 4900),
        ["abdomen 0"] = Abdomen(5700, 0),
        ["abdomen 8"] = Abdomen(5700, 8),
        ["abdomen 30"] = Abdomen(5700, 30),
        ["little blood, abdomen 12"] = Abdomen(5200, 12),
        ["little blood, abdomen 20"] = Abdomen(5200, 20),
        ["much blood, abdomen 12"] = Abdomen(6200, 12),
        ["much blood, abdomen 20"] = Abdomen(6200, 20),
        ["drained, abdomen 4"] = FixedSpeed.With(BloodVolumeMl, 4900).With(AbdominalPressureMmHg, 4),
        ["drained, abdomen 24"] = FixedSpeed.With(BloodVolumeMl, 4900).With(AbdominalPressureMmHg, 24),
        ["ventilated"] = Ventilated(0),
        ["ventilated, PEEP 15"] = Ventilated(15),
        ["breathing"] = CirculationParameters.Adult.With(CircuitOn, 1).With(ShuntFraction, 0.5).With(PleuralSwingMmHg, -6).With(AbdominalSwingMmHg, 4),
        ["apnoea"] = CirculationParameters.Adult.With(CircuitOn, 1).With(ShuntFraction, 0.5).With(PleuralSwingMmHg, 0).With(AbdominalSwingMmHg, 0),
    }));

    [Fact]
    public void More_arterial_return_loads_the_failing_left_ventricle()
    {
        // Ostadal 2015 and Hala 2020, pigs, 1 to 5 L/min: pressure and end-systolic volume rise, ejection fraction and stroke volume do not.
        Ordered(MeanArterialPressureMmHg, "1 L/min", "3 L/min", "5 L/min");
        Ordered(LeftVentricularEndSystolicVolumeMl, "1 L/min", "3 L/min", "5 L/min");
        Ordered(WedgePressureMmHg, "1 L/min", "3 L/min", "5 L/min");
        Ordered(LeftVentricularEjectionFractionPercent, "5 L/min", "3 L/min", "1 L/min");
        Ordered(StrokeVolumeMl, "5 L/min", "3 L/min", "1 L/min");
        Ordered(AorticValveOpenPercent, "5 L/min", "3 L/min", "1 L/min");
        double filling = Of("5 L/min")[LeftVentricularEndDiastolicPressureMmHg] - Of("1 L/min")[LeftVentricularEndDiastolicPressureMmHg];
        Assert.InRange(filling, 0, 8 + (2 * 3.6));
    }

    [Fact]
    public void A_weak_ventricle_cannot_open_the_aortic_valve_until_flow_falls_or_strength_rises()
    {
        Assert.Equal(0, Of("closing")[AorticValveOpenPercent]);
        Assert.True(Of("closing")[PulsePressureMmHg] < 2);
        Assert.True(Of("less flow")[AorticValveOpenPercent] > 5);
        Assert.True(Of("stronger")[AorticValveOpenPercent] > 5);
    }

    [Fact]
    public void A_vent_or_an_atrial_opening_empties_the_left_atrium()
    {
        // Baruteau 2018: left atrial pressure 24.2 to 7.8 mmHg, right atrial nearly unchanged (a fall by 68 %); Prasad: a fall of 40 %.
        double before = Of("closing")[WedgePressureMmHg];
        Assert.True(Of("vented")[WedgePressureMmHg] < before - 2);
        Assert.InRange(1 - (Of("septal opening")[WedgePressureMmHg] / before), 0.35, 0.80);
        Assert.InRange(Of("septal opening")[CentralVenousPressureMmHg] - Of("closing")[CentralVenousPressureMmHg], 0, 4);
        Assert.True(Of("septal opening")[LeftVentricularEndDiastolicVolumeMl] < Of("closing")[LeftVentricularEndDiastolicVolumeMl]);
    }

    [Fact]
    public void A_balloon_pump_helps_the_ventricle_eject()
    {
        // Fister 2025: velocity-time integral +8.1 %. The model gives more, in the same direction.
        Assert.True(Of("weak with balloon")[OutflowVelocityTimeIntegralCm] > 1.02 * Of("3 L/min")[OutflowVelocityTimeIntegralCm]);
        Assert.True(Of("weak with balloon")[WedgePressureMmHg] < Of("3 L/min")[WedgePressureMmHg]);
    }

    [Fact]
    public void A_balloon_pump_reopens_a_valve_that_is_just_shut_but_not_one_far_from_opening()
    {
        // By the pressure against which the ventricle opens the valve (direction from practice). Of 17 patients with a shut valve, all with a balloon pump,
        // 8 still had it shut after a day (series of 2020): a balloon is not always enough.
        Assert.True(Of("just closed")[AorticValveOpenPercent] < 1);
        Assert.True(Of("just closed, balloon")[AorticValveOpenPercent] > 5);
        Assert.Equal(0, Of("closed, balloon")[AorticValveOpenPercent]);
        Assert.True(Of("just closed, balloon")[PulsePressureMmHg] > 20 + Of("just closed")[PulsePressureMmHg]);
    }

    [Fact]
    public void Too_little_blood_lets_the_cava_close_on_the_holes_and_half_a_litre_frees_it()
    {
        // Direction from practice; the plateau of venous return below the pressure outside the veins is Guyton's (1957, from memory).
        Assert.True(Of("bled")[DrainageLowestOpenness] < 0.2);
        Assert.True(Of("bled")[InletPressureMmHg] < -200, "the pump pulls at a closed cava");
        Assert.True(Of("refilled")[DrainageLowestOpenness] > 0.5);
        Assert.True(Of("refilled")[InletPressureMmHg] > -130);
        Assert.True(Of("refilled")[CirculationQuantity.PumpFlowLPerMin] > Of("bled")[CirculationQuantity.PumpFlowLPerMin] + 1);
    }

    [Fact]
    public void Abdominal_pressure_helps_venous_return_up_to_an_optimum_that_rises_with_filling()
    {
        // Giebler 2000 and Takata 1990: biphasic; return rises while the cava stands above the pressure round it and falls below.
        Assert.True(Of("abdomen 8")[SystemicFlowLPerMin] > Of("abdomen 0")[SystemicFlowLPerMin] + 0.3);
        Assert.True(Of("abdomen 30")[SystemicFlowLPerMin] < Of("abdomen 8")[SystemicFlowLPerMin] - 0.3);
        Assert.True(Of("little blood, abdomen 20")[SystemicFlowLPerMin] < Of("little blood, abdomen 12")[SystemicFlowLPerMin]);
        Assert.True(Of("much blood, abdomen 20")[SystemicFlowLPerMin] > Of("much blood, abdomen 12")[SystemicFlowLPerMin]);
    }

    [Fact]
    public void Abdominal_pressure_closes_the_inferior_cava_on_the_holes_and_costs_flow()
    {
        Ordered(InferiorCavaLowestFilling, "drained, abdomen 24", "drained, abdomen 4");
        Assert.True(Of("drained, abdomen 24")[DrainageLowestOpenness] < 0.2);
        Assert.True(Of("drained, abdomen 24")[CirculationQuantity.PumpFlowLPerMin] < Of("drained, abdomen 4")[CirculationQuantity.PumpFlowLPerMin] - 0.5);
    }

    [Fact]
    public void Airway_pressure_lowers_output_and_raises_central_venous_pressure()
    {
        // Dogs lose half their output at 15 cmH2O, fluid-loaded patients almost nothing: the model lies between.
        double lost = 1 - (Of("ventilated, PEEP 15")[NativeOutputLPerMin] / Of("ventilated")[NativeOutputLPerMin]);
        Assert.InRange(lost, 0.02, 0.5);
        Assert.True(Of("ventilated, PEEP 15")[CentralVenousPressureMmHg] > Of("ventilated")[CentralVenousPressureMmHg] + 1);
    }

    [Fact]
    public void Breathing_makes_the_saturation_before_the_membrane_swing() =>
        Assert.True(Of("breathing")[PreMembraneSwingPercent] > 3 * Of("apnoea")[PreMembraneSwingPercent]);

    private static CirculationSummary Of(string name) => States.Value[name].RequireSummary();

    private static void Ordered(CirculationQuantity quantity, params string[] names)
    {
        double[] values = [.. names.Select(name => Of(name)[quantity])];
        Assert.True(values.Zip(values.Skip(1)).All(static pair => pair.First < pair.Second), $"{quantity}: {string.Join(", ", values)}");
    }

    private static CirculationParameters VenoArterial(CirculationParameters patient, double flowLPerMin) =>
        patient.With(CircuitOn, 1).With(ArterialShareOfReturn, 1).With(AscendingShareOfArterialReturn, 0).With(TargetFlowLPerMin, flowLPerMin);

    private static CirculationParameters Abdomen(double bloodMl, double pressureMmHg) =>
        CirculationPresets.Of("severe-lung-failure").Parameters().With(BloodVolumeMl, bloodMl).With(AbdominalPressureMmHg, pressureMmHg);

    private static CirculationParameters Ventilated(double peepCmH2O) =>
        CirculationParameters.Adult.With(PleuralSwingMmHg, 3).With(AlveolarSwingCmH2O, 10).With(PeepCmH2O, peepCmH2O);

    private static Dictionary<string, SettledState> Settle(Dictionary<string, CirculationParameters> sets) =>
        sets.Keys.Zip(CirculationSimulator.Settle([.. sets.Values])).ToDictionary(static pair => pair.First, static pair => pair.Second);
}
