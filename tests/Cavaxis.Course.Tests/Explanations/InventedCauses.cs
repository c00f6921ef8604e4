using Cavaxis.Circulation.Axis;
using Cavaxis.Circulation.Parameters;
using Cavaxis.Course.Explanations.Knowledge;
using static Cavaxis.Circulation.Parameters.CirculationParameter;

namespace Cavaxis.Course.Tests.Explanations;

/// <summary>What truly happens in the suite. Written apart from the forms of the library: other mechanisms, mixtures and sizes, drawn by seed.</summary>
public static class InventedCauses
{
    public static CirculationParameters Apply(CirculationParameters p, CauseOfChange cause, double size, Random random)
    {
        double U(double low, double high) => low + ((high - low) * random.NextDouble());
        CirculationParameters T(CirculationParameters set, CirculationParameter which, double factor) => set.WithNearest(which, set[which] * factor);
        CirculationParameters A(CirculationParameters set, CirculationParameter which, double more) => set.WithNearest(which, set[which] + more);
        bool first = random.NextDouble() < 0.5;

        // In six of ten such patients the vein closes on the holes, which the settled circulation does not show by itself.
        if (cause is CauseOfChange.Hypovolaemia or CauseOfChange.AbdominalPressure or CauseOfChange.ThoracicPressure && random.NextDouble() < 0.6)
        {
            p = A(T(p, DrainageQuadraticMmHgPerLPerMin2, 1 + (size * U(0.3, 2))), SuctionResistanceMmHgSPerMl, size * U(0, 1));
        }

        switch (cause)
        {
            case CauseOfChange.Recirculation:
                return p.With(Slipped(p.Ports, size * U(0.4, 0.8), first));
            case CauseOfChange.Hypovolaemia:
                // The reflex holds the pressure up, but not above what it was.
                double reflex = U(0, 1) * size;
                return T(T(T(T(p, BloodVolumeMl, 1 - (size * U(0.11, 0.2))), HeartRatePerMin, 1 + (0.22 * reflex)), SystemicResistanceMmHgSPerMl, 1 + (0.2 * reflex)), SplanchnicZeroVolumeMl, 1 - (0.03 * reflex));
            case CauseOfChange.DrainageObstruction:
                return first ? A(T(p, DrainageQuadraticMmHgPerLPerMin2, 1 + (size * U(2, 5))), SuctionResistanceMmHgSPerMl, 0.5 * size) : A(p, DrainageLinearMmHgPerLPerMin, size * U(10, 30) * Math.Pow(p.MassKg / 70, -0.75));
            case CauseOfChange.ReturnObstruction:
                return first
                    ? T(T(p, ReturnLinearMmHgPerLPerMin, 1 + (size * U(1.5, 4))), MembraneRatedFlowLPerMin, 1 - (0.3 * size * U(0, 1)))
                    : T(T(p, ReturnQuadraticMmHgPerLPerMin2, 1 + (size * U(1.5, 4))), ReturnLinearMmHgPerLPerMin, 1 + (0.2 * U(0, 1)));
            case CauseOfChange.AbdominalPressure:
                double rise = size * U(12, 22);
                return T(A(A(p, CirculationParameter.AbdominalPressureMmHg, rise), PleuralPressureMmHg, rise * U(0.1, 0.3)), SystemicResistanceMmHgSPerMl, 1 + (0.1 * size));
            case CauseOfChange.ThoracicPressure:
                return first
                    ? T(T(A(p, PericardiumScaleMmHg, size * U(6, 9.4)), PericardiumVolumeMl, 1 - (size * U(0.35, 0.55))), HeartRatePerMin, 1 + (size * U(0.05, 0.25)))
                    : A(T(T(A(p, PleuralPressureMmHg, size * U(8, 14)), AlveolarVentilationLPerMin, 1 - (size * U(0.3, 0.6))), HeartRatePerMin, 1 + (size * U(0.05, 0.2))), ShuntFraction, size * U(0.1, 0.35));
            case CauseOfChange.HighDemand:
                double more = size * U(0.4, 0.65);
                return T(T(T(T(p, OxygenConsumptionMlPerMin, 1 + more), CarbonDioxideProductionMlPerMin, 1 + (more * U(0.8, 1.1))), SystemicResistanceMmHgSPerMl, 1 - (size * (first ? U(0.25, 0.5) : U(0, 0.15)))), HeartRatePerMin, 1 + (size * U(0.15, 0.35)));
            case CauseOfChange.WorseLungs:
                return T(T(p.WithNearest(ShuntFraction, p[ShuntFraction] + ((1 - p[ShuntFraction]) * size * U(0.4, 0.75))), AlveolarVentilationLPerMin, 1 - (size * U(0.3, 0.7))), PulmonaryResistanceMmHgSPerMl, 1 + (size * U(0, 0.5)));
            case CauseOfChange.FailingMembrane:
                return T(T(T(p, MembraneRatedFlowLPerMin, 1 - (size * U(0.6, 0.8))), MembraneCarbonDioxideMlPerMinPerMmHg, 1 - (size * U(0.2, 0.75))), ReturnLinearMmHgPerLPerMin, 1 + (size * U(0, 0.6)));
            case CauseOfChange.DistendedVentricle:
                return first
                    ? T(T(p, SystemicResistanceMmHgSPerMl, 1 + (size * U(0.3, 0.7))), LeftVentricleElastanceMmHgPerMl, 1 - (size * U(0.2, 0.45)))
                    : A(T(p, LeftVentricleElastanceMmHgPerMl, 1 - (size * U(0.1, 0.3))), AorticLeakAreaCm2, size * U(0.12, 0.25) * Math.Pow(p.MassKg / 70, 2.0 / 3));
            case CauseOfChange.ClosedAorticValve:
                return T(T(p, LeftVentricleElastanceMmHgPerMl, 0.35 - (0.25 * size * U(0.6, 1))), RightVentricleElastanceMmHgPerMl, 1 - (size * U(0, 0.4)));
            case CauseOfChange.DifferentialHypoxaemia:
                return T(T(T(p.WithNearest(ShuntFraction, p[ShuntFraction] + ((1 - p[ShuntFraction]) * size * U(0.2, 0.5))), LeftVentricleElastanceMmHgPerMl, 1 + (size * U(1, 2))), RightVentricleElastanceMmHgPerMl, 1 + (size * U(0.3, 0.8))), AlveolarVentilationLPerMin, 1 - (size * U(0, 0.3)));
            default:
                return p;
        }
    }

