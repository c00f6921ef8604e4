using Cavaxis.Circulation.Parameters;

namespace Cavaxis.Circulation.Signals;

/// <summary>Saturation in place of oxygen content, for people who read a waveform.</summary>
public static class SaturationWave
{
    /// <summary>Saturation of each content, by the blood of a set of parameters.</summary>
    /// <param name="parameters">The patient's numbers.</param>
    /// <param name="contentMlPerDl">Contents, mL/dL.</param>
    /// <returns>Percent, one for each content.</returns>
    public static double[] Percent(CirculationParameters parameters, ReadOnlySpan<double> contentMlPerDl)
    {
        ArgumentNullException.ThrowIfNull(parameters);
        double[] percent = new double[contentMlPerDl.Length];
        for (int i = 0; i < percent.Length; i++)
        {
            percent[i] = 100 * BloodGas.Saturation(parameters, contentMlPerDl[i]);
        }

        return percent;
    }
}
