using Cavaxis.Circulation.Parameters;
using static Cavaxis.Circulation.Parameters.CirculationParameter;
using static Cavaxis.Circulation.Signals.CirculationQuantity;
using static Cavaxis.Web.Pages.WhatIf.ReadingCondition;

namespace Cavaxis.Web.Pages.WhatIf;

/// <summary>The rules for flows, pressures and carbon dioxide; the others stand in <see cref="ReadingRules"/>.</summary>
internal static class PressureRules
{
    /// <summary>The rules, in the order in which they are told.</summary>
    public static IReadOnlyList<ReadingRule> All { get; } =
    [
        new(PumpFlowLPerMin, "Pump flow", static s => s != SupportSense.None,
            [
                new("that was asked", More(TargetFlowLPerMin)),
                new("the pump turns faster, as asked", More(CirculationParameter.PumpSpeedRatio)),
                new("the pump pushes against a lower pressure (mean {MeanArterialPressureMmHg})", Arterial, Down(MeanArterialPressureMmHg)),
                new("the veins before it are fuller (central venous pressure {CentralVenousPressureMmHg})", Up(CentralVenousPressureMmHg)),
                new("the drained vein stays open (lowest openness {DrainageLowestOpenness})", Up(DrainageLowestOpenness)),
            ],
            [
                new("that was asked", Less(TargetFlowLPerMin)),
                new("the pump turns more slowly, as asked", Less(CirculationParameter.PumpSpeedRatio)),
                new("the drained vein falls in on the holes (lowest openness {DrainageLowestOpenness})", Down(DrainageLowestOpenness)),
                new("the pump pushes against a higher pressure (mean {MeanArterialPressureMmHg})", Arterial, Up(MeanArterialPressureMmHg)),
                new("the veins before it are emptier (central venous pressure {CentralVenousPressureMmHg})", Down(CentralVenousPressureMmHg)),
            ],
            "Shaking of the drainage line and the pressure before the pump", "know"),
        new(InletPressureMmHg, "Pressure before the pump", static s => s != SupportSense.None,
            [
                new("the pump takes less ({PumpFlowLPerMin})", Down(PumpFlowLPerMin)),
                new("the veins are fuller (central venous pressure {CentralVenousPressureMmHg})", Up(CentralVenousPressureMmHg)),
                new("the drained vein stays open (lowest openness {DrainageLowestOpenness})", Up(DrainageLowestOpenness)),
            ],
            [
                new("the pump takes more ({PumpFlowLPerMin})", Up(PumpFlowLPerMin)),
                new("the drained vein falls in on the holes (lowest openness {DrainageLowestOpenness})", Down(DrainageLowestOpenness)),
                new("the veins are emptier (central venous pressure {CentralVenousPressureMmHg})", Down(CentralVenousPressureMmHg)),
            ],
            "Whether the drainage line shakes, and its pressure limit", "ways"),
        new(MeanArterialPressureMmHg, "Mean arterial pressure", static _ => true,
            [
                new("the vessels of the body are narrower, as asked", More(SystemicResistanceMmHgSPerMl)),
                new("more blood flows through the body ({SystemicFlowLPerMin})", Up(SystemicFlowLPerMin)),
                new("the resistance of the body is higher ({SystemicResistanceWoodUnits})", Up(SystemicResistanceWoodUnits)),
            ],
            [
                new("the vessels of the body are wider, as asked", Less(SystemicResistanceMmHgSPerMl)),
                new("less blood flows through the body ({SystemicFlowLPerMin})", Down(SystemicFlowLPerMin)),
                new("the resistance of the body is lower ({SystemicResistanceWoodUnits})", Down(SystemicResistanceWoodUnits)),
            ],
            "Pulse pressure, and perfusion of the organs", "know"),
        new(NativeOutputLPerMin, "Output of the heart", static _ => true,
            [
                new("the left ventricle contracts more strongly, as asked", More(LeftVentricleElastanceMmHgPerMl)),
                new("the right ventricle contracts more strongly, as asked", More(RightVentricleElastanceMmHgPerMl)),
                new("the heart beats faster, as asked", More(CirculationParameter.HeartRatePerMin)),
                new("the veins hold more blood, as asked (central venous pressure {CentralVenousPressureMmHg})", More(BloodVolumeMl), Up(CentralVenousPressureMmHg)),
                new("the pump takes less ({PumpFlowLPerMin}), and more goes through the lungs", Arterial, Down(PumpFlowLPerMin)),
                new("it ejects against a lower pressure (mean {MeanArterialPressureMmHg})", Down(MeanArterialPressureMmHg)),
                new("the left ventricle is fuller before it contracts ({LeftVentricularEndDiastolicVolumeMl})", Up(LeftVentricularEndDiastolicVolumeMl)),
            ],
            [
                new("the vent takes blood out of the left ventricle before it is ejected, as asked", More(VentFlowLPerMin)),
                new("the left ventricle contracts more weakly, as asked", Less(LeftVentricleElastanceMmHgPerMl)),
                new("the right ventricle contracts more weakly, as asked", Less(RightVentricleElastanceMmHgPerMl)),
                new("the veins hold less blood, as asked (central venous pressure {CentralVenousPressureMmHg})", Less(BloodVolumeMl), Down(CentralVenousPressureMmHg)),
                new("the pump takes more ({PumpFlowLPerMin}) before it reaches the heart", Arterial, Up(PumpFlowLPerMin)),
                new("it ejects against a higher pressure (mean {MeanArterialPressureMmHg})", Up(MeanArterialPressureMmHg)),
                new("the left ventricle is less full before it contracts ({LeftVentricularEndDiastolicVolumeMl})", Down(LeftVentricularEndDiastolicVolumeMl)),
            ],
            "Velocity-time integral of the outflow", "know"),
        new(CentralVenousPressureMmHg, "Central venous pressure", static _ => true,
            [
                new("the veins hold more blood, as asked", More(BloodVolumeMl)),
                new("more pressure of the ventilator reaches the chest, as asked", More(PeepCmH2O)),
                new("more pressure in the abdomen presses blood out of its veins, as asked", More(AbdominalPressureMmHg)),
                new("the pump drains less ({PumpFlowLPerMin})", Arterial, Down(PumpFlowLPerMin)),
                new("the heart takes less blood on ({NativeOutputLPerMin})", Down(NativeOutputLPerMin)),
                new("more blood comes back to the right heart ({SystemicFlowLPerMin})", Up(SystemicFlowLPerMin)),
            ],
            [
                new("the veins hold less blood, as asked", Less(BloodVolumeMl)),
                new("less pressure of the ventilator reaches the chest, as asked", Less(PeepCmH2O)),
                new("less pressure in the abdomen presses blood out of its veins, as asked", Less(AbdominalPressureMmHg)),
                new("the pump drains more ({PumpFlowLPerMin})", Arterial, Up(PumpFlowLPerMin)),
                new("the heart takes more blood on ({NativeOutputLPerMin})", Up(NativeOutputLPerMin)),
                new("less blood comes back to the right heart ({SystemicFlowLPerMin})", Down(SystemicFlowLPerMin)),
            ],
            "Filling of the cavae in the ultrasound", "know"),
        new(RightArmPco2MmHg, "Carbon dioxide tension of the right arm", static _ => true,
            [
                new("less sweep gas washes it out, as asked", Less(SweepLPerMin)),
                new("less of the pump's flow is not drained again ({EffectiveFlowLPerMin})", VenousOnly, Down(EffectiveFlowLPerMin)),
                new("the heart sends more blood from the lungs ({NativeOutputLPerMin}), whose ventilation stays, to the right arm", Arterial, Up(NativeOutputLPerMin)),
                new("less blood flows through the body ({SystemicFlowLPerMin}) and each part of it carries more away", Down(SystemicFlowLPerMin)),
            ],
            [
                new("more sweep gas washes it out, as asked", More(SweepLPerMin)),
                new("more of the pump's flow is not drained again ({EffectiveFlowLPerMin})", VenousOnly, Up(EffectiveFlowLPerMin)),
                new("the heart sends less blood from the lungs ({NativeOutputLPerMin}), whose ventilation stays, to the right arm", Arterial, Down(NativeOutputLPerMin)),
                new("more blood flows through the body ({SystemicFlowLPerMin}) and each part of it carries less away", Up(SystemicFlowLPerMin)),
            ],
            "Arterial gas from the right arm", "know"),
    ];
}
