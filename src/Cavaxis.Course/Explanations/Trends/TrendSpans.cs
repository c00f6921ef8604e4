namespace Cavaxis.Course.Explanations.Trends;

/// <summary>How long the windows are and how old a reading may be.</summary>
/// <param name="BeforeHours">Length of the window before the change.</param>
/// <param name="NowHours">Length of the window that ends now.</param>
/// <param name="StaleHours">Age beyond which the last reading does not stand for now.</param>
public sealed record TrendSpans(double BeforeHours, double NowHours, double StaleHours)
{
    /// <summary>Twelve hours before, two hours now, stale after six hours. Common practice, no source.</summary>
    public static TrendSpans Usual { get; } = new(12, 2, 6);
}
