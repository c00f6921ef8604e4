namespace Cavaxis.Web.Pages.Share;

/// <summary>
/// Sealing and opening take 64 MiB and a core for about a second each, by design. Two at a time do it, off the thread of the page; the others wait, so that many windows
/// cannot use up the machine.
/// </summary>
public sealed class SealTurn : IDisposable
{
    private const int AtOnce = 2;

    private readonly SemaphoreSlim turn = new(AtOnce, AtOnce);

    /// <summary>Does it in turn.</summary>
    /// <typeparam name="T">What comes of it.</typeparam>
    /// <param name="work">What to do.</param>
    /// <returns>What came of it.</returns>
    public async Task<T> DoAsync<T>(Func<Task<T>> work)
    {
        await turn.WaitAsync();
        try
        {
            return await Task.Run(work);
        }
        finally
        {
            turn.Release();
        }
    }

    /// <summary>Closes it.</summary>
    public void Dispose() => turn.Dispose();
}
