using System.Globalization;
using Cavaxis.Arteries.Findings;
using Cavaxis.Arteries.Tree;
using Cavaxis.Quantities;

namespace Cavaxis.Reports.ArterialReports;

/// <summary>Numbers of the arterial tree in words: one wording for drawing, command line and workspace.</summary>
public static class ArterialText
{
    /// <summary>Span over the beat below which only the mean is told.</summary>
    private const double Told = 1;

    /// <summary>What is told where the blood did not come to rest.</summary>
    public const string NotSettled = "The place where the two flows meet still moved when the computation ended: it may lie further on, and the saturations with it.";

    /// <summary>A quantity over the beat.</summary>
    /// <param name="value">The quantity.</param>
    /// <param name="format">Format of its numbers.</param>
    /// <returns>Mean, and lowest to highest where they differ by more than the format tells.</returns>
    public static string Beat(OverBeat value, string format = "F0")
    {
        string mean = Number(value.Mean, format);
        return value.Highest - value.Lowest < Told ? mean : $"{mean} ({Number(value.Lowest, format)} to {Number(value.Highest, format)} over the beat)";
    }

    /// <summary>The same without words, for a table.</summary>
    /// <param name="value">The quantity.</param>
    /// <param name="format">Format of its numbers.</param>
    /// <returns>Mean, and lowest–highest in parentheses where they differ.</returns>
    public static string Short(OverBeat value, string format = "F0") => value.Highest - value.Lowest < Told
        ? Number(value.Mean, format)
        : $"{Number(value.Mean, format)} ({Number(value.Lowest, format)}–{Number(value.Highest, format)})";

    /// <summary>An interval.</summary>
    /// <param name="estimate">The estimate.</param>
    /// <param name="format">Format of its numbers.</param>
    /// <returns>Low to high.</returns>
    public static string Interval(Estimate estimate, string format = "F0")
    {
        ArgumentNullException.ThrowIfNull(estimate);
        return $"{Number(estimate.Low, format)} to {Number(estimate.High, format)}";
    }

    /// <summary>Share of the membrane lung's blood.</summary>
    /// <param name="share">0 to 1.</param>
    /// <returns>Percent.</returns>
    public static string Percent(double share) => Number(100 * share, "F0");

    /// <summary>Where the two flows meet, as a sentence.</summary>
    /// <param name="mixing">The zone; null without pump flow.</param>
    /// <returns>The sentence.</returns>
    public static string Mixing(MixingZone? mixing) => mixing switch
    {
        null => "No blood comes from a membrane lung, so nothing meets.",
        { Place: MixingPlace.AtValve } => $"The two flows meet {mixing.PlaceInWords}.",
        _ => string.Create(
            CultureInfo.InvariantCulture,
            $"The two flows meet {mixing.PlaceInWords}: half of the blood is from each at {mixing.HalfCm.Mean:F0} cm from the aortic valve ({mixing.HalfCm.Lowest:F0} to {mixing.HalfCm.Highest:F0} over the beat; {mixing.MeanHalfCm.Low:F0} to {mixing.MeanHalfCm.High:F0} with what is uncertain), of {mixing.AortaCm:F0} cm."),
    };

    /// <summary>The heart in a sentence.</summary>
    /// <param name="heart">The reading.</param>
    /// <returns>The sentence.</returns>
    public static string Heart(HeartReading heart)
    {
        ArgumentNullException.ThrowIfNull(heart);
        return string.Create(
            CultureInfo.InvariantCulture,
            $"The heart gives {heart.NativeOutputLPerMin:F1} L/min ({heart.StrokeVolumeMl:F0} mL a beat, aortic valve open {heart.ValveOpenPercent:F0} % of it), mean pressure {heart.MeanPressureMmHg:F0} mmHg, right radial {heart.SystolicPressureMmHg:F0}/{heart.DiastolicPressureMmHg:F0} mmHg; the closed loop on the same numbers {heart.ClosedLoopNativeOutputLPerMin:F1} L/min and {heart.ClosedLoopMeanPressureMmHg:F0} mmHg.");
    }

    /// <summary>What the supply of a leg is called.</summary>
    /// <param name="supply">The finding.</param>
    /// <returns>A word.</returns>
    public static string Supply(LimbSupply supply) => supply switch
    {
        LimbSupply.Supplied => "supplied",
        LimbSupply.Borderline => "borderline",
        _ => "in want",
    };

    /// <summary>One organ in a line.</summary>
    /// <param name="organ">The organ.</param>
    /// <returns>Saturation, tension and whose blood.</returns>
    public static IReadOnlyList<string> Organ(OrganReading organ)
    {
        ArgumentNullException.ThrowIfNull(organ);
        return
        [
            Capital(organ.Title),
            $"SO2 {Short(organ.SaturationPercent)} %",
            string.Create(CultureInfo.InvariantCulture, $"PO2 {organ.Po2MmHg.Mean:F0} mmHg"),
            organ.Organ is ArterialOrgan.LegRight or ArterialOrgan.LegLeft
                ? string.Create(CultureInfo.InvariantCulture, $"{1000 * organ.FlowLPerMin:F0} mL/min, {Percent(organ.MembraneShare.Mean)} % membrane")
                : string.Create(CultureInfo.InvariantCulture, $"{organ.FlowLPerMin:F2} L/min, {Percent(organ.MembraneShare.Mean)} % membrane"),
        ];
    }

    private static string Capital(string words) => words.Length == 0 ? words : char.ToUpperInvariant(words[0]) + words[1..];

    private static string Number(double value, string format) => value.ToString(format, CultureInfo.InvariantCulture);
}
