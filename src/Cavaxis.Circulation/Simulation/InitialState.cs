using Cavaxis.Circulation.Equations;
using Cavaxis.Circulation.Lanes;
using Cavaxis.Circulation.Parameters;
using static Cavaxis.Circulation.Parameters.CirculationParameter;
using N = Cavaxis.Circulation.Equations.GasNode;
using S = Cavaxis.Circulation.Equations.StateIndex;

namespace Cavaxis.Circulation.Simulation;

/// <summary>A plausible state to start from. What it is does not matter to the settled result, only to the time until then.</summary>
internal static class InitialState
{
    /// <summary>Volumes at plausible pressures, the rest of the blood in the veins; gas as in resting blood.</summary>
    /// <param name="p">Parameters.</param>
    /// <returns>State of one patient.</returns>
    public static double[] Of(CirculationParameters p)
    {
        double[] y = new double[S.Count];
        y[S.RightAtrium] = p[RightAtriumZeroVolumeMl] + (4 / p[RightAtriumElastanceMmHgPerMl]);
        y[S.LeftAtrium] = p[LeftAtriumZeroVolumeMl] + (8 / p[LeftAtriumElastanceMmHgPerMl]);
        y[S.RightVentricle] = p[RightVentricleZeroVolumeMl] + (Math.Log(1 + (4 / p[RightVentricleStiffnessMmHg])) / p[RightVentricleStiffnessPerMl]);
        y[S.LeftVentricle] = p[LeftVentricleZeroVolumeMl] + (Math.Log(1 + (8 / p[LeftVentricleStiffnessMmHg])) / p[LeftVentricleStiffnessPerMl]);
        y[S.PulmonaryArtery] = p[PulmonaryArteryZeroVolumeMl] + (18 * p[PulmonaryArteryComplianceMlPerMmHg]);
        y[S.PulmonaryVein] = p[PulmonaryVenousZeroVolumeMl] + (10 * p[PulmonaryVenousComplianceMlPerMmHg]);
        y[S.Ascending] = p[AscendingZeroVolumeMl] + (85 * p[AscendingComplianceMlPerMmHg]);
        y[S.Arch] = p[ArchZeroVolumeMl] + (85 * p[ArchComplianceMlPerMmHg]);
        y[S.Descending] = p[DescendingZeroVolumeMl] + (82 * p[DescendingComplianceMlPerMmHg]) - (p[BalloonVolumeMl] / 2);
        y[S.SuperiorCava] = 1.8 * p[SuperiorCavaZeroVolumeMl];
        y[S.ThoracicCava] = 1.8 * p[ThoracicCavaZeroVolumeMl];
        y[S.AbdominalCava] = 1.8 * p[AbdominalCavaZeroVolumeMl];
        double held = 0;
        for (int i = 0; i < S.VolumeCount; i++)
        {
            held += y[i];
        }

        (double upper, double splanchnic, double lower) =
            (p[UpperVenousComplianceMlPerMmHg], p[SplanchnicComplianceMlPerMmHg], p[LowerVenousComplianceMlPerMmHg]);
        double unstressed = p[UpperVenousZeroVolumeMl] + p[SplanchnicZeroVolumeMl] + p[LowerVenousZeroVolumeMl];
        double pressure = (p[BloodVolumeMl] - held - unstressed) / (upper + splanchnic + lower);
        y[S.UpperVein] = p[UpperVenousZeroVolumeMl] + (pressure * upper);
        y[S.SplanchnicVein] = p[SplanchnicZeroVolumeMl] + (pressure * splanchnic);
        y[S.LowerVein] = p[LowerVenousZeroVolumeMl] + (pressure * lower);
        y[S.SensedPressure] = p[ReflexPressureMmHg];
        bool on = p[CircuitOn] > 0;
        y[S.CircuitFlow] = on ? p[TargetFlowLPerMin] * 1000 / 60 : 0;
        y[S.SpeedRatio] = p[PumpSpeedRatio];
        Gas(p, y);
        return y;
    }

    /// <summary>Keeps contents and tensions and fits the amounts of gas to the holding volumes of other equations.</summary>
    /// <typeparam name="T">One patient or a row of them.</typeparam>
    /// <param name="from">Equations last evaluated at the state.</param>
    /// <param name="to">Equations that will go on.</param>
    /// <param name="y">State; the amounts are rewritten.</param>
    public static void Refill<T>(CirculationEquations<T> from, CirculationEquations<T> to, T[] y)
        where T : unmanaged, ILane<T>
    {
        for (int n = 0; n < N.Count; n++)
        {
            (T blood, T store) = to.Gas.Holding(n, y);
            y[S.Oxygen + n] = from.Gas.OxygenContent[n] * blood;
            y[S.CarbonDioxide + n] = from.Gas.CarbonDioxideContent[n] * (blood + store);
        }

        T lungs = to.Constants[LungGasVolumeMl] / from.Constants[LungGasVolumeMl];
        y[S.AlveolarOxygen] *= lungs;
        y[S.AlveolarCarbonDioxide] *= lungs;
    }

    private static void Gas(CirculationParameters p, double[] y)
    {
        ModelConstants<OneLane> constants = new([p]);
        GasEquations<OneLane> gas = new(constants);
        OneLane[] state = [.. y.Select(v => new OneLane(v))];
        double full = gas.Exchange.OxygenContentAt(new OneLane(90)).Value;
        double venous = Math.Max(0.25 * full, full - (p[OxygenConsumptionMlPerMin] / (70 * p.MassKg)));
        double arterialCarbonDioxide = gas.Exchange.CarbonDioxideContentAt(new OneLane(40), new OneLane(full)).Value;
        double venousCarbonDioxide = arterialCarbonDioxide + (0.8 * (full - venous));
        for (int n = 0; n < N.Count; n++)
        {
            (OneLane blood, OneLane store) = gas.Holding(n, state);
            bool arterial = n is (>= N.PulmonaryVein and <= N.Descending) or N.MembraneLung or N.ReturnLine;
            y[S.Oxygen + n] = blood.Value * (arterial ? full : venous);
            y[S.CarbonDioxide + n] = (blood.Value + store.Value) * (arterial ? arterialCarbonDioxide : venousCarbonDioxide);
        }

        double tension = p[LungGasVolumeMl] / GasExchange<OneLane>.MmHgPerStandardShare;
        y[S.AlveolarOxygen] = Math.Max(60, (GasExchange<OneLane>.DryPressureMmHg * p[InspiredOxygenFraction]) - 50) * tension;
        y[S.AlveolarCarbonDioxide] = 40 * tension;
    }
}
