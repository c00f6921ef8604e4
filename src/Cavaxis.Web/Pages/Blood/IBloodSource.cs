namespace Cavaxis.Web.Pages.Blood;

/// <summary>Where answers about the arterial tree come from.</summary>
public interface IBloodSource
{
    /// <summary>Computes the tree of a patient on support.</summary>
    /// <param name="question">What is asked.</param>
    /// <param name="given">Ends the wait; the computation stops when the last window has gone away.</param>
    /// <returns>The answer, or one that says why there is none.</returns>
    /// <exception cref="OperationCanceledException">This window has gone away.</exception>
    Task<BloodPicture> AskAsync(BloodQuestion question, CancellationToken given);

    /// <summary>How far a computation has come.</summary>
    /// <param name="question">What was asked.</param>
    /// <returns>0 to 1; null where it does not run.</returns>
    double? ProgressOf(BloodQuestion question);
}
