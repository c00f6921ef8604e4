using Cavaxis.Blood.Oxygen;
using Cavaxis.Circulation.Lanes;
using static Cavaxis.Circulation.Parameters.CirculationParameter;

namespace Cavaxis.Circulation.Equations;

/// <summary>Gas content of blood and exchange in lungs and membrane lung, in mL of gas (standard) for each mL of blood.</summary>
/// <typeparam name="T">One patient or a row of them.</typeparam>
internal sealed class GasExchange<T>
    where T : unmanaged, ILane<T>
{
    /// <summary>Dry barometric pressure at body temperature, mmHg.</summary>
    public const double DryPressureMmHg = 713;

    /// <summary>mmHg × mL (body conditions) for each mL (standard).</summary>
    public const double MmHgPerStandardShare = 863;

    /// <summary>Oxygen dissolved, mL for each mL of blood and mmHg.</summary>
    public const double Solubility = 0.000031;

    /// <summary>Oxygen bound by haemoglobin, mL/g.</summary>
    public const double CapacityMlPerG = 1.34;

    private const double StandardPerMetered = 273.15 / 293.15;
    private readonly ModelConstants<T> k;
    private readonly T capacity;
    private readonly T fullContent;
    private readonly T membraneUnits;
    private readonly T gasConductance;

    /// <summary>Prepares.</summary>
    /// <param name="constants">Parameters.</param>
    public GasExchange(ModelConstants<T> constants)
    {
        k = constants;
        capacity = T.Of(CapacityMlPerG / 100) * k[HaemoglobinGPerDl];
        T gas = T.Of(DryPressureMmHg) * k[SweepOxygenFraction];
        fullContent = OxygenContentAt(gas);
        membraneUnits = T.Of(Math.Log(5)) * (gas - T.Of(40)) / T.Of(DryPressureMmHg - 40) * T.Of(12) / k[HaemoglobinGPerDl];
        T sweep = k[SweepLPerMin] * T.Of(1000.0 / 60 * StandardPerMetered);
        T membrane = k[MembraneCarbonDioxideMlPerMinPerMmHg] / T.Of(60);
        gasConductance = sweep * membrane / (sweep + (membrane * T.Of(DryPressureMmHg)));
    }

    /// <summary>Oxygen content at a tension, on the curve of <see cref="OxygenDissociation"/>.</summary>
    /// <param name="po2">Tension, mmHg.</param>
    /// <returns>mL/mL.</returns>
    public T OxygenContentAt(T po2)
    {
        T p = po2 * k[VirtualPo2Factor];
        T square = p * p;
        T z = (square - T.Of(1600)) / (square + T.Of(1600));
        T correction = T.Of(-0.0173) + (z * (T.Of(-0.002) + (z * (T.Of(0.5301) + (z * (T.Of(0.464) + (z * (T.Of(-1.2602) - (T.Of(1.2321) * z)))))))));
        T odds = p * (square + T.Of(150)) * T.Exp(correction);
        return (capacity * odds / (odds + T.Of(23400))) + (T.Of(Solubility) * po2);
    }

    /// <summary>Carbon dioxide content at a tension and an oxygen content.</summary>
    /// <param name="pco2">Tension, mmHg.</param>
    /// <param name="oxygen">Oxygen content, mL/mL.</param>
    /// <returns>mL/mL.</returns>
    public T CarbonDioxideContentAt(T pco2, T oxygen) =>
        k[CarbonDioxideScale] * T.Exp(k[CarbonDioxideExponent] * T.Log(T.Max(pco2, T.Of(0.1)))) * Haldane(oxygen);

    /// <summary>Carbon dioxide tension at a content: the inverse of <see cref="CarbonDioxideContentAt"/>.</summary>
    /// <param name="content">mL/mL.</param>
    /// <param name="oxygen">Oxygen content, mL/mL.</param>
    /// <returns>mmHg.</returns>
    public T CarbonDioxideTensionAt(T content, T oxygen) =>
        T.Exp(T.Log(T.Max(content, T.Of(1e-4)) / (k[CarbonDioxideScale] * Haldane(oxygen))) / k[CarbonDioxideExponent]);

    /// <summary>Oxygen content of blood that leaves the membrane lung: what is missing to full falls as exp(−N(Q)).</summary>
    /// <param name="inlet">Content of the blood that enters.</param>
    /// <param name="flow">Flow, mL/s.</param>
    /// <returns>mL/mL.</returns>
    public T MembraneOxygen(T inlet, T flow)
    {
        T ratio = k[MembraneRatedFlowLPerMin] / T.Max(flow * T.Of(0.06), T.Of(0.02));
        T units = membraneUnits * T.Exp(T.Of(2.0 / 3) * T.Log(ratio));
        return fullContent - ((fullContent - inlet) * T.Exp(-units));
    }

    /// <summary>Carbon dioxide taken out by the membrane lung: mixed gas against blood along the fibre.</summary>
    /// <param name="inlet">Content of the blood that enters.</param>
    /// <param name="oxygen">Its oxygen content.</param>
    /// <param name="flow">Flow, mL/s.</param>
    /// <returns>mL/s.</returns>
    public T MembraneCarbonDioxide(T inlet, T oxygen, T flow)
    {
        T tension = CarbonDioxideTensionAt(inlet, oxygen);
        T capacityFlow = T.Max(flow, T.Of(0.3)) * k[CarbonDioxideExponent] * inlet / tension;
        return capacityFlow * tension * (T.Of(1) - T.Exp(-gasConductance / capacityFlow));
    }

    private T Haldane(T oxygen) => T.Of(1) + (k[HaldaneFactor] * T.Max(T.Of(0), T.Of(1) - (oxygen / capacity)));
}
