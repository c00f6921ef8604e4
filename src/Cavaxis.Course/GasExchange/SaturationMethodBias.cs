using Cavaxis.Blood.Mixing;
using Cavaxis.Blood.Oxygen;
using Cavaxis.Quantities;

namespace Cavaxis.Course.GasExchange;

/// <summary>
/// How far saturations alone mislead. Post-membrane blood of high tension brings dissolved oxygen, which in the mixture binds to haemoglobin: the drained
/// blood is better saturated than saturations would mix to, and the saturation method reads too much recirculation.
/// </summary>
public static class SaturationMethodBias
{
    /// <summary>Mixes blood of known recirculation by its content and asks the saturation method.</summary>
    /// <param name="recirculation">True recirculation, 0 to 1.</param>
    /// <param name="venousSaturation">Saturation of venous blood, 0 to 0.98.</param>
    /// <param name="haemoglobinGPerDl">Haemoglobin, 3 to 25 g/dL.</param>
    /// <param name="postPo2MmHg">Oxygen tension after the membrane lung, mmHg.</param>
    /// <param name="conditions">Conditions of the blood.</param>
    /// <param name="k">Constants.</param>
    /// <returns>Points of recirculation that the saturation method gives too much.</returns>
    /// <exception cref="Quantities.Faults.InputFaultException">A value is out of range.</exception>
    public static double Points(
        double recirculation, double venousSaturation, double haemoglobinGPerDl, double postPo2MmHg, in BloodConditions conditions, BloodConstants k)
    {
        double pre = DrainedSaturation(recirculation, venousSaturation, haemoglobinGPerDl, postPo2MmHg, conditions, k);
        double post = OxygenDissociation.SaturationAt(postPo2MmHg, conditions);
        return 100 * (((pre - venousSaturation) / (post - venousSaturation)) - recirculation);
    }

    /// <summary>
    /// What comes out as venous saturation when drained and returned saturations and a recirculation known from elsewhere are put into the saturation
    /// formula turned round: (pre − R·post)/(1 − R).
    /// </summary>
    /// <param name="recirculation">True recirculation, 0 to below 1.</param>
    /// <param name="venousSaturation">True saturation of venous blood, 0 to 0.98.</param>
    /// <param name="haemoglobinGPerDl">Haemoglobin, 3 to 25 g/dL.</param>
    /// <param name="postPo2MmHg">Oxygen tension after the membrane lung, mmHg.</param>
    /// <param name="conditions">Conditions of the blood.</param>
    /// <param name="k">Constants.</param>
    /// <returns>Venous saturation as computed from saturations, a fraction; above the true one.</returns>
    /// <exception cref="Quantities.Faults.InputFaultException">A value is out of range.</exception>
    public static double VenousSaturationBySaturations(
        double recirculation, double venousSaturation, double haemoglobinGPerDl, double postPo2MmHg, in BloodConditions conditions, BloodConstants k)
    {
        double pre = DrainedSaturation(recirculation, venousSaturation, haemoglobinGPerDl, postPo2MmHg, conditions, k);
        return (pre - (recirculation * OxygenDissociation.SaturationAt(postPo2MmHg, conditions))) / (1 - recirculation);
    }

    /// <summary>The bias at what was read, near the recirculation that the saturation method gave; null when haemoglobin or tension is missing.</summary>
    internal static double? Estimate(RecirculationReadings readings, double bySaturation)
    {
        if (readings.HaemoglobinGPerDl is not Estimate haemoglobin || readings.Post.Po2MmHg is not Estimate tension || !double.IsFinite(bySaturation))
        {
            return null;
        }

        double venous = Math.Clamp(readings.Venous.Sample.SaturationPercent.Value / 100, 0.05, 0.98);
        if (OxygenDissociation.SaturationAt(tension.Value, readings.Conditions) <= venous)
        {
            return null;
        }

        // What the method reads rises with the true recirculation, so halving finds the true one that it would have read as it did.
        double low = 0;
        double high = 0.999;
        for (int turn = 0; turn < 40; turn++)
        {
            double middle = (low + high) / 2;
            double read = middle + (Points(middle, venous, haemoglobin.Value, tension.Value, readings.Conditions, readings.Constants) / 100);
            (low, high) = read < bySaturation ? (middle, high) : (low, middle);
        }

        return Math.Max(0, Points(low, venous, haemoglobin.Value, tension.Value, readings.Conditions, readings.Constants));
    }

    private static double DrainedSaturation(
        double recirculation, double venousSaturation, double haemoglobinGPerDl, double postPo2MmHg, in BloodConditions conditions, BloodConstants k)
    {
        double venousPo2 = OxygenDissociation.Po2At(venousSaturation, conditions);
        ReadOnlySpan<BloodFlow> streams =
        [
            new(recirculation, haemoglobinGPerDl, OxygenContent.FromPo2(haemoglobinGPerDl, postPo2MmHg, conditions, k)),
            new(1 - recirculation, haemoglobinGPerDl, OxygenContent.FromPo2(haemoglobinGPerDl, venousPo2, conditions, k)),
        ];
        return BloodMixing.Mix(streams, conditions, k).Saturation;
    }
}
