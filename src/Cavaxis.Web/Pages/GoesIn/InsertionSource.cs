using System.Collections.Concurrent;
using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using Cavaxis.Planning.Insertion;
using Cavaxis.Planning.Plans;
using Cavaxis.Web.Desk;

namespace Cavaxis.Web.Pages.GoesIn;

/// <summary>Studies how wire and cannulae go in, by the service that the command line uses, once for all windows; one study after the other, for each takes all cores.</summary>
/// <param name="runner">Holds the catalogue that plans are made with.</param>
public sealed class InsertionSource(PlanRunner runner) : IInsertionSource, IDisposable
{
    private const ulong Seed = 1;
    private const int Kept = 24;

    private readonly SharedWork<InsertionResult> studies = new(Kept);
    private readonly ConcurrentDictionary<string, InsertionProgress> progress = new();
    private readonly SemaphoreSlim turn = new(1, 1);
    private readonly Lock gate = new();
    private readonly Dictionary<string, InsertionResult> latest = [];
    private readonly Queue<string> order = new();

    /// <inheritdoc/>
    public async Task<InsertionResult> StudyAsync(InsertionQuestion question, CancellationToken given)
    {
        ArgumentNullException.ThrowIfNull(question);
        string key = Key(question);
        try
        {
            InsertionResult result = await studies.GetAsync(key, stop => Study(question, key, stop), given);
            Keep(PlanKey(question.Json, question.Plan), result);
            return result;
        }
        finally
        {
            progress.TryRemove(key, out _);
        }
    }

    /// <inheritdoc/>
    public InsertionProgress? ProgressOf(InsertionQuestion question) => progress.TryGetValue(Key(question), out InsertionProgress known) ? known : null;

    /// <inheritdoc/>
    public InsertionResult? LatestOf(string json, CannulationPlan plan)
    {
        lock (gate)
        {
            return latest.GetValueOrDefault(PlanKey(json, plan));
        }
    }

    /// <summary>Stops what is being computed.</summary>
    public void Dispose()
    {
        studies.Dispose();
        turn.Dispose();
    }

    private InsertionResult Study(InsertionQuestion question, string key, CancellationToken stop)
    {
        turn.Wait(stop);
        try
        {
            return InsertionStudy.Of(
                question.File,
                runner.Catalogue,
                question.Planning,
                question.Plan,
                new InsertionOptions { Wire = question.Wire, Anatomies = question.Anatomies, Seed = Seed, Advice = question.Otherwise, Plays = true },
                new Told<InsertionProgress>(now => progress[key] = now),
                stop);
        }
        finally
        {
            turn.Release();
        }
    }

    private void Keep(string plan, InsertionResult result)
    {
        lock (gate)
        {
            if (!latest.ContainsKey(plan))
            {
                order.Enqueue(plan);
            }

            latest[plan] = result;
            while (order.Count > Kept)
            {
                latest.Remove(order.Dequeue());
            }
        }
    }

    private static string Key(InsertionQuestion question) => string.Create(
        CultureInfo.InvariantCulture, $"{PlanKey(question.Json, question.Plan)}/{question.Wire}/{question.Anatomies}/{question.Otherwise}");

    /// <summary>The rank is part of it: a study names the rank of its plan.</summary>
    private static string PlanKey(string json, CannulationPlan plan) => string.Create(
        CultureInfo.InvariantCulture,
        $"{Convert.ToHexString(SHA256.HashData(Encoding.UTF8.GetBytes(json)))}/{plan.Rank}/{PlanName.Of(plan)}/{string.Join('+', plan.Cannulae.Select(static c => c.Fit?.PlannedDepthCm.Value ?? 0))}");
}
