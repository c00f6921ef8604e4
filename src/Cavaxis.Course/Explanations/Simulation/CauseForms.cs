using Cavaxis.Circulation.Axis;
using Cavaxis.Circulation.Parameters;
using Cavaxis.Course.Explanations.Knowledge;
using static Cavaxis.Circulation.Parameters.CirculationParameter;

namespace Cavaxis.Course.Explanations.Simulation;

/// <summary>
/// The causes as the library of patterns has them. The sizes are assumptions of this project: from hardly seen to as large as a patient is
/// brought through. What follows from them is computed (docs/models/explanations.md). The model does not show a vein that opens and closes on the
/// holes many times a minute; a drop of the drainage stands in for it.
/// </summary>
public static class CauseForms
{
    /// <summary>All forms; causes that the model does not have (limb, nothing) are not here.</summary>
    public static IReadOnlyList<CauseForm> All { get; } =
    [
        new(CauseOfChange.Recirculation, "ports", static (p, s) => p.With(Nearer(p.Ports, 0.75 * s))),
        new(CauseOfChange.Hypovolaemia, "slow", static (p, s) => Lose(p, 0.18 * s, 0.5 * s)),
        new(CauseOfChange.Hypovolaemia, "held up by the reflex", static (p, s) => Lose(p, 0.1 * s, 0.6 * s)),
        new(CauseOfChange.Hypovolaemia, "without reflex", static (p, s) => Lose(p, 0.13 * s, 0)),
        new(CauseOfChange.Hypovolaemia, "vein closes", static (p, s) => Drainage(Lose(p, 0.15 * s, 0.3 * s), 1 + (1.3 * s))),
        new(CauseOfChange.DrainageObstruction, "kink", static (p, s) => Drainage(p, 1 + (3.5 * s))),
        new(CauseOfChange.ReturnObstruction, "membrane", static (p, s) => Times(Times(p, ReturnLinearMmHgPerLPerMin, 1 + (3 * s)), MembraneRatedFlowLPerMin, 1 - (0.2 * s))),
        new(CauseOfChange.ReturnObstruction, "return", static (p, s) => Times(p, ReturnQuadraticMmHgPerLPerMin2, 1 + (3 * s))),
        new(CauseOfChange.AbdominalPressure, "abdomen", static (p, s) => Abdomen(p, s)),
        new(CauseOfChange.AbdominalPressure, "vein closes", static (p, s) => Drainage(Abdomen(p, s), 1 + (1.3 * s))),
        new(CauseOfChange.ThoracicPressure, "tamponade", static (p, s) => Heart(p, s)),
        new(CauseOfChange.ThoracicPressure, "tamponade, vein closes", static (p, s) => Drainage(Heart(p, s), 1 + (1.3 * s))),
        new(CauseOfChange.ThoracicPressure, "pneumothorax", static (p, s) => Chest(p, s)),
        new(CauseOfChange.HighDemand, "sepsis", static (p, s) => Demand(p, 0.5 * s, 0.45 * s, 0.3 * s)),
        new(CauseOfChange.HighDemand, "waking", static (p, s) => Demand(p, 0.6 * s, 0.1 * s, 0.25 * s)),
        new(CauseOfChange.WorseLungs, "shunt", static (p, s) => Lungs(p, 0.6 * s, 0.6 * s)),
        new(CauseOfChange.FailingMembrane, "exchange", static (p, s) => Membrane(p, 0.75 * s, 0.6 * s)),
        new(CauseOfChange.DistendedVentricle, "afterload", static (p, s) => Times(Times(p, SystemicResistanceMmHgSPerMl, 1 + (0.6 * s)), LeftVentricleElastanceMmHgPerMl, 1 - (0.35 * s))),
        new(CauseOfChange.DistendedVentricle, "leak", static (p, s) => Plus(Times(p, LeftVentricleElastanceMmHgPerMl, 1 - (0.2 * s)), AorticLeakAreaCm2, 0.2 * s * Math.Pow(p.MassKg / 70, 2.0 / 3))),
        new(CauseOfChange.ClosedAorticValve, "stunned", static (p, s) => Times(Times(p, LeftVentricleElastanceMmHgPerMl, 0.45 - (0.33 * s)), RightVentricleElastanceMmHgPerMl, 1 - (0.3 * s))),
        new(CauseOfChange.DifferentialHypoxaemia, "recovery", static (p, s) => Recover(p, s)),
    ];

