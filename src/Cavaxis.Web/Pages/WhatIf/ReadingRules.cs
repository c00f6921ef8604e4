using static Cavaxis.Circulation.Parameters.CirculationParameter;
using static Cavaxis.Circulation.Signals.CirculationQuantity;
using static Cavaxis.Web.Pages.WhatIf.ReadingCondition;

namespace Cavaxis.Web.Pages.WhatIf;

/// <summary>
/// How changes are read: one rule for each quantity, each with the chains of cause that the model holds. A chain is named only where every
/// link of it is found in the computed differences.
/// </summary>
internal static class ReadingRules
{
    /// <summary>All rules, in the order in which they are told.</summary>
    public static IReadOnlyList<ReadingRule> All { get; } =
    [
        new(RecirculationPercent, "Recirculation", static s => s.HasVenousReturn(),
            [
                new("the pump takes more ({PumpFlowLPerMin}) while no more blood comes down the cavae ({SystemicFlowLPerMin})", Up(PumpFlowLPerMin), NotUp(SystemicFlowLPerMin)),
                new("less blood comes down the cavae ({SystemicFlowLPerMin}) while the pump keeps its flow ({PumpFlowLPerMin})", Down(SystemicFlowLPerMin), NotDown(PumpFlowLPerMin)),
                new("the flow of the pump ({PumpFlowLPerMin}) grows faster than the flow down the cavae ({SystemicFlowLPerMin})", Outpaces(PumpFlowLPerMin, SystemicFlowLPerMin)),
            ],
            [
                new("the pump takes less ({PumpFlowLPerMin}) of the blood that comes down the cavae ({SystemicFlowLPerMin})", Down(PumpFlowLPerMin), NotDown(SystemicFlowLPerMin)),
                new("more blood comes down the cavae ({SystemicFlowLPerMin}) while the pump takes no more ({PumpFlowLPerMin})", Up(SystemicFlowLPerMin), NotUp(PumpFlowLPerMin)),
                new("the flow down the cavae ({SystemicFlowLPerMin}) grows faster than that of the pump ({PumpFlowLPerMin})", Outpaces(SystemicFlowLPerMin, PumpFlowLPerMin)),
            ],
            "Where the ports lie, and which of them drains returned blood", "lie"),
        new(AorticValveOpenPercent, "The time in each beat with the aortic valve open", static s => s.HasArterialReturn(),
            [
                new("the left ventricle contracts more strongly, as asked", More(LeftVentricleElastanceMmHgPerMl)),
                new("the balloon empties before the heart ejects, as asked", More(BalloonVolumeMl)),
                new("the heart ejects against a lower pressure (mean {MeanArterialPressureMmHg})", Down(MeanArterialPressureMmHg)),
                new("the left ventricle is fuller before it contracts ({LeftVentricularEndDiastolicVolumeMl})", Up(LeftVentricularEndDiastolicVolumeMl)),
                new("more blood comes to it through the lungs ({LungFlowLPerMin})", Up(LungFlowLPerMin)),
            ],
            [
                new("the vent takes blood out of the left ventricle that would have been ejected, as asked", More(VentFlowLPerMin)),
                new("the left ventricle contracts more weakly, as asked", Less(LeftVentricleElastanceMmHgPerMl)),
                new("the heart ejects against a higher pressure (mean {MeanArterialPressureMmHg})", Up(MeanArterialPressureMmHg)),
                new("the left ventricle is less full before it contracts ({LeftVentricularEndDiastolicVolumeMl})", Down(LeftVentricularEndDiastolicVolumeMl)),
                new("less blood comes to it through the lungs ({LungFlowLPerMin})", Down(LungFlowLPerMin)),
            ],
            "Opening of the aortic valve and spontaneous contrast in the echocardiogram; pulse pressure", "know"),
        new(WedgePressureMmHg, "Wedge pressure", static _ => true,
            [
                new("the veins hold more blood, as asked (central venous pressure {CentralVenousPressureMmHg})", More(BloodVolumeMl), Up(CentralVenousPressureMmHg)),
                new("the heart ejects less ({NativeOutputLPerMin}) against a higher pressure (mean {MeanArterialPressureMmHg}), and what it does not eject stays before it", Down(NativeOutputLPerMin), Up(MeanArterialPressureMmHg)),
                new("the heart ejects no more ({NativeOutputLPerMin}) against a higher pressure (mean {MeanArterialPressureMmHg})", NotUp(NativeOutputLPerMin), Up(MeanArterialPressureMmHg)),
                new("more blood comes through the lungs ({LungFlowLPerMin})", Up(LungFlowLPerMin)),
                new("more pressure of the ventilator reaches the chest, as asked", More(PeepCmH2O)),
                new("the left ventricle empties less ({LeftVentricularEndSystolicVolumeMl} left in it)", Up(LeftVentricularEndSystolicVolumeMl)),
                new("the left ventricle contracts more weakly, as asked", Less(LeftVentricleElastanceMmHgPerMl)),
            ],
            [
                new("the vent empties the left ventricle, as asked", More(VentFlowLPerMin)),
                new("the veins hold less blood, as asked (central venous pressure {CentralVenousPressureMmHg})", Less(BloodVolumeMl), Down(CentralVenousPressureMmHg)),
                new("the heart ejects more ({NativeOutputLPerMin}) against no higher pressure (mean {MeanArterialPressureMmHg})", Up(NativeOutputLPerMin), NotUp(MeanArterialPressureMmHg)),
                new("the left ventricle contracts more strongly, as asked", More(LeftVentricleElastanceMmHgPerMl)),
                new("the balloon empties before the heart ejects, as asked", More(BalloonVolumeMl)),
                new("the left ventricle empties further ({LeftVentricularEndSystolicVolumeMl} left in it)", Down(LeftVentricularEndSystolicVolumeMl)),
                new("less blood comes through the lungs ({LungFlowLPerMin})", Down(LungFlowLPerMin)),
                new("the heart ejects against a lower pressure (mean {MeanArterialPressureMmHg})", Down(MeanArterialPressureMmHg)),
                new("less pressure of the ventilator reaches the chest, as asked", Less(PeepCmH2O)),
            ],
            "Lungs in the chest picture or ultrasound, left atrium and mitral valve in the echocardiogram", "know"),
        new(RightArmSaturationPercent, "Saturation of the right arm", static _ => true,
            [
                new("the lungs give more oxygen ({OxygenFromLungsMlPerMin})", Up(OxygenFromLungsMlPerMin)),
                new("the blood carries more haemoglobin and comes back with more oxygen ({VenousSaturationPercent}), as asked", More(HaemoglobinGPerDl), Up(VenousSaturationPercent)),
                new("more of the pump's flow is not drained again ({EffectiveFlowLPerMin})", VenousOnly, Up(EffectiveFlowLPerMin)),
                new("the pump's blood is a larger share of a smaller flow through the body ({SystemicFlowLPerMin}); that is not more oxygen delivered", VenousOnly, Down(SystemicFlowLPerMin)),
                new("the heart sends less blood from the lungs to the right arm ({NativeOutputLPerMin})", Arterial, Down(NativeOutputLPerMin)),
                new("blood comes back from the body with more oxygen ({VenousSaturationPercent})", Up(VenousSaturationPercent)),
                new("blood leaves the membrane lung with more oxygen ({PostMembraneSaturationPercent})", Up(PostMembraneSaturationPercent)),
            ],
            [
                new("the lungs give less oxygen, as asked by less inspired oxygen ({OxygenFromLungsMlPerMin})", Less(InspiredOxygenFraction), Down(OxygenFromLungsMlPerMin)),
                new("blood leaves the membrane lung with less oxygen ({PostMembraneSaturationPercent})", Down(PostMembraneSaturationPercent)),
                new("less of the pump's flow is not drained again ({EffectiveFlowLPerMin})", VenousOnly, Down(EffectiveFlowLPerMin)),
                new("the pump's blood is a smaller share of a larger flow through the body ({SystemicFlowLPerMin}); that need not be less oxygen delivered", VenousOnly, Up(SystemicFlowLPerMin)),
                new("the heart sends more blood from the lungs to the right arm ({NativeOutputLPerMin})", Arterial, Up(NativeOutputLPerMin)),
                new("blood comes back from the body with less oxygen ({VenousSaturationPercent})", Down(VenousSaturationPercent)),
                new("the lungs give less oxygen ({OxygenFromLungsMlPerMin})", Down(OxygenFromLungsMlPerMin)),
            ],
            "Arterial gas from the right arm, and oxygen delivery over use", "know"),
        new(PreMembraneSaturationPercent, "Saturation before the membrane lung", static s => s != SupportSense.None,
            [
                new("more of the returned blood is drained again (recirculation {RecirculationPercent})", VenousOnly, Up(RecirculationPercent)),
                new("blood comes back from the body with more oxygen ({VenousSaturationPercent})", Up(VenousSaturationPercent)),
            ],
            [
                new("less of the returned blood is drained again (recirculation {RecirculationPercent})", VenousOnly, Down(RecirculationPercent)),
                new("blood comes back from the body with less oxygen ({VenousSaturationPercent})", Down(VenousSaturationPercent)),
            ],
            "A gas from before the membrane lung", "know"),
        new(DeliveryOverConsumption, "Oxygen delivery over use", static _ => true,
            [
                new("the same flow carries more haemoglobin, as asked", More(HaemoglobinGPerDl)),
                new("more blood flows through the body ({SystemicFlowLPerMin})", Up(SystemicFlowLPerMin)),
                new("the blood is fuller of oxygen (right arm {RightArmSaturationPercent})", Up(RightArmSaturationPercent)),
            ],
            [
                new("the same flow carries less haemoglobin, as asked", Less(HaemoglobinGPerDl)),
                new("less blood flows through the body ({SystemicFlowLPerMin})", Down(SystemicFlowLPerMin)),
                new("the blood is less full of oxygen (right arm {RightArmSaturationPercent})", Down(RightArmSaturationPercent)),
            ],
            "Lactate and venous saturation", "know"),
        .. PressureRules.All,
    ];
}
