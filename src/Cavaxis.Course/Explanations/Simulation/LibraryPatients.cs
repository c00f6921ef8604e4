using Cavaxis.Circulation.Axis;
using Cavaxis.Circulation.Parameters;
using Cavaxis.Circulation.Presets;
using Cavaxis.Course.Explanations.Knowledge;
using static Cavaxis.Circulation.Parameters.CirculationParameter;

namespace Cavaxis.Course.Explanations.Simulation;

/// <summary>Invented patients on support for whom the patterns are computed: presets of the circulation with other lungs, hearts, fillings and flows.</summary>
public static class LibraryPatients
{
    // A little recirculation in the middle of what two-site support shows; the first set of ports is that of the model.
    private static readonly AxisPorts Close = new([0, 0, 0, 0.15, 0, 0.45, 0.3, 0.1, 0, 0], [0, 0.1, 0.5, 0.3, 0.1, 0, 0, 0, 0, 0]);

    /// <summary>All, before anything happens; the pump keeps the flow.</summary>
    public static IReadOnlyList<(string Name, SupportKind Support, CirculationParameters Patient)> All { get; } =
    [
        ("vv adult 1", SupportKind.VenoVenous, Veno("severe-lung-failure", 4.2, (ShuntFraction, 0.8), (InspiredOxygenFraction, 0.6))),
        ("vv adult 2", SupportKind.VenoVenous, Veno("severe-lung-failure", 3.4, (ShuntFraction, 0.7), (HaemoglobinGPerDl, 8.5), (InspiredOxygenFraction, 0.5)).With(Close)),
        ("vv adult 3", SupportKind.VenoVenous, Veno("severe-lung-failure", 5, (ShuntFraction, 0.97), (BloodVolumeMl, 6000))),
        ("vv adult 4", SupportKind.VenoVenous, Veno("severe-lung-failure", 4, (ShuntFraction, 0.85), (SystemicResistanceMmHgSPerMl, 0.9), (BloodVolumeMl, 5300), (InspiredOxygenFraction, 0.5)).With(Close)),
        ("vv adult 5", SupportKind.VenoVenous, Veno("severe-lung-failure", 4.6, (ShuntFraction, 0.6), (PulmonaryResistanceMmHgSPerMl, 0.18), (InspiredOxygenFraction, 0.5))),
        ("vv adult 6", SupportKind.VenoVenous, Veno("adult", 3.6, (ShuntFraction, 0.85), (BloodVolumeMl, 5400), (HaemoglobinGPerDl, 10), (PeepCmH2O, 10), (AlveolarSwingCmH2O, 12), (PleuralSwingMmHg, 3), (InspiredOxygenFraction, 0.6))),
        ("vv adult 7", SupportKind.VenoVenous, Veno("septic-shock", 4.4, (ShuntFraction, 0.75), (BloodVolumeMl, 5400), (SystemicResistanceMmHgSPerMl, 0.6), (PeepCmH2O, 10), (AlveolarSwingCmH2O, 14), (PleuralSwingMmHg, 3), (InspiredOxygenFraction, 0.7))),
        ("vv child", SupportKind.VenoVenous, Veno("child-20kg", 1.8, (ShuntFraction, 0.85), (PeepCmH2O, 10), (AlveolarSwingCmH2O, 12), (PleuralSwingMmHg, 3), (InspiredOxygenFraction, 0.6))),
        ("va adult 1", SupportKind.VenoArterial, Arterial("cardiogenic-shock", 3.5, (ShuntFraction, 0.15))),
        ("va adult 2", SupportKind.VenoArterial, Arterial("cardiogenic-shock", 4.3, (LeftVentricleElastanceMmHgPerMl, 0.9), (SystemicResistanceMmHgSPerMl, 0.9), (ShuntFraction, 0.35))),
        ("va adult 3", SupportKind.VenoArterial, Arterial("cardiogenic-shock", 3, (LeftVentricleElastanceMmHgPerMl, 1.2), (ShuntFraction, 0.1), (SystemicResistanceMmHgSPerMl, 1), (HaemoglobinGPerDl, 9.5))),
        ("va adult 4", SupportKind.VenoArterial, Arterial("cardiogenic-shock", 3.8, (LeftVentricleElastanceMmHgPerMl, 0.7), (RightVentricleElastanceMmHgPerMl, 0.18), (SystemicResistanceMmHgSPerMl, 0.8), (BloodVolumeMl, 5600), (HaemoglobinGPerDl, 10))),
        ("va adult 5", SupportKind.VenoArterial, Arterial("cardiogenic-shock", 2.6, (LeftVentricleElastanceMmHgPerMl, 1), (ShuntFraction, 0.5), (InspiredOxygenFraction, 0.5), (SystemicResistanceMmHgSPerMl, 0.95), (HaemoglobinGPerDl, 9))),
        ("va adult 6", SupportKind.VenoArterial, Arterial("cardiogenic-shock", 4, (RightVentricleElastanceMmHgPerMl, 0.13), (PulmonaryResistanceMmHgSPerMl, 0.2), (LeftVentricleElastanceMmHgPerMl, 1.3), (SystemicResistanceMmHgSPerMl, 0.9), (HaemoglobinGPerDl, 10))),
        ("va child", SupportKind.VenoArterial, Weak("child-20kg", 1.6)),
        ("vav adult 1", SupportKind.VenoArterialVenous, Arterial("cardiogenic-shock", 4.6, (ShuntFraction, 0.6), (LeftVentricleElastanceMmHgPerMl, 1), (SystemicResistanceMmHgSPerMl, 0.9), (ArterialShareOfReturn, 0.6))),
        ("vav adult 2", SupportKind.VenoArterialVenous, Arterial("severe-lung-failure", 5, (ShuntFraction, 0.7), (LeftVentricleElastanceMmHgPerMl, 0.8), (ArterialShareOfReturn, 0.5))),
    ];

    // Lungs at rest: little ventilation of what is still open.
    private static CirculationParameters Veno(string preset, double flow, params (CirculationParameter, double)[] changes) =>
        CirculationPresets.Of(preset).Parameters().Times(AlveolarVentilationLPerMin, 0.45).With([.. changes, (CircuitOn, 1), (TargetFlowLPerMin, flow)]);

    private static CirculationParameters Arterial(string preset, double flow, params (CirculationParameter, double)[] changes) =>
        CirculationPresets.Of(preset).Parameters().With([(ArterialShareOfReturn, 1), .. changes, (CircuitOn, 1), (TargetFlowLPerMin, flow)]);

    private static CirculationParameters Weak(string preset, double flow)
    {
        CirculationParameters p = CirculationPresets.Of(preset).Parameters();
        return p.Times(LeftVentricleElastanceMmHgPerMl, 0.4).Times(RightVentricleElastanceMmHgPerMl, 0.6).Times(BloodVolumeMl, 1.06)
            .With((CircuitOn, 1), (ArterialShareOfReturn, 1), (TargetFlowLPerMin, flow), (ShuntFraction, 0.2));
    }
}