    private static CirculationParameters Times(CirculationParameters p, CirculationParameter which, double factor) => p.WithNearest(which, p[which] * factor);

    private static CirculationParameters Plus(CirculationParameters p, CirculationParameter which, double more) => p.WithNearest(which, p[which] + more);

    /// <summary>Moves shares of drainage and return to common parts of the atrium.</summary>
    private static AxisPorts Nearer(AxisPorts ports, double share)
    {
        double[] common = [0, 0.05, 0.3, 0.3, 0, 0.25, 0.1, 0, 0, 0];
        double[] Blend(IReadOnlyList<double> old) => [.. old.Select((v, i) => ((1 - share) * v) + (share * common[i]))];
        return new AxisPorts(Blend(ports.Drainage), Blend(ports.VenousReturn));
    }

    private static CirculationParameters Lose(CirculationParameters p, double share, double reflex) =>
        Times(Times(Times(p, BloodVolumeMl, 1 - share), HeartRatePerMin, 1 + (0.35 * reflex)), SystemicResistanceMmHgSPerMl, 1 + (0.5 * reflex));

    private static CirculationParameters Drainage(CirculationParameters p, double factor) =>
        Times(Times(p, DrainageQuadraticMmHgPerLPerMin2, factor), DrainageLinearMmHgPerLPerMin, factor);

    private static CirculationParameters Abdomen(CirculationParameters p, double s) =>
        Plus(Plus(p, CirculationParameter.AbdominalPressureMmHg, 20 * s), PleuralPressureMmHg, 3 * s);

    private static CirculationParameters Heart(CirculationParameters p, double s) => Times(
        Times(Plus(p, PericardiumScaleMmHg, 9.4 * s), PericardiumVolumeMl, 1 - (0.5 * s)), HeartRatePerMin, 1 + (0.2 * s));

    private static CirculationParameters Chest(CirculationParameters p, double s) => Plus(
        Times(Times(Plus(p, PleuralPressureMmHg, 12 * s), AlveolarVentilationLPerMin, 1 - (0.5 * s)), HeartRatePerMin, 1 + (0.15 * s)), ShuntFraction, 0.25 * s);

    private static CirculationParameters Demand(CirculationParameters p, double more, double wider, double faster) => Times(
        Times(Times(Times(p, OxygenConsumptionMlPerMin, 1 + more), CarbonDioxideProductionMlPerMin, 1 + more), SystemicResistanceMmHgSPerMl, 1 - wider),
        HeartRatePerMin, 1 + faster);

    private static CirculationParameters Lungs(CirculationParameters p, double shunt, double less) => Times(
        Times(p.WithNearest(ShuntFraction, p[ShuntFraction] + (shunt * (1 - p[ShuntFraction]))), AlveolarVentilationLPerMin, 1 - less),
        PulmonaryResistanceMmHgSPerMl, 1 + (0.5 * less));

    private static CirculationParameters Membrane(CirculationParameters p, double less, double lessCarbonDioxide) => Times(
        Times(Times(p, MembraneRatedFlowLPerMin, 1 - less), MembraneCarbonDioxideMlPerMinPerMmHg, 1 - lessCarbonDioxide),
        ReturnLinearMmHgPerLPerMin, 1 + (0.4 * less));

    private static CirculationParameters Recover(CirculationParameters p, double s) => Times(
        Times(Lungs(p, 0.35 * s, 0.2 * s), LeftVentricleElastanceMmHgPerMl, 1 + (1.5 * s)), RightVentricleElastanceMmHgPerMl, 1 + (0.6 * s));
}
