using System.Collections.Immutable;

namespace Cavaxis.Arteries.Heart;

/// <summary>
/// What fills and surrounds the left ventricle over one beat, from the settled closed loop. Equal steps of the beat from its start, the end left
/// out. mmHg.
/// </summary>
/// <param name="PeriodS">Length of the beat, s.</param>
/// <param name="AtrialMmHg">Left atrial pressure.</param>
/// <param name="AroundMmHg">Pressure around the ventricle: pleura, pericardium and what the septum passes on.</param>
/// <param name="StartVolumeMl">Volume of the ventricle at the start of the beat, mL.</param>
public sealed record FillingRecord(double PeriodS, ImmutableArray<double> AtrialMmHg, ImmutableArray<double> AroundMmHg, double StartVolumeMl)
{
    /// <summary>Left atrial pressure at a time, mmHg.</summary>
    /// <param name="timeS">Time, s.</param>
    /// <returns>Pressure.</returns>
    public double Atrial(double timeS) => At(AtrialMmHg, timeS);

    /// <summary>Pressure around the ventricle at a time, mmHg.</summary>
    /// <param name="timeS">Time, s.</param>
    /// <returns>Pressure.</returns>
    public double Around(double timeS) => At(AroundMmHg, timeS);

    private double At(ImmutableArray<double> values, double timeS)
    {
        double phase = timeS / PeriodS;
        double at = (phase - Math.Floor(phase)) * values.Length;
        int i = (int)at;
        double share = at - i;
        i %= values.Length;
        return values[i] + (share * (values[(i + 1) % values.Length] - values[i]));
    }
}
