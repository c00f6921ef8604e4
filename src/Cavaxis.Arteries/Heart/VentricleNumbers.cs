using Cavaxis.Circulation.Parameters;
using static Cavaxis.Circulation.Parameters.CirculationParameter;

namespace Cavaxis.Arteries.Heart;

/// <summary>
/// The left ventricle and its valves with the numbers and equations of the circulation room (docs/models/circulation.md): activation by half cosines,
/// end-systolic line and exponential end-diastolic curve, orifices with inertance. mmHg, mL, s.
/// </summary>
public sealed class VentricleNumbers
{
    /// <summary>Half the density of blood over area squared: 1060 kg/m³, mmHg s² cm⁴/mL².</summary>
    private const double OrificeFactor = 1060.0 / 2 / 133.322387415 * 1e-4;

    /// <summary>Share of a beat that all time marks together may fill, as in the circulation room.</summary>
    private const double MostOfBeat = 0.92;

    private readonly double elastance;
    private readonly double zeroVolume;
    private readonly double scale;
    private readonly double exponent;
    private readonly double start;
    private readonly double endSystole;
    private readonly double relaxed;
    private readonly double period;

    /// <summary>Takes the numbers over.</summary>
    /// <param name="p">Parameters of the circulation.</param>
    /// <param name="periodS">Length of the beat, s.</param>
    public VentricleNumbers(CirculationParameters p, double periodS)
    {
        ArgumentNullException.ThrowIfNull(p);
        period = periodS;
        elastance = p[LeftVentricleElastanceMmHgPerMl];
        zeroVolume = p[LeftVentricleZeroVolumeMl];
        scale = p[LeftVentricleStiffnessMmHg];
        exponent = p[LeftVentricleStiffnessPerMl];
        double whole = p[AtrioventricularDelayS] + p[VentricularRiseS] + p[VentricularFallS];
        double shrink = Math.Min(Math.Sqrt(periodS), periodS * MostOfBeat / whole);
        start = p[AtrioventricularDelayS] * shrink;
        endSystole = start + (p[VentricularRiseS] * shrink);
        relaxed = endSystole + (p[VentricularFallS] * shrink);
        AorticOrifice = OrificeFactor / (p[AorticValveAreaCm2] * p[AorticValveAreaCm2]);
        MitralOrifice = OrificeFactor / (p[MitralAreaCm2] * p[MitralAreaCm2]);
        ValveResistance = p[ValveResistanceMmHgSPerMl];
        OutflowInertance = p[OutflowInertanceMmHgS2PerMl];
        InflowInertance = p[InflowInertanceMmHgS2PerMl];
        LeakAreaCm2 = p[AorticLeakAreaCm2];
    }

    /// <summary>Loss of the aortic valve per flow squared, mmHg s²/mL².</summary>
    public double AorticOrifice { get; }

    /// <summary>Loss of the mitral valve per flow squared, mmHg s²/mL².</summary>
    public double MitralOrifice { get; }

    /// <summary>Viscous resistance of an open valve, mmHg s/mL.</summary>
    public double ValveResistance { get; }

    /// <summary>Inertance of the open aortic valve, mmHg s²/mL.</summary>
    public double OutflowInertance { get; }

    /// <summary>Inertance of the open mitral valve, mmHg s²/mL.</summary>
    public double InflowInertance { get; }

    /// <summary>Opening that stays in the closed aortic valve, cm².</summary>
    public double LeakAreaCm2 { get; }

    /// <summary>Time in the beat at which the ventricle begins to contract, s.</summary>
    public double ContractionStartS => start;

    /// <summary>Time in the beat at which it has contracted most, s.</summary>
    public double EndSystoleS => endSystole;

    /// <summary>Time in the beat at which it has relaxed, s.</summary>
    public double RelaxedS => relaxed;

    /// <summary>Activation at a time, 0 to 1.</summary>
    /// <param name="timeS">Time, s.</param>
    /// <returns>Activation.</returns>
    public double Activation(double timeS)
    {
        double beat = timeS - (Math.Floor(timeS / period) * period);
        double rise = Math.Clamp((beat - start) / (endSystole - start), 0, 1);
        double fall = Math.Clamp((beat - endSystole) / (relaxed - endSystole), 0, 1);
        return 0.5 * (1 - Math.Cos(Math.PI * (rise + fall)));
    }

    /// <summary>Pressure of the ventricle's wall.</summary>
    /// <param name="activation">Activation, 0 to 1.</param>
    /// <param name="volumeMl">Volume, mL.</param>
    /// <returns>Pressure above that around it, mmHg.</returns>
    public double Wall(double activation, double volumeMl)
    {
        double stretch = volumeMl - zeroVolume;
        return (activation * elastance * stretch) + ((1 - activation) * scale * (Math.Exp(Math.Min(6, exponent * stretch)) - 1));
    }

    /// <summary>Slope of <see cref="Wall"/> with volume, mmHg/mL.</summary>
    /// <param name="activation">Activation, 0 to 1.</param>
    /// <param name="volumeMl">Volume, mL.</param>
    /// <returns>Elastance.</returns>
    public double WallSlope(double activation, double volumeMl)
    {
        double power = exponent * (volumeMl - zeroVolume);
        return (activation * elastance) + ((1 - activation) * (power < 6 ? scale * exponent * Math.Exp(power) : 0));
    }

    /// <summary>Flow back through a leaking closed valve, mL/s.</summary>
    /// <param name="pressureMmHg">Aortic less ventricular pressure.</param>
    /// <returns>Flow into the ventricle.</returns>
    public double Leak(double pressureMmHg) =>
        LeakAreaCm2 * Math.Max(0, pressureMmHg) / Math.Sqrt(OrificeFactor * (Math.Abs(pressureMmHg) + 1));
}
