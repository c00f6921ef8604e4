namespace Cavaxis.Circulation.Solver;

/// <summary>The step fell below what numbers can carry: the parameters make the equations unsolvable at the tolerance.</summary>
/// <param name="timeS">When, s.</param>
internal sealed class StepTooSmallException(double timeS)
    : Exception(FormattableString.Invariant($"The step became too small at {timeS:F3} s."))
{
    /// <summary>When, s.</summary>
    public double TimeS => timeS;
}
