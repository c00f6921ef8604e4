namespace Cavaxis.Imaging.Exercises;

/// <summary>Several exercises in a row: their scores, and the level of the next.</summary>
/// <param name="Scores">Level and points of each, in their order.</param>
public sealed record ExerciseSeries(IReadOnlyList<(int Level, int Points)> Scores)
{
    /// <summary>Points at which two in a row lead to the next level.</summary>
    public const int Up = 80;

    /// <summary>Points below which two in a row lead back.</summary>
    public const int Down = 40;

    /// <summary>No exercise yet.</summary>
    public static ExerciseSeries Empty { get; } = new([]);

    /// <summary>Mean points; null before the first.</summary>
    public double? Mean => Scores.Count == 0 ? null : Scores.Average(static s => s.Points);

    /// <summary>Level of the next exercise: from 1, up after two good ones of a level in a row, down after two bad ones.</summary>
    public int NextLevel
    {
        get
        {
            int level = 1;
            int good = 0;
            int bad = 0;
            foreach ((_, int points) in Scores)
            {
                good = points >= Up ? good + 1 : 0;
                bad = points < Down ? bad + 1 : 0;
                int step = good == 2 ? 1 : bad == 2 ? -1 : 0;
                level = Math.Clamp(level + step, 1, ExerciseMaker.HighestLevel);
                (good, bad) = step == 0 ? (good, bad) : (0, 0);
            }

            return level;
        }
    }

    /// <summary>The series with one more score.</summary>
    /// <param name="exercise">The exercise.</param>
    /// <param name="score">Its score.</param>
    public ExerciseSeries With(Exercise exercise, ExerciseScore score)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        ArgumentNullException.ThrowIfNull(score);
        return new ExerciseSeries([.. Scores, (exercise.Level, score.Points)]);
    }
}