    /// <summary>What drifts in any patient between two windows.</summary>
    public static CirculationParameters Drift(CirculationParameters p, Random random)
    {
        CirculationParameters T(CirculationParameters set, CirculationParameter which, double sd) => set.WithNearest(which, set[which] * Math.Exp(sd * InventedPatients.Normal(random)));
        CirculationParameters drifted = T(T(T(T(p, SystemicResistanceMmHgSPerMl, 0.04), HeartRatePerMin, 0.04), BloodVolumeMl, 0.008), OxygenConsumptionMlPerMin, 0.035);
        return T(T(T(T(drifted, LeftVentricleElastanceMmHgPerMl, 0.04), ShuntFraction, 0.02), AlveolarVentilationLPerMin, 0.05), CarbonDioxideProductionMlPerMin, 0.035);
    }

    private static AxisPorts Slipped(AxisPorts ports, double share, bool returnSlips)
    {
        double[] drained = [.. ports.Drainage];
        double[] returned = [.. ports.VenousReturn];
        double[] moving = returnSlips ? returned : drained;
        double[] towards = returnSlips ? drained : returned;
        double[] moved = [.. moving.Select((v, i) => ((1 - share) * v) + (share * towards[i]))];
        return returnSlips ? new AxisPorts(drained, moved) : new AxisPorts(moved, returned);
    }
}
