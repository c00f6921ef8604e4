using System.Globalization;
using Cavaxis.Bedside.Readouts;
using Cavaxis.Planning.Case;
using Cavaxis.Web.Entry;

namespace Cavaxis.Web.Pages.Run;

/// <summary>Plain words for how support runs.</summary>
internal static class RunWords
{
    /// <summary>How a circuit is connected.</summary>
    public static string Of(RunningConfiguration configuration) => WordLabel.Capital(SheetWords.Configuration(configuration));

    /// <summary>A span of time.</summary>
    public static string Span(TimeSpan span) => span.TotalHours < 48
        ? string.Create(CultureInfo.InvariantCulture, $"{Math.Floor(span.TotalHours):F0} h {span.Minutes} min")
        : string.Create(CultureInfo.InvariantCulture, $"{Math.Floor(span.TotalDays):F0} days {span.Hours} h");
}
