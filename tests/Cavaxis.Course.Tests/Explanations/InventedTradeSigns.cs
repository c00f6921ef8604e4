using Cavaxis.Course.Explanations.Knowledge;
using Cavaxis.Course.Observations;
using static Cavaxis.Course.Explanations.Knowledge.CauseOfChange;
using static Cavaxis.Course.Observations.ObservedQuantity;

namespace Cavaxis.Course.Tests.Explanations;

/// <summary>
/// Signs that the circulation does not have, drawn with spreads of their own: a factor (or a shift) and how often the sign shows at all.
/// The direction of each is trade knowledge that the explanations share; the numbers are not theirs.
/// </summary>
public static class InventedTradeSigns
{
    private static readonly (CauseOfChange Cause, ObservedQuantity Quantity, double Low, double High, double Shown)[] Factors =
    [
        (Hypovolaemia, LineChatterPerMin, 2, 12, 0.75), (DrainageObstruction, LineChatterPerMin, 2, 10, 0.65), (AbdominalPressure, LineChatterPerMin, 1.5, 9, 0.6), (ThoracicPressure, LineChatterPerMin, 1.5, 8, 0.5),
        (Hypovolaemia, LactateMmolPerL, 1, 2.4, 0.8), (ThoracicPressure, LactateMmolPerL, 1.1, 3, 0.85), (AbdominalPressure, LactateMmolPerL, 1, 2.5, 0.7), (HighDemand, LactateMmolPerL, 1, 3, 0.7),
        (DrainageObstruction, LactateMmolPerL, 1, 1.8, 0.5), (ReturnObstruction, LactateMmolPerL, 1, 1.8, 0.5), (WorseLungs, LactateMmolPerL, 1, 1.6, 0.4), (LimbIschaemia, LactateMmolPerL, 1, 2.4, 0.6), (ClosedAorticValve, LactateMmolPerL, 1, 1.9, 0.5),
        (Hypovolaemia, UrineMlPerH, 0.2, 0.8, 0.8), (AbdominalPressure, UrineMlPerH, 0.1, 0.6, 0.85), (ThoracicPressure, UrineMlPerH, 0.2, 0.8, 0.75), (HighDemand, UrineMlPerH, 0.4, 1.1, 0.5),
        (ReturnObstruction, LactateDehydrogenaseUPerL, 1.1, 2.6, 0.7), (DrainageObstruction, LactateDehydrogenaseUPerL, 1, 2, 0.6), (FailingMembrane, LactateDehydrogenaseUPerL, 1, 1.8, 0.6), (LimbIschaemia, LactateDehydrogenaseUPerL, 1, 2.4, 0.6),
        (ReturnObstruction, FreeHaemoglobinMgPerL, 1.1, 5, 0.7), (DrainageObstruction, FreeHaemoglobinMgPerL, 1.1, 5, 0.65), (FailingMembrane, FreeHaemoglobinMgPerL, 1, 2.2, 0.5),
        (ReturnObstruction, DDimerMgPerL, 1.1, 2.8, 0.5), (FailingMembrane, DDimerMgPerL, 1.1, 2.8, 0.75), (ReturnObstruction, PlateletsGPerL, 0.55, 0.95, 0.5), (FailingMembrane, PlateletsGPerL, 0.6, 1, 0.7), (HighDemand, PlateletsGPerL, 0.6, 1, 0.5),
        (ReturnObstruction, FibrinogenGPerL, 0.5, 0.95, 0.5), (FailingMembrane, FibrinogenGPerL, 0.6, 1, 0.65), (HighDemand, FibrinogenGPerL, 0.9, 1.5, 0.5),
    ];

    private static readonly (CauseOfChange Cause, ObservedQuantity Quantity, double Low, double High, double Shown)[] Shifts =
    [
        (HighDemand, TemperatureCelsius, 0.2, 2.8, 0.7), (Hypovolaemia, HaemoglobinGPerDl, -3, 0.8, 0.8), (AbdominalPressure, PlateauPressureCmH2O, 1, 11, 0.85), (ThoracicPressure, PlateauPressureCmH2O, 2, 16, 0.5),
        (WorseLungs, PlateauPressureCmH2O, 1, 10, 0.75), (LimbIschaemia, CannulatedLimbSaturationPercent, -34, -10, 0.95),
    ];

    private static readonly (ObservedQuantity Quantity, double Level, double Spread)[] Usual =
    [
        (AbdominalPressureMmHg, 10, 0.3), (LineChatterPerMin, 2, 0.6), (LactateMmolPerL, 1.9, 0.4), (UrineMlPerH, 60, 0.5), (TemperatureCelsius, 36.7, 0.012), (LactateDehydrogenaseUPerL, 430, 0.4), (FreeHaemoglobinMgPerL, 45, 0.5),
        (DDimerMgPerL, 4.5, 0.7), (PlateletsGPerL, 115, 0.4), (FibrinogenGPerL, 3.6, 0.35),
    ];

    /// <summary>Levels before of what the circulation does not have.</summary>
    public static IEnumerable<(ObservedQuantity Quantity, double Level)> Before(Random random) =>
        Usual.Select(u => (u.Quantity, u.Level * Math.Exp(u.Spread * InventedPatients.Normal(random)))).ToArray();

    /// <summary>Changes the values now as a cause does.</summary>
    public static void Apply(CauseOfChange cause, double size, Dictionary<ObservedQuantity, double> now, Random random)
    {
        foreach ((_, ObservedQuantity quantity, double low, double high, double shown) in Factors.Where(f => f.Cause == cause))
        {
            double full = Math.Exp(Math.Log(low) + (random.NextDouble() * Math.Log(high / low)));
            now[quantity] *= random.NextDouble() < shown ? Math.Exp(Math.Log(full) * (0.5 + (0.5 * size))) : 1;
        }

        foreach ((_, ObservedQuantity quantity, double low, double high, double shown) in Shifts.Where(f => f.Cause == cause))
        {
            double full = low + (random.NextDouble() * (high - low));
            now[quantity] += random.NextDouble() < shown ? full * (0.5 + (0.5 * size)) : 0;
        }
    }
}
