using System.Globalization;
using Cavaxis.Quantities;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Course.GasExchange;

/// <summary>
/// Takes back what a pulmonary artery sample does to recirculation on veno-venous support. With q = pump flow / output of the heart, the artery holds the
/// share f = q(1 − R) of returned blood, the formula gives R′ = (R − f)/(1 − f), and so R = (R′ + q(1 − R′))/(1 + q(1 − R′)).
/// </summary>
/// <remarks>
/// Exact for contents when all returned blood that is not drained passes the right heart. The output of the heart must not come from thermodilution
/// through a right heart catheter: on veno-venous support it read 2.1 to 2.7 L/min too high in pigs (Russ et al. 2022, ASAIO J, seen).
/// </remarks>
public static class PulmonaryArteryCorrection
{
    /// <summary>Recirculation corrected for the site of its venous sample.</summary>
    /// <param name="measured">Recirculation measured with a pulmonary artery sample.</param>
    /// <param name="pumpFlowLPerMin">Pump flow, above 0 to 15 L/min.</param>
    /// <param name="cardiacOutputLPerMin">Output of the heart, above 0 to 20 L/min.</param>
    /// <returns>The corrected measurement; the same one when it had no number.</returns>
    /// <exception cref="InputFaultException">A flow is out of range.</exception>
    public static RecirculationMeasurement Apply(RecirculationMeasurement measured, Estimate pumpFlowLPerMin, Estimate cardiacOutputLPerMin)
    {
        ArgumentNullException.ThrowIfNull(measured);
        ArgumentNullException.ThrowIfNull(pumpFlowLPerMin);
        ArgumentNullException.ThrowIfNull(cardiacOutputLPerMin);
        Require.InRange(pumpFlowLPerMin.Value, 0.01, 15, nameof(pumpFlowLPerMin), "Give the pump flow in L/min.");
        Require.InRange(cardiacOutputLPerMin.Value, 0.01, 20, nameof(cardiacOutputLPerMin), "Give the output of the heart in L/min.");
        if (measured.Percent is not Estimate percent)
        {
            return measured;
        }

        Estimate? corrected = Propagation.Through(
            [percent, pumpFlowLPerMin, cardiacOutputLPerMin],
            static x => x[2] > 0 && x[1] > 0 ? 100 * Fraction(x[0] / 100, x[1] / x[2]) : double.NaN);
        return corrected is null
            ? measured with { Percent = null, Words = "Recirculation cannot be told: the output of the heart is too uncertain to correct a pulmonary artery sample." }
            : measured with
            {
                Percent = corrected,
                Words = string.Create(CultureInfo.InvariantCulture, $"Recirculation {corrected.Value:0} % (90 % interval {corrected.Low:0} to {corrected.High:0} %), the returned blood in the pulmonary artery taken off."),
                Cautions = [.. measured.Cautions, "Corrected for the pulmonary artery sample: right only if all returned blood that is not drained passes the right heart, and only as good as the output of the heart."],
            };
    }

    /// <summary>The correction of one number.</summary>
    /// <param name="apparent">Recirculation as the formula gave it with pulmonary artery blood, a fraction, below 1.</param>
    /// <param name="flowOverOutput">Pump flow over output of the heart, above 0.</param>
    /// <returns>True recirculation, a fraction.</returns>
    public static double Fraction(double apparent, double flowOverOutput)
    {
        double missed = flowOverOutput * (1 - apparent);
        return (apparent + missed) / (1 + missed);
    }
}
