using Cavaxis.Blood.Demand;
using Cavaxis.Blood.Oxygen;
using Cavaxis.Quantities;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Course.GasExchange;

/// <summary>What of the pump flow reaches the body on veno-venous support, and the arterial saturation to expect from it.</summary>
public static class EffectiveSupport
{
    /// <summary>Effective flow = pump flow·(1 − R).</summary>
    /// <param name="pumpFlowLPerMin">Pump flow, 0 to 15 L/min.</param>
    /// <param name="recirculation">Recirculation as measured.</param>
    /// <returns>Effective flow, L/min; null when recirculation cannot be told.</returns>
    /// <exception cref="InputFaultException">The flow is out of range.</exception>
    public static Estimate? FlowLPerMin(Estimate pumpFlowLPerMin, RecirculationMeasurement recirculation)
    {
        ArgumentNullException.ThrowIfNull(pumpFlowLPerMin);
        ArgumentNullException.ThrowIfNull(recirculation);
        Require.InRange(pumpFlowLPerMin.Value, 0, 15, nameof(pumpFlowLPerMin), "Give the pump flow in L/min.");
        return recirculation.Fraction is Estimate fraction
            ? Propagation.Through([pumpFlowLPerMin, fraction], static x => x[0] * (1 - Math.Clamp(x[1], 0, 1)))
            : null;
    }

    /// <summary>Effective flow over the output of the heart.</summary>
    /// <param name="effectiveFlowLPerMin">Effective flow.</param>
    /// <param name="cardiacOutputLPerMin">Output of the heart, above 0 to 20 L/min.</param>
    /// <returns>The ratio; null when the output is too uncertain to divide by.</returns>
    /// <exception cref="InputFaultException">The output is out of range.</exception>
    public static Estimate? FlowOverOutput(Estimate effectiveFlowLPerMin, Estimate cardiacOutputLPerMin)
    {
        ArgumentNullException.ThrowIfNull(effectiveFlowLPerMin);
        CheckOutput(cardiacOutputLPerMin);
        return Propagation.Through([effectiveFlowLPerMin, cardiacOutputLPerMin], static x => x[1] > 0 ? x[0] / x[1] : double.NaN);
    }

    /// <summary>Arterial saturation that oxygen balance gives; beside the observed one it tells whether the numbers fit together.</summary>
    /// <param name="effectiveFlowLPerMin">Effective flow; more than the output of the heart cannot be and counts as all of it.</param>
    /// <param name="cardiacOutputLPerMin">Output of the heart, above 0 to 20 L/min.</param>
    /// <param name="haemoglobinGPerDl">Haemoglobin, 3 to 25 g/dL.</param>
    /// <param name="postPo2MmHg">Oxygen tension after the membrane lung, 20 to 800 mmHg.</param>
    /// <param name="consumptionMlPerMin">Oxygen consumption, above 0.</param>
    /// <param name="nativeUptakeMlPerMin">Oxygen that the patient's own lung takes up; nought if it does nothing.</param>
    /// <returns>Saturation in %; null when no steady state fits the readings, as when consumption cannot be met.</returns>
    /// <exception cref="InputFaultException">A value is out of range.</exception>
    public static Estimate? ExpectedSaturationPercent(
        Estimate effectiveFlowLPerMin, Estimate cardiacOutputLPerMin, Estimate haemoglobinGPerDl, Estimate postPo2MmHg, Estimate consumptionMlPerMin, Estimate nativeUptakeMlPerMin)
    {
        ArgumentNullException.ThrowIfNull(effectiveFlowLPerMin);
        ArgumentNullException.ThrowIfNull(haemoglobinGPerDl);
        ArgumentNullException.ThrowIfNull(postPo2MmHg);
        ArgumentNullException.ThrowIfNull(consumptionMlPerMin);
        ArgumentNullException.ThrowIfNull(nativeUptakeMlPerMin);
        CheckOutput(cardiacOutputLPerMin);
        Require.InRange(haemoglobinGPerDl.Value, 3, 25, nameof(haemoglobinGPerDl), "Give haemoglobin in g/dL.");
        Require.InRange(postPo2MmHg.Value, 20, 800, nameof(postPo2MmHg), "Give the oxygen tension in mmHg.");
        Require.InRange(consumptionMlPerMin.Value, 1, 2000, nameof(consumptionMlPerMin), "Give the oxygen consumption in mL/min.");
        return Propagation.Through(
            [effectiveFlowLPerMin, cardiacOutputLPerMin, haemoglobinGPerDl, postPo2MmHg, consumptionMlPerMin, nativeUptakeMlPerMin],
            static x => Expected(x[0], x[1], x[2], x[3], x[4], Math.Max(0, x[5])));
    }

    private static double Expected(double effective, double output, double haemoglobin, double postPo2, double consumption, double native)
    {
        if (!(output > 0.01 && haemoglobin is > 1 and < 25 && postPo2 is > 10 and < 3000 && consumption is > 0.01 and <= 2000 && native < consumption))
        {
            return double.NaN;
        }

        double flow = Math.Clamp(effective, 0.001, output);
        double post = OxygenContent.FromPo2(haemoglobin, postPo2, BloodConditions.Standard, BloodConstants.Default);
        OxygenBalance balance = VenoVenousSupport.Balance(flow, output, post, consumption, native);
        return balance.DemandIsMet && balance.ArterialContentMlPerDl >= 0
            ? 100 * OxygenContent.SaturationAt(balance.ArterialContentMlPerDl, haemoglobin, BloodConditions.Standard, BloodConstants.Default)
            : double.NaN;
    }

    private static void CheckOutput(Estimate cardiacOutputLPerMin)
    {
        ArgumentNullException.ThrowIfNull(cardiacOutputLPerMin);
        Require.InRange(cardiacOutputLPerMin.Value, 0.1, 20, nameof(cardiacOutputLPerMin), "Give the output of the heart in L/min.");
    }
}
