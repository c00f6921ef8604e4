using System.Globalization;
using Cavaxis.Course.RunSheets;

namespace Cavaxis.Web.Pages.Place;

/// <summary>How far a step is, in a word and a mark.</summary>
internal static class StepWords
{
    /// <summary>The word.</summary>
    public static string Of(StepState state) => state switch
    {
        StepState.Open => "Open",
        StepState.Done => "Done",
        StepState.DoneOtherwise => "Done otherwise",
        StepState.Skipped => "Passed over",
        _ => throw new ArgumentOutOfRangeException(nameof(state), state, "Not a state."),
    };

    /// <summary>The mark beside it.</summary>
    public static string Mark(StepState state) => state switch
    {
        StepState.Done => "✓",
        StepState.Open => "○",
        _ => "▲",
    };

    /// <summary>A time of day at this place.</summary>
    public static string Time(DateTimeOffset at) => at.ToLocalTime().ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture);
}
