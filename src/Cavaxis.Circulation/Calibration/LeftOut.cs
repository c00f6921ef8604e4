namespace Cavaxis.Circulation.Calibration;

/// <summary>Members of an ensemble that were left out for one reason.</summary>
/// <param name="Stage">Where they were lost.</param>
/// <param name="Members">How many.</param>
/// <param name="What">What still moves, or the number that leaves the range.</param>
public sealed record LeftOut(LeftOutStage Stage, int Members, string What)
{
    /// <summary>One sentence for people.</summary>
    public string Sentence => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{Members} {(Members == 1 ? "member" : "members")}: ") + Stage switch
    {
        LeftOutStage.NotSettledBefore => $"no rest before the changes, {What} still changes from breath to breath.",
        LeftOutStage.NotSettledAfter => $"no rest after the changes, {What} still changes from breath to breath.",
        _ => $"{What} would leave the range of the model.",
    };
}
