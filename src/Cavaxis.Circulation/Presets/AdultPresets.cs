using Cavaxis.Circulation.Parameters;
using Cavaxis.Quantities;
using static Cavaxis.Circulation.Parameters.CirculationParameter;

namespace Cavaxis.Circulation.Presets;

/// <summary>Adults of 70 kg: at rest, and in the states in which support is thought of.</summary>
internal static class AdultPresets
{
    private static readonly Source Shock = new(
        "fitted: 13 patients with infarct shock, cardiac index 1.5 (SD 0.3), wedge 24 (9), resistance 23 (5) WU", Certainty.Derived);

    private static readonly Source Lung = new(
        "fitted: pulmonary resistance index 3.8 (2.6-5.4) WU m2 (Bull 2010), cardiac index 4.2 (1.2), PaO2/FiO2 below 80 (Abrams 2015)",
        Certainty.Derived);

    private static readonly Source Sepsis = new(
        "55 patients before fluids: pressure 56.8 (SD 3.1), heart rate 113 (7.5), index above 2 in 74 % (Guarracino 2019)", Certainty.Derived);

    private static readonly Source Bleeding = new("class II to III of the usual grades of blood loss: 15 to 30 %, heart rate 100 to 120", Certainty.FromMemory);

    private static readonly Source Pericardium = new(
        "filling pressures of both sides rise and equalise with a fluid-filled pericardium; numbers assumed", Certainty.Assumption);

    private static readonly Source Ventilator = new("lung-protective ventilation, usual settings", Certainty.CommonPractice);

    internal static IEnumerable<CirculationPreset> All() =>
    [
        new("adult", "Adult at rest.", ParameterTable.ReferenceMassKg, []),
        new("cardiogenic-shock", "Adult with failure of both ventricles after infarction.", ParameterTable.ReferenceMassKg,
        [
            new(HeartRatePerMin, 100, Shock),
            new(LeftVentricleElastanceMmHgPerMl, 0.55, Shock),
            new(LeftVentricleStiffnessPerMl, 0.022, Shock),
            new(RightVentricleElastanceMmHgPerMl, 0.2475, Shock),
            new(SystemicResistanceMmHgSPerMl, 1.25, Shock),
            new(BloodVolumeMl, 5900, new("congestion: filled until the wedge pressure fits", Certainty.Derived)),
        ]),
        new("severe-lung-failure", "Ventilated adult with severe acute respiratory distress syndrome.", ParameterTable.ReferenceMassKg,
        [
            new(HeartRatePerMin, 100, Lung),
            new(PulmonaryResistanceMmHgSPerMl, 0.1, Lung),
            new(SystemicResistanceMmHgSPerMl, 0.65, Lung),
            new(ShuntFraction, 0.45, Lung),
            new(BloodVolumeMl, 5700, new("filled until the cardiac index fits", Certainty.Derived)),
            new(HaemoglobinGPerDl, 10, new("usual in intensive care", Certainty.CommonPractice)),
            new(BreathsPerMin, 24, Ventilator),
            new(PeepCmH2O, 12, Ventilator),
            new(AlveolarSwingCmH2O, 13, Ventilator),
            new(PleuralSwingMmHg, 3, Ventilator),
            new(InspiredOxygenFraction, 0.9, Ventilator),
        ]),
        new("septic-shock", "Adult in septic shock before fluids.", ParameterTable.ReferenceMassKg,
        [
            new(HeartRatePerMin, 113, Sepsis),
            new(SystemicResistanceMmHgSPerMl, 0.48, Sepsis),
            new(BloodVolumeMl, 4800, Sepsis),
            new(HaemoglobinGPerDl, 10, new("usual in intensive care", Certainty.CommonPractice)),
        ]),
        new("hypovolaemia", "Adult after the loss of a sixth of the blood, with narrowed vessels.", ParameterTable.ReferenceMassKg,
        [
            new(BloodVolumeMl, 4300, Bleeding),
            new(HeartRatePerMin, 115, Bleeding),
            new(SystemicResistanceMmHgSPerMl, 1.3, new("constriction by the reflex, assumed", Certainty.Assumption)),
            new(SplanchnicZeroVolumeMl, 1116, new("the reflex empties a tenth of the splanchnic veins, assumed", Certainty.Assumption)),
            new(LowerVenousZeroVolumeMl, 999, new("the reflex empties a tenth of the veins of the lower body, assumed", Certainty.Assumption)),
        ]),
        new("tamponade", "Adult with fluid under pressure in the pericardium.", ParameterTable.ReferenceMassKg,
        [
            new(PericardiumVolumeMl, 200, Pericardium),
            new(PericardiumWidthMl, 30, Pericardium),
            new(PericardiumScaleMmHg, 10, Pericardium),
            new(HeartRatePerMin, 110, Pericardium),
            new(BloodVolumeMl, 5500, new("fluids given, assumed", Certainty.Assumption)),
        ]),
    ];
}
