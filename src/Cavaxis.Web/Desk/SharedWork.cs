namespace Cavaxis.Web.Desk;

/// <summary>
/// Work that several windows may want at once: it is done once for all of them, kept, and stopped when the last of them has gone away.
/// </summary>
/// <typeparam name="T">What comes out.</typeparam>
/// <param name="kept">How many results are kept.</param>
internal sealed class SharedWork<T>(int kept) : IDisposable
{
    private readonly Lock gate = new();
    private readonly Dictionary<string, Job> jobs = [];
    private readonly Queue<string> order = new();

    /// <summary>The result of a key, computed where nobody has asked for it yet.</summary>
    /// <param name="key">What tells one work from another.</param>
    /// <param name="work">The work; it sees a token that ends when nobody waits for it any more.</param>
    /// <param name="given">Ends the wait of this window.</param>
    /// <returns>The result.</returns>
    /// <exception cref="OperationCanceledException">This window has gone away.</exception>
    public async Task<T> GetAsync(string key, Func<CancellationToken, T> work, CancellationToken given)
    {
        given.ThrowIfCancellationRequested();
        Job job;
        lock (gate)
        {
            if (!jobs.TryGetValue(key, out Job? there) || there.Task.IsFaulted || there.Task.IsCanceled)
            {
                CancellationTokenSource stop = new();
                there = new Job(Task.Run(() => work(stop.Token), CancellationToken.None), stop);
                jobs[key] = there;
                order.Enqueue(key);
                DropOldest();
            }

            job = there;
            job.Enter();
        }

        try
        {
            return await job.Task.WaitAsync(given);
        }
        finally
        {
            Leave(key, job);
        }
    }

    /// <summary>How many works are kept or running.</summary>
    public int Count
    {
        get
        {
            lock (gate)
            {
                return jobs.Count;
            }
        }
    }

    /// <summary>Stops all work.</summary>
    public void Dispose()
    {
        lock (gate)
        {
            foreach (Job job in jobs.Values)
            {
                job.Stop.Cancel();
            }
        }
    }

    private void Leave(string key, Job job)
    {
        lock (gate)
        {
            if (job.IsLeft() && !job.Task.IsCompleted)
            {
                job.Stop.Cancel();
                if (jobs.GetValueOrDefault(key) == job)
                {
                    jobs.Remove(key);
                }
            }
        }
    }

    private void DropOldest()
    {
        // One look at each: what is still busy goes to the end of the row and is dropped later.
        for (int looks = order.Count; looks > 0 && order.Count > kept; looks--)
        {
            string oldest = order.Dequeue();
            if (jobs.TryGetValue(oldest, out Job? job) && job is { HasWaiting: true } or { Task.IsCompleted: false })
            {
                order.Enqueue(oldest);
            }
            else
            {
                jobs.Remove(oldest);
            }
        }
    }

    private sealed class Job(Task<T> task, CancellationTokenSource stop)
    {
        private int waiting;

        public Task<T> Task { get; } = task;

        public CancellationTokenSource Stop { get; } = stop;

        public bool HasWaiting => waiting > 0;

        public void Enter() => waiting++;

        /// <summary>One goes away; true where it was the last.</summary>
        public bool IsLeft() => --waiting == 0;
    }
}
