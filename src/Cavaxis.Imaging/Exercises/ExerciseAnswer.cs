using Cavaxis.Imaging.Echo;

namespace Cavaxis.Imaging.Exercises;

/// <summary>What a learner says: a pixel, or that the tip is not in view.</summary>
public sealed record ExerciseAnswer
{
    private ExerciseAnswer(double? x, double? y) => (X, Y) = (x, y);

    /// <summary>The answer that the tip is not in view.</summary>
    public static ExerciseAnswer NotInView { get; } = new(null, null);

    /// <summary>Column marked, in pixels; null for "not in view".</summary>
    public double? X { get; }

    /// <summary>Row marked; null for "not in view".</summary>
    public double? Y { get; }

    /// <summary>A marked pixel.</summary>
    /// <param name="frame">The picture.</param>
    /// <param name="x">Column, 0 to the last; fractions are taken.</param>
    /// <param name="y">Row.</param>
    /// <returns>The answer.</returns>
    /// <exception cref="Quantities.Faults.InputFaultException">The pixel is outside the picture.</exception>
    public static ExerciseAnswer At(EchoFrame frame, double x, double y)
    {
        ArgumentNullException.ThrowIfNull(frame);
        const string Remedy = "Mark a point of the picture, in pixels from its upper left corner.";
        return new ExerciseAnswer(
            Quantities.Faults.Require.InRange(x, -0.5, frame.Image.Width - 0.5, "answer.x", Remedy),
            Quantities.Faults.Require.InRange(y, -0.5, frame.Image.Height - 0.5, "answer.y", Remedy));
    }
}
