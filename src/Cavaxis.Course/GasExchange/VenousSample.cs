using Cavaxis.Quantities;

namespace Cavaxis.Course.GasExchange;

/// <summary>The sample that stands for mixed venous blood, with what is known of how far its site misleads.</summary>
/// <param name="Sample">What was read.</param>
/// <param name="Site">Where.</param>
public sealed record VenousSample(OxygenSample Sample, VenousSite Site)
{
    /// <summary>Spread of upper caval about mixed venous saturation, points of saturation.</summary>
    public const double UpperCavalSpreadPoints = 4.5;

    /// <summary>How much further the site may lie from mixed venous blood than the error of the reading, points of saturation.</summary>
    public double SiteSpreadPoints => Site == VenousSite.UpperCava ? UpperCavalSpreadPoints : 0;

    /// <summary>Where the spread comes from; null for a site without one.</summary>
    public Source? SpreadSource => Site == VenousSite.UpperCava
        ? new Source("Reinhart et al. 2004, Intensive Care Med 30:1572: upper caval 7.0 (SD 4.0) points above mixed; Chawla et al. 2004, Chest 126:1891: 5.2 (SD 5.1)", Certainty.FromMemory)
        : null;

    /// <summary>Which way the site moves the recirculation that is computed with it.</summary>
    public string Bias => Site switch
    {
        VenousSite.DrainageWithSweepOff =>
            "Drainage blood with the sweep off: venous saturation itself moves while the membrane lung gives no oxygen, so the sample is right only for the moment it was drawn.",
        VenousSite.UpperCava =>
            "Upper caval sample: in critical illness it mostly stands 5 to 7 points above mixed venous blood, and recirculation then comes out too low; its own spread is counted in, the shift is not taken off.",
        _ =>
            "Pulmonary artery sample: on veno-venous support it holds returned blood, so recirculation comes out too low, down to below nought; with a cardiac output this can be taken back.",
    };
}
