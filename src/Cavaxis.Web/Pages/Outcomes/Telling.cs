using System.Diagnostics;
using Cavaxis.Bedside.Programmes;

namespace Cavaxis.Web.Pages.Outcomes;

/// <summary>Passes progress on after a quiet time, and then no more often than twice a second: a word that flashes up and goes disturbs.</summary>
/// <param name="tell">Whom to tell.</param>
/// <param name="quiet">How long nothing is told.</param>
internal sealed class Telling(Action<ProgrammeProgress> tell, TimeSpan quiet) : IProgress<ProgrammeProgress>
{
    private static readonly TimeSpan Between = TimeSpan.FromMilliseconds(500);

    private readonly Stopwatch watch = Stopwatch.StartNew();
    private TimeSpan next = quiet;

    /// <inheritdoc/>
    public void Report(ProgrammeProgress value)
    {
        if (watch.Elapsed >= next)
        {
            next = watch.Elapsed + Between;
            tell(value);
        }
    }
}
