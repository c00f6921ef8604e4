using Cavaxis.Circulation.Parameters;
using Cavaxis.Circulation.Signals;

namespace Cavaxis.Web.Pages.WhatIf;

/// <summary>One strip of the waveforms.</summary>
/// <param name="Signal">What is drawn.</param>
/// <param name="Words">Its name.</param>
/// <param name="Unit">Its unit.</param>
/// <param name="Scale">Factor from the unit of the signal.</param>
/// <param name="IsSaturation">True where the signal is a content that is shown as a saturation.</param>
internal sealed record WaveStrip(Signal Signal, string Words, string Unit, double Scale = 1, bool IsSaturation = false)
{
    /// <summary>The strips of a support.</summary>
    /// <param name="sense">Where the circuit returns its blood.</param>
    /// <returns>From the artery to the membrane lung.</returns>
    public static IReadOnlyList<WaveStrip> Of(SupportSense sense)
    {
        List<WaveStrip> strips =
        [
            new(Signal.ArterialPressure, "Arterial pressure", "mmHg"),
            new(Signal.RightAtrialPressure, "Central venous pressure", "mmHg"),
        ];
        strips.Add(sense == SupportSense.Arterial
            ? new WaveStrip(Signal.LeftVentricularPressure, "Left ventricular pressure", "mmHg")
            : new WaveStrip(Signal.PulmonaryArteryPressure, "Pulmonary artery pressure", "mmHg"));
        if (sense == SupportSense.Both)
        {
            strips.Add(new WaveStrip(Signal.LeftVentricularPressure, "Left ventricular pressure", "mmHg"));
        }

        if (sense != SupportSense.None)
        {
            strips.Add(new WaveStrip(Signal.CircuitFlow, "Flow of the circuit", "L/min"));
            strips.Add(new WaveStrip(Signal.InletPressure, "Pressure before the pump", "mmHg"));
            if (sense.HasVenousReturn())
            {
                strips.Add(new WaveStrip(Signal.Recirculation, "Recirculation", "%", 100));
            }

            strips.Add(new WaveStrip(Signal.PreMembraneOxygen, "Saturation before the membrane lung", "%", 1, true));
        }

        return strips;
    }

    /// <summary>Values in the unit of the strip.</summary>
    /// <param name="patient">The patient whose signal it is.</param>
    /// <param name="samples">Samples of the signal.</param>
    public double[] Values(CirculationParameters patient, ReadOnlySpan<double> samples)
    {
        if (IsSaturation)
        {
            return SaturationTrace.Percent(patient, samples);
        }

        double[] values = samples.ToArray();
        for (int i = 0; i < values.Length; i++)
        {
            values[i] *= Scale;
        }

        return values;
    }
}
