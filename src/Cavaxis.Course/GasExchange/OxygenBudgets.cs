using System.Globalization;
using Cavaxis.Blood.Oxygen;
using Cavaxis.Quantities;

namespace Cavaxis.Course.GasExchange;

/// <summary>Holds oxygen delivery against consumption. In a steady state consumption is what both lungs take up (Fick).</summary>
public static class OxygenBudgets
{
    /// <summary>Delivery over consumption below which consumption is taken to depend on delivery.</summary>
    public const double CriticalRatio = 2;

    /// <summary>Delivery over consumption at rest in health.</summary>
    public const double RestingRatio = 5;

    /// <summary>Where the two ratios come from.</summary>
    public static IReadOnlyList<Source> Sources { get; } =
    [
        new("Bartlett 2016, J Intensive Care Med, 10.1177/0885066616641383: normal 5:1, critical about 2:1", Certainty.FromMemory),
        new("Lieberman et al. 2000, Anesthesiology 92:407: 7.3 (SD 1.4) mL/kg/min delivered for 3.2 consumed, 2.3:1, without sign of want in eight healthy people at rest", Certainty.Derived),
    ];

    /// <summary>The budget of the readings.</summary>
    /// <param name="readings">The readings.</param>
    /// <returns>Delivery, consumption, their ratio and extraction, each with its error; null when the readings give no delivery.</returns>
    public static OxygenBudget? Of(OxygenBudgetReadings readings)
    {
        ArgumentNullException.ThrowIfNull(readings);
        Estimate none = Estimate.Normal(0, 0, Origin.Estimated);
        bool known = readings.NativeTransferMlPerMin is not null;

        // A tension that was not read adds at most a third of a millilitre below full saturation; its sample then says so by the curve.
        Estimate tension = readings.Arterial.TensionMmHg(BloodConditions.Standard) ?? Estimate.Normal(100, 30, Origin.Estimated);
        Estimate[] inputs = [readings.HaemoglobinGPerDl, readings.SystemicFlowLPerMin, readings.Arterial.SaturationPercent, tension, readings.MembraneTransferMlPerMin, readings.NativeTransferMlPerMin ?? none];
        Estimate? delivery = Propagation.Through(inputs, static x => Delivery(x));
        Estimate? consumption = Propagation.Through(inputs, static x => x[4] + x[5]);
        if (delivery is null || consumption is null)
        {
            return null;
        }

        Estimate? ratio = Propagation.Through(inputs, static x => x[4] + x[5] > 0 ? Delivery(x) / (x[4] + x[5]) : double.NaN);
        Estimate? extraction = Propagation.Through(inputs, static x => Delivery(x) > 0 ? 100 * (x[4] + x[5]) / Delivery(x) : double.NaN);
        return new OxygenBudget(delivery, consumption, ratio, extraction, known, Words(ratio, known));
    }

    private static string Words(Estimate? ratio, bool known)
    {
        string limit = known ? string.Empty : " The uptake of the patient's own lung is not known, so consumption is at least this and the ratio at most this.";
        if (ratio is null)
        {
            return "Delivery over consumption cannot be told: consumption is too uncertain." + limit;
        }

        string where = ratio.Value < CriticalRatio
            ? "below the ratio taken as critical"
            : ratio.Low < CriticalRatio ? "above the ratio taken as critical, which lies within its error" : "above the ratio taken as critical";
        return string.Create(
            CultureInfo.InvariantCulture,
            $"Delivery over consumption {ratio.Value:0.0} (90 % interval {ratio.Low:0.0} to {ratio.High:0.0}): {where}, {CriticalRatio:0}:1; about {RestingRatio:0}:1 at rest in health.{limit}");
    }

    private static double Delivery(double[] x) =>
        10 * x[1] * ((BloodConstants.Default.HuefnerMlPerG * x[0] * Math.Min(1, x[2] / 100)) + (BloodConstants.Default.OxygenSolubilityMlPerDlPerMmHg * Math.Max(0, x[3])));
}
