using Cavaxis.Blood.Oxygen;
using Cavaxis.Quantities;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Course.GasExchange;

/// <summary>What was read of the oxygen in one blood sample.</summary>
public sealed record OxygenSample
{
    /// <summary>A sample.</summary>
    /// <param name="saturationPercent">Saturation, 0 to 100 %, with the error of one reading.</param>
    /// <param name="po2MmHg">Oxygen tension, 0 to 800 mmHg; null when it was not read.</param>
    /// <exception cref="InputFaultException">A value is out of range.</exception>
    public OxygenSample(Estimate saturationPercent, Estimate? po2MmHg = null)
    {
        ArgumentNullException.ThrowIfNull(saturationPercent);
        Require.InRange(saturationPercent.Value, 0, 100, nameof(saturationPercent), "Give the saturation in percent, 75 and not 0.75.");
        if (po2MmHg is not null)
        {
            Require.InRange(po2MmHg.Value, 0, 800, nameof(po2MmHg), "Give the oxygen tension in mmHg (1 kPa is 7.5 mmHg).");
        }

        (SaturationPercent, Po2MmHg) = (saturationPercent, po2MmHg);
    }

    /// <summary>Saturation, %.</summary>
    public Estimate SaturationPercent { get; }

    /// <summary>Oxygen tension, mmHg; null when it was not read.</summary>
    public Estimate? Po2MmHg { get; }

    /// <summary>
    /// Oxygen tension, mmHg: the one read, or that of the dissociation curve at the saturation read. Near full saturation the curve tells
    /// nothing, so above <see cref="HighestSaturationForTensionPercent"/> there is no answer without a reading.
    /// </summary>
    /// <param name="conditions">Conditions of the blood.</param>
    /// <returns>The tension; null when it can neither be read nor told.</returns>
    public Estimate? TensionMmHg(in BloodConditions conditions)
    {
        if (Po2MmHg is not null || SaturationPercent.Value > HighestSaturationForTensionPercent)
        {
            return Po2MmHg;
        }

        double at = SaturationPercent.Value / 100;
        double value = OxygenDissociation.Po2At(at, conditions);
        double low = OxygenDissociation.Po2At(Math.Max(0, at - 0.005), conditions);
        double high = OxygenDissociation.Po2At(at + 0.005, conditions);
        return Estimate.Normal(value, SaturationPercent.Sd * (high - low) / (Math.Min(at, 0.005) + 0.005) / 100, Origin.Calculated);
    }

    /// <summary>Above this saturation, %, the tension has to be read: the curve is flat. An assumption of this project.</summary>
    public const double HighestSaturationForTensionPercent = 95;
}
