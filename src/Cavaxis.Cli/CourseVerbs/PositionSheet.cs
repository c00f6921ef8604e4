using System.Globalization;
using Cavaxis.Course.Patients;
using Cavaxis.Course.Positions;

namespace Cavaxis.Cli.CourseVerbs;

/// <summary>Where cannulae lie, and what changed since an image last showed them.</summary>
internal static class PositionSheet
{
    /// <summary>Of cannulae.</summary>
    /// <param name="cannulae">The cannulae.</param>
    /// <returns>What is shown.</returns>
    public static Shown Of(IReadOnlyList<LyingCannula> cannulae)
    {
        PositionReview[] reviews = [.. cannulae.Select(PositionReview.Of)];
        List<string> lines = reviews.Length == 0 ? ["No cannula lies."] : [];
        foreach (PositionReview review in reviews)
        {
            lines.Add(Line(review));
            lines.AddRange(review.Warnings.Select(static w => $"  ! {w.Text}{(w.Rule is null ? string.Empty : string.Create(CultureInfo.InvariantCulture, $" Told from {w.Rule.Limit:0.##} {w.Rule.Unit} on; {w.Rule.Source}."))}"));
        }

        lines.Add(CourseWords.Caution);
        return new Shown(new { caution = CourseWords.Caution, positions = reviews }, lines);
    }

    private static string Line(PositionReview review)
    {
        LyingCannula cannula = review.Cannula;
        string depth = cannula.DepthCm is double cm ? string.Create(CultureInfo.InvariantCulture, $"{cm:0.#} cm at the skin, measured, {CourseWords.Time(cannula.DepthAt!.Value)}") : "no depth written down";
        string turn = cannula.TurnDeg is double deg ? string.Create(CultureInfo.InvariantCulture, $", turned {deg:0.#}°") : string.Empty;
        string image = review.LastImaged is { } imaged ? $"{TimelineWords.Of(imaged.Event)} ({CourseWords.Time(imaged.OccurredAt)}, {imaged.Who})" : "no image";
        string shift = review.DepthShiftCm is double by ? string.Create(CultureInfo.InvariantCulture, $"; {by:+0.#;−0.#;0} cm since, calculated") : string.Empty;
        return $"\"{cannula.Name}\": {depth}{turn}. Last image: {image}{shift}.";
    }
}
