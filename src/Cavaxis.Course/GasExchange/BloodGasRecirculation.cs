using System.Globalization;
using Cavaxis.Quantities;

namespace Cavaxis.Course.GasExchange;

/// <summary>
/// Recirculation from blood gases: R = (pre − venous)/(post − venous), with saturations or, because content is what mixing conserves, with oxygen
/// contents. The error of a venous sample stands above and below the line, that of haemoglobin in every content; both are carried.
/// Equations in <c>docs/models/gas-exchange-measured.md</c>.
/// </summary>
public static class BloodGasRecirculation
{
    /// <summary>Widest 90 % interval that is still called a measurement, points. An assumption of this project.</summary>
    public const double WidestIntervalPoints = 60;

    /// <summary>Standard deviations by which a number must lie outside 0 to 100 % before its readings are said to contradict each other. An assumption of this project.</summary>
    public const double ContradictionSds = 3;

    private const double Rounding = 1e-9;

    /// <summary>Where the two formulas come from.</summary>
    public static IReadOnlyList<Source> Sources { get; } =
    [
        new("Walker et al. 2009, Perfusion 24:333, figure 1: (pre − venous)/(post − venous) of saturations", Certainty.Seen),
        new("content is conserved where blood mixes: pre = R·post + (1 − R)·venous", Certainty.ClosedForm),
        new("Fieller 1954, J R Stat Soc B 16:175: interval of a ratio", Certainty.FromMemory),
    ];

    /// <summary>By saturations alone.</summary>
    /// <param name="readings">The readings.</param>
    /// <returns>Recirculation, or why it cannot be told.</returns>
    public static RecirculationMeasurement BySaturation(RecirculationReadings readings)
    {
        ArgumentNullException.ThrowIfNull(readings);
        Estimate pre = readings.Pre.SaturationPercent;
        Estimate post = readings.Post.SaturationPercent;
        Estimate venous = readings.Venous.Sample.SaturationPercent;
        double venousVariance = Square(venous.Sd) + Square(readings.Venous.SiteSpreadPoints);
        RatioWithError ratio = RatioWithError.Of(
            pre.Value - venous.Value, post.Value - venous.Value, Square(pre.Sd) + venousVariance, Square(post.Sd) + venousVariance, venousVariance);
        List<string> cautions = [readings.Venous.Bias];
        if (SaturationMethodBias.Estimate(readings, ratio.Value) is double bias)
        {
            cautions.Insert(0, string.Create(CultureInfo.InvariantCulture, $"Dissolved oxygen is left out: at this post-membrane tension saturations alone give about {bias:0.#} points too much."));
        }
        else
        {
            cautions.Insert(0, "Dissolved oxygen is left out: with a high post-membrane tension saturations alone give too much recirculation.");
        }

        return Told(RecirculationMethod.Saturation, ratio, cautions);
    }

