using Cavaxis.Circulation.Equations;
using Cavaxis.Circulation.Lanes;
using Cavaxis.Circulation.Parameters;

namespace Cavaxis.Circulation.Signals;

/// <summary>Saturation over time, as a monitor shows it, from the contents that the signals carry.</summary>
public static class SaturationTrace
{
    /// <summary>Saturation at each content of this patient's blood, by the same dissociation curve as the equations.</summary>
    /// <param name="patient">The patient whose blood it is.</param>
    /// <param name="contentMlPerDl">Oxygen contents, mL/dL.</param>
    /// <returns>Saturations, %.</returns>
    public static double[] Percent(CirculationParameters patient, ReadOnlySpan<double> contentMlPerDl)
    {
        ArgumentNullException.ThrowIfNull(patient);
        GasExchange<OneLane> gas = new(new ModelConstants<OneLane>([patient]));
        double haemoglobin = patient[CirculationParameter.HaemoglobinGPerDl];
        double[] percent = new double[contentMlPerDl.Length];
        for (int i = 0; i < percent.Length; i++)
        {
            percent[i] = 100 * BloodGas.Saturation(gas, haemoglobin, contentMlPerDl[i]);
        }

        return percent;
    }
}
