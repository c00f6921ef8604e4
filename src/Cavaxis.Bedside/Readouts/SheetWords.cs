using System.Globalization;
using Cavaxis.Bedside.Courses;
using Cavaxis.Course.Events;
using Cavaxis.Course.Observations;
using Cavaxis.Course.Patients;
using Cavaxis.Planning.Case;
using Cavaxis.Planning.Plans;
using Cavaxis.Quantities;

namespace Cavaxis.Bedside.Readouts;

/// <summary>Numbers and names as every sheet of a course writes them: unit and error with each, times in UTC.</summary>
public static class SheetWords
{
    /// <summary>What stands on every sheet.</summary>
    public const string Caution =
        "Supports trained clinicians. No certified medical device. Defers to imaging, instructions for use, local protocol and licensed practice. Check every number at the bedside before you act on it.";

    /// <summary>A moment, UTC.</summary>
    public static string Time(DateTimeOffset at) => at.UtcDateTime.ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture);

    /// <summary>A moment of the last days, UTC, without its year.</summary>
    public static string Short(DateTimeOffset at) => at.UtcDateTime.ToString("MM-dd HH:mm", CultureInfo.InvariantCulture);

    /// <summary>How long ago.</summary>
    public static string Ago(DateTimeOffset at, DateTimeOffset now) => (now - at).TotalMinutes switch
    {
        < 90 => $"{Number(Math.Max(0, Math.Round((now - at).TotalMinutes)))} min ago",
        < 48 * 60 => $"{Number(Math.Round((now - at).TotalHours))} h ago",
        _ => $"{Number(Math.Round((now - at).TotalDays))} days ago",
    };

    /// <summary>A number.</summary>
    public static string Number(double value) => value.ToString("0.###", CultureInfo.InvariantCulture).Replace('-', '−');

    /// <summary>A reading with error and unit.</summary>
    public static string Value(ObservedQuantity quantity, SeriesPoint point)
    {
        string unit = Unit(quantity);
        return $"{Number(point.Value)} ± {Number(point.Sd)}{(unit.Length == 0 ? string.Empty : " " + unit)}";
    }

    /// <summary>Where a reading comes from.</summary>
    public static string From(SeriesPoint point) => $"{ReadingOrigin.Of(point.Method).ToString().ToLowerInvariant()}{(point.IsImported ? ", file" : string.Empty)}";

    /// <summary>The unit of a quantity; nothing where it has none.</summary>
    public static string Unit(ObservedQuantity quantity) => QuantityTable.Of(quantity).Unit is var unit && unit == "1" ? string.Empty : unit;

    /// <summary>A quantity with its unit.</summary>
    public static string Named(ObservedQuantity quantity) => Unit(quantity) is { Length: > 0 } unit ? $"{QuantityTable.Of(quantity).Words} ({unit})" : QuantityTable.Of(quantity).Words;

    /// <summary>A computed number with its 90 % interval.</summary>
    public static string Value(Estimate estimate, string unit, int digits)
    {
        string Form(double x) => Math.Round(x, digits).ToString($"F{digits}", CultureInfo.InvariantCulture).Replace('-', '−');
        return $"{Form(estimate.Value)}{(unit.Length == 0 ? string.Empty : " " + unit)} (90 % interval {Form(estimate.Low)} to {Form(estimate.High)}), {estimate.Origin.ToString().ToLowerInvariant()}";
    }

    /// <summary>A probability; never told as certain.</summary>
    public static string Percent(double probability) => probability switch
    {
        < 0.01 => "under 1 %",
        > 0.99 => "over 99 %",
        _ => string.Create(CultureInfo.InvariantCulture, $"{100 * probability:F0} %"),
    };

    /// <summary>How a circuit is connected.</summary>
    public static string Configuration(RunningConfiguration configuration) => configuration switch
    {
        RunningConfiguration.VvTwoSite => "veno-venous, two sites",
        RunningConfiguration.VvDualLumen => "veno-venous, one dual-lumen cannula",
        RunningConfiguration.VaFemoral => "veno-arterial, return to a femoral artery",
        RunningConfiguration.VaAxillary => "veno-arterial, return to an axillary artery",
        RunningConfiguration.VavFemoral => "veno-arterio-venous, return to a femoral artery and a vein",
        _ => throw new ArgumentOutOfRangeException(nameof(configuration), configuration, "Not a configuration."),
    };

    /// <summary>The name of a choice in plain words.</summary>
    public static string Name<T>(T value)
        where T : struct, Enum => PlainWords.FromName(value.ToString());

    /// <summary>Where a cannula enters.</summary>
    public static string Entry(CannulaPlaced placed) => string.Join(' ', new[]
    {
        placed.Side is { } side ? PlainWords.Side(side) : "side not written down,",
        placed.Route is { } route ? PlainWords.Route(route) : "route not written down",
    });

    /// <summary>Where a tip or port lies.</summary>
    public static string Place(string what, PortPlace place) => string.Create(
        CultureInfo.InvariantCulture,
        $"{what} {Math.Abs(place.OffsetCm):0.#}{(place.SdCm is double sd ? $" ± {Number(sd)}" : string.Empty)} cm {(place.OffsetCm < 0 ? "above" : "below")} {PlainWords.FromName(place.Landmark.ToString())} ({(place.IsInferred ? "calculated" : "measured")})");

    /// <summary>What a position reading says of tip and ports.</summary>
    public static string Places(PositionRead read) => string.Join("; ", new[]
    {
        read.Tip is { } tip ? Place("tip", tip) : null,
        read.ReturnPort is { } port ? Place("return port", port) : null,
        read.FirstHole is { } hole ? Place("first hole", hole) : null,
    }.OfType<string>());

    /// <summary>A text after what it explains.</summary>
    public static string After(string? text) => string.IsNullOrWhiteSpace(text) ? string.Empty : $": {text}";
}
