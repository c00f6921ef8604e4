using System.Globalization;
using System.Text;
using Cavaxis.Dicom.Wire;
using Cavaxis.Dicom.Worker;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Dicom.Hosting;

/// <summary>
/// Asks the worker and lives on whatever happens to it: a native crash, a hang, too much memory and words that are no answer each become
/// a typed fault, and the next request starts a new worker. One request at a time.
/// </summary>
/// <param name="limits">What a request may take.</param>
/// <param name="bindingFolder">Folder of GDCM's binding; empty for Debian's.</param>
internal sealed class WorkerHost(ReadLimits limits, string bindingFolder) : IAsyncDisposable
{
    private readonly SemaphoreSlim turn = new(1, 1);
    private WorkerProcess? worker;

    /// <summary>Number of the running worker's process; null where none runs.</summary>
    public int? ProcessId => worker?.Id;

    /// <summary>How often a worker was started.</summary>
    public int Starts { get; private set; }

    /// <summary>Asks once.</summary>
    /// <exception cref="InputFaultException">The file cannot be read, or the worker ended over it.</exception>
    public async Task<byte[]> AskAsync(WorkerRequest request, string path, int number, CancellationToken cancel)
    {
        await turn.WaitAsync(cancel).ConfigureAwait(false);
        try
        {
            worker ??= Start();
            using CancellationTokenSource late = CancellationTokenSource.CreateLinkedTokenSource(cancel);
            late.CancelAfter(limits.Time);
            try
            {
                (bool isDone, byte[] bytes) = await worker.AskAsync(request, path, number, late.Token).ConfigureAwait(false);
                return isDone ? bytes : throw Refusal(path, Encoding.UTF8.GetString(bytes));
            }
            catch (OperationCanceledException)
            {
                // Half an answer may lie in the pipe: the worker cannot be asked again.
                await EndAsync().ConfigureAwait(false);
                cancel.ThrowIfCancellationRequested();
                throw FileFault.Unreadable(path, string.Create(CultureInfo.InvariantCulture, $"(no answer within {limits.Time.TotalSeconds:0.#} s)"), "Its decoder hangs: export the image once more, uncompressed.");
            }
            catch (Exception ended) when (ended is IOException or InvalidDataException)
            {
                string how = await EndAsync().ConfigureAwait(false);
                throw FileFault.Unreadable(path, $"(GDCM ended over it: {how})", "The file is damaged, or needs more memory than is given: export the image once more, uncompressed.");
            }
        }
        finally
        {
            turn.Release();
        }
    }

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        await EndAsync().ConfigureAwait(false);
        turn.Dispose();
    }

    private static InputFaultException Refusal(string path, string reason) =>
        reason == WorkerProgram.Missing ? FileFault.Missing() : FileFault.Malformed(path, reason);

    private WorkerProcess Start()
    {
        Starts++;
        return WorkerProcess.Start(limits, bindingFolder);
    }

    private async Task<string> EndAsync()
    {
        WorkerProcess? old = worker;
        worker = null;
        return old is null ? string.Empty : await old.EndAsync().ConfigureAwait(false);
    }
}
