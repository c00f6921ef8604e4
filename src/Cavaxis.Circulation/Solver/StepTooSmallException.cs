namespace Cavaxis.Circulation.Solver;

/// <summary>The step fell below what numbers can carry: the parameters make the equations unsolvable at the tolerance.</summary>
/// <param name="timeS">When, s.</param>
/// <param name="lane">Which patient of the row.</param>
internal sealed class StepTooSmallException(double timeS, int lane)
    : Exception(FormattableString.Invariant($"The step became too small at {timeS:F3} s."))
{
    /// <summary>When, s.</summary>
    public double TimeS => timeS;

    /// <summary>Which patient of the row.</summary>
    public int Lane => lane;
}
