using System.Globalization;
using Cavaxis.Planning.Case;

namespace Cavaxis.Web.Pages.Run;

/// <summary>Plain words for how support runs.</summary>
internal static class RunWords
{
    /// <summary>How a circuit is connected.</summary>
    public static string Of(RunningConfiguration configuration) => configuration switch
    {
        RunningConfiguration.VvTwoSite => "Veno-venous, two sites",
        RunningConfiguration.VvDualLumen => "Veno-venous, one dual-lumen cannula",
        RunningConfiguration.VaFemoral => "Veno-arterial, return to a femoral artery",
        RunningConfiguration.VaAxillary => "Veno-arterial, return to an axillary artery",
        RunningConfiguration.VavFemoral => "Veno-arterio-venous, return to a femoral artery and a vein",
        _ => throw new ArgumentOutOfRangeException(nameof(configuration), configuration, "Not a configuration."),
    };

    /// <summary>A span of time.</summary>
    public static string Span(TimeSpan span) => span.TotalHours < 48
        ? string.Create(CultureInfo.InvariantCulture, $"{Math.Floor(span.TotalHours):F0} h {span.Minutes} min")
        : string.Create(CultureInfo.InvariantCulture, $"{Math.Floor(span.TotalDays):F0} days {span.Hours} h");

    /// <summary>A probability; never told as certain.</summary>
    public static string Percent(double probability) => probability switch
    {
        < 0.01 => "under 1 %",
        > 0.99 => "over 99 %",
        _ => string.Create(CultureInfo.InvariantCulture, $"{100 * probability:F0} %"),
    };
}