    /// <summary>By oxygen contents.</summary>
    /// <param name="readings">The readings; haemoglobin and the post-membrane tension are needed.</param>
    /// <returns>Recirculation, or why it cannot be told.</returns>
    public static RecirculationMeasurement ByContent(RecirculationReadings readings)
    {
        ArgumentNullException.ThrowIfNull(readings);
        if (readings.HaemoglobinGPerDl is not Estimate haemoglobin)
        {
            return Untold(RecirculationMethod.Content, "haemoglobin was not read", [readings.Venous.Bias]);
        }

        Estimate? pre = readings.Pre.TensionMmHg(readings.Conditions);
        Estimate? post = readings.Post.TensionMmHg(readings.Conditions);
        Estimate? venous = readings.Venous.Sample.TensionMmHg(readings.Conditions);
        if (pre is null || post is null || venous is null)
        {
            string which = post is null ? "after the membrane lung" : pre is null ? "before the membrane lung" : "of the venous sample";
            return Untold(RecirculationMethod.Content, $"the oxygen tension {which} was not read, and near full saturation it cannot be told from the curve", [readings.Venous.Bias]);
        }

        double perPoint = readings.Constants.HuefnerMlPerG * haemoglobin.Value / 100;
        double perMmHg = readings.Constants.OxygenSolubilityMlPerDlPerMmHg;
        double saturationUp = readings.Pre.SaturationPercent.Value - readings.Venous.Sample.SaturationPercent.Value;
        double saturationWhole = readings.Post.SaturationPercent.Value - readings.Venous.Sample.SaturationPercent.Value;
        double up = (perPoint * saturationUp) + (perMmHg * (pre.Value - venous.Value));
        double whole = (perPoint * saturationWhole) + (perMmHg * (post.Value - venous.Value));

        // A tension told from its saturation errs with it, not beside it; then the two add up before they are squared.
        double preVariance = Variance(readings.Pre, pre, perPoint, perMmHg, 0);
        double postVariance = Variance(readings.Post, post, perPoint, perMmHg, 0);
        double venousVariance = Variance(readings.Venous.Sample, venous, perPoint, perMmHg, readings.Venous.SiteSpreadPoints);
        double perHaemoglobin = Square(perPoint / haemoglobin.Value * haemoglobin.Sd);
        RatioWithError ratio = RatioWithError.Of(
            up, whole,
            preVariance + venousVariance + (perHaemoglobin * Square(saturationUp)),
            postVariance + venousVariance + (perHaemoglobin * Square(saturationWhole)),
            venousVariance + (perHaemoglobin * saturationUp * saturationWhole));
        return Told(RecirculationMethod.Content, ratio, [readings.Venous.Bias]);
    }

    private static double Variance(OxygenSample sample, Estimate tension, double perPoint, double perMmHg, double spreadPoints)
    {
        double bound = perPoint * sample.SaturationPercent.Sd;
        double dissolved = perMmHg * tension.Sd;
        double reading = sample.Po2MmHg is null ? Square(bound + dissolved) : Square(bound) + Square(dissolved);
        return reading + Square(perPoint * spreadPoints);
    }

    private static RecirculationMeasurement Told(RecirculationMethod method, RatioWithError ratio, IReadOnlyList<string> cautions)
    {
        if (!(ratio.G < 1))
        {
            return Untold(method, "blood after the membrane lung cannot be told apart from the venous sample within the error of the readings", cautions);
        }

        if (100 * (ratio.High - ratio.Low) > WidestIntervalPoints)
        {
            return Untold(
                method,
                string.Create(CultureInfo.InvariantCulture, $"its 90 % interval would reach from {Shown(ratio.Low)} to {Shown(ratio.High)} %, wider than {WidestIntervalPoints:0} points"),
                cautions);
        }

        // At no recirculation one measurement in twenty comes out with its whole interval below nought: that is error, not contradiction.
        double beyond = ContradictionSds * ratio.Sd;
        if (ratio.Value + beyond < -Rounding || ratio.Value - beyond > 1 + Rounding)
        {
            return Untold(
                method,
                string.Create(CultureInfo.InvariantCulture, $"the readings contradict each other: they give {100 * ratio.Value:0} %, and blood before the membrane lung must lie between the venous sample and the blood after it"),
                cautions);
        }

        Estimate percent = Estimate.WithInterval(100 * ratio.Value, 100 * ratio.Sd, 100 * ratio.Low, 100 * ratio.High, Origin.Calculated);
        string words = string.Create(CultureInfo.InvariantCulture, $"Recirculation {percent.Value:0} % (90 % interval {percent.Low:0} to {percent.High:0} %) by {Name(method)}.");
        return new RecirculationMeasurement(method, percent, words, cautions);
    }

    private static RecirculationMeasurement Untold(RecirculationMethod method, string reason, IReadOnlyList<string> cautions) =>
        new(method, null, $"Recirculation cannot be told by {Name(method)}: {reason}.", cautions);

    private static string Name(RecirculationMethod method) => method == RecirculationMethod.Content ? "oxygen content" : "saturation";

    /// <summary>A bound that means nothing any more is not told to the digit.</summary>
    private static string Shown(double fraction) => fraction < -1 ? "below -100" : fraction > 2 ? "above 200" : (100 * fraction).ToString("0", CultureInfo.InvariantCulture);

    private static double Square(double x) => x * x;
}
