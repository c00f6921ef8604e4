using System.Globalization;

namespace Cavaxis.Imaging.Exercises;

/// <summary>Judges an answer and says why the tip is not where it seemed.</summary>
public static class ExerciseJudge
{
    /// <summary>Way beyond the tolerance over which the points fall to 37 %, mm (assumption of this project).</summary>
    public const double FallMm = 8;

    private const double NearMm = 6;

    /// <summary>Judges an answer.</summary>
    /// <param name="exercise">The exercise.</param>
    /// <param name="answer">The learner's answer.</param>
    /// <returns>Points, distance along and across the cannula, and an explanation.</returns>
    public static ExerciseScore Judge(Exercise exercise, ExerciseAnswer answer)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        ArgumentNullException.ThrowIfNull(answer);
        ExerciseTruth truth = exercise.Truth;
        if (answer is not { X: double x, Y: double y })
        {
            return new ExerciseScore(truth.InView ? 0 : 100, !truth.InView, null, null, null, truth.ToleranceMm, null, [.. WithoutMark(truth)], truth);
        }

        double step = exercise.Frame.Grid.MmPerPixel;
        double dx = (x - truth.X) * step;
        double dy = (y - truth.Y) * step;
        double along = (dx * truth.AlongX) + (dy * truth.AlongY);
        double across = Math.Abs((dy * truth.AlongX) - (dx * truth.AlongY));
        double distance = Math.Sqrt((dx * dx) + (dy * dy));
        if (truth.InView && distance <= truth.ToleranceMm)
        {
            return new ExerciseScore(100, true, distance, along, across, truth.ToleranceMm, null, [.. Right(distance, truth)], truth);
        }

        Lookalike? nearest = truth.Lookalikes.MinBy(l => Away(l, x, y));
        Lookalike? taken = nearest is not null && Away(nearest, x, y) * step <= Math.Max(NearMm, truth.ToleranceMm) ? nearest : null;
        int points = truth.InView ? (int)Math.Round(100 * Math.Exp(-(distance - truth.ToleranceMm) / FallMm)) : 0;
        string place = truth.InView
            ? string.Create(CultureInfo.InvariantCulture, $"The mark lies {distance:F1} mm from the tip: {Math.Abs(along):F1} mm {(along < 0 ? "short of it" : "beyond it")} along the cannula and {across:F1} mm across.")
            : Outside(truth);
        string[] words = taken is null ? [place, "No end, hole or repeated echo of the device lies where the mark is."] : [place, Why(taken)];
        return new ExerciseScore(
            points, false, truth.InView ? distance : null, truth.InView ? along : null, truth.InView ? across : null, truth.ToleranceMm, taken, words, truth);
    }

    private static double Away(Lookalike of, double x, double y) => Math.Sqrt(((of.X - x) * (of.X - x)) + ((of.Y - y) * (of.Y - y)));

    private static IEnumerable<string> WithoutMark(ExerciseTruth truth)
    {
        if (truth.InView)
        {
            yield return string.Create(CultureInfo.InvariantCulture, $"The tip is in view, {Math.Abs(truth.OutOfPlaneMm):F1} mm beside the middle of the slice, at column {truth.X:F0}, row {truth.Y:F0}.");
            yield return "There the walls narrow and end together, and what lies below is no longer in their shadow.";
            yield break;
        }

        yield return Outside(truth);
        if (truth.Lookalikes.FirstOrDefault(static l => l.Kind is LookalikeKind.CutEnd or LookalikeKind.PictureEdge) is Lookalike end)
        {
            yield return Why(end);
        }
    }

    private static IEnumerable<string> Right(double distance, ExerciseTruth truth)
    {
        yield return string.Create(CultureInfo.InvariantCulture, $"Found: {distance:F1} mm from the middle of the opening; up to {truth.ToleranceMm:F1} mm counts, from the resolution there, the width of the opening and 1 mm for the hand.");
        if (truth.Lookalikes.Where(static l => l.Kind is LookalikeKind.IntroducerEnd or LookalikeKind.WireEnd or LookalikeKind.HoleGroup).MinBy(static l => Math.Abs(l.FromTipMm)) is Lookalike other)
        {
            yield return string.Create(CultureInfo.InvariantCulture, $"What could have been taken for it: {other.Name}, {Math.Abs(other.FromTipMm):F0} mm {(other.FromTipMm < 0 ? "beyond" : "short of")} the tip.");
        }
    }

    private static string Outside(ExerciseTruth truth) => string.Create(
        CultureInfo.InvariantCulture, $"The tip is not in view: it lies {Math.Abs(truth.OutOfPlaneMm):F1} mm beside the plane{(truth.Lookalikes.Any(static l => l.Kind == LookalikeKind.PictureEdge) ? " or beyond the edge of the picture" : string.Empty)}.");

    private static string Why(Lookalike taken)
    {
        string far = string.Create(CultureInfo.InvariantCulture, $"{Math.Abs(taken.FromTipMm):F0} mm");
        return taken.Kind switch
        {
            LookalikeKind.HoleGroup => $"The mark lies on {taken.Name}, {far} short of the tip: a hole throws nothing back, so the wall looks as if it ended there, and it goes on behind the gap.",
            LookalikeKind.IntroducerEnd => $"The mark lies on the end of the introducer, {far} beyond the cannula: the narrowing cone goes on after the cannula has ended, and the step where the wall ends is small.",
            LookalikeKind.WireEnd => $"The mark lies on the end of the wire, {far} beyond the cannula: a wire is one thin bright line with a tail below it, a cannula two lines with a dark lumen between.",
            LookalikeKind.Reverberation => "The mark lies on an echo thrown to and fro between the walls: it repeats below the lower wall, one inner diameter deeper each time, and nothing is there.",
            LookalikeKind.ShadowEdge => "The mark lies in the tissue where the shadow ends: the edge of the shadow points back along the beam to the tip, but the tip is at the wall, nearer to the probe.",
            LookalikeKind.CutEnd => $"The cannula ends in the picture where the plane cuts it slantwise and it leaves the slice, {far} short of the tip: both walls close to a rounded end like a tip. Turn or slide the probe along the cannula until the end no longer moves.",
            LookalikeKind.PictureEdge => $"The cannula leaves the picture there, {far} short of the tip: slide the probe.",
            _ => $"The mark lies where the winding in the wall ends, {far} short of the tip: the wall beyond it is plain, throws back less and casts less shadow, and it goes on.",
        };
    }
}
