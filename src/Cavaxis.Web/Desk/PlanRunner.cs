using System.Collections.Concurrent;
using System.Security.Cryptography;
using System.Text;
using Cavaxis.Devices.Catalogue;
using Cavaxis.Planning.Case;
using Cavaxis.Planning.Placing;
using Cavaxis.Planning.Plans;
using Cavaxis.Planning.Rules;
using Cavaxis.Planning.Search;

namespace Cavaxis.Web.Desk;

/// <summary>
/// Plans cases for every window. The same case is planned once however many windows show it; quick plans and plans with the
/// circulation wait in two rows, so that a slow one never holds up a quick one.
/// </summary>
public sealed class PlanRunner : IDisposable
{
    private const int Kept = 48;

    /// <summary>A prepared patient holds some ten thousand anatomies: a few are enough for the windows that are open.</summary>
    private const int KeptPatients = 6;

    private readonly ConcurrentDictionary<string, PlanningResult> known = new();
    private readonly ConcurrentQueue<string> order = new();
    private readonly List<KeyValuePair<string, PlacingPatient>> patients = [];
    private readonly SemaphoreSlim quick = new(1, 1);
    private readonly SemaphoreSlim whole = new(1, 1);

    /// <summary>The catalogue that plans are made with.</summary>
    public DeviceCatalogue Catalogue { get; } = DeviceCatalogue.BuiltIn;

    /// <summary>The rule book that plans are made with.</summary>
    public RuleBook Rules { get; } = RuleBookReader.BuiltIn;

    /// <summary>Plans a case.</summary>
    /// <param name="caseFile">The case.</param>
    /// <param name="json">Its text, which tells it apart from others.</param>
    /// <param name="rank">Rank of the plan that steps and next measurements speak of.</param>
    /// <param name="circulation">Whether the circulation of each plan is computed.</param>
    /// <param name="given">Ends the wait for a turn and the computation; another window that waits for the same case computes it in its own turn.</param>
    /// <returns>The result.</returns>
    /// <exception cref="Quantities.Faults.InputFaultException">The case names devices that the catalogue lacks, or there is no plan of that rank.</exception>
    /// <exception cref="OperationCanceledException">Nobody waits for it any more.</exception>
    public async Task<PlanningResult> PlanAsync(CaseFile caseFile, string json, int rank, bool circulation, CancellationToken given)
    {
        string key = Key(json, rank, circulation);
        if (known.TryGetValue(key, out PlanningResult? there))
        {
            return there;
        }

        if (rank > 1)
        {
            // The ranking is the same whichever plan is chosen; only steps and next measurements speak of another.
            PlanningResult first = await PlanAsync(caseFile, json, 1, circulation, given);
            PlanningResult chosen = await Task.Run(() => Placing(caseFile, json).Choose(first, rank), given);
            Keep(key, chosen);
            return chosen;
        }

        SemaphoreSlim row = circulation ? whole : quick;
        await row.WaitAsync(given);
        try
        {
            if (known.TryGetValue(key, out there))
            {
                return there;
            }

            PlanningOptions options = new() { ChosenRank = rank, Circulation = circulation };
            PlanningResult result = await Task.Run(() => Planner.Plan(caseFile, Catalogue, Rules, options, given), CancellationToken.None);
            Keep(key, result);
            return result;
        }
        finally
        {
            row.Release();
        }
    }

    /// <summary>The patient of a case, prepared for moving the cannulae of its plans.</summary>
    /// <param name="caseFile">The case.</param>
    /// <param name="json">Its text, which tells it apart from others.</param>
    /// <returns>The patient; the same for every window that shows the case.</returns>
    public PlacingPatient Placing(CaseFile caseFile, string json)
    {
        lock (patients)
        {
            string key = Key(json, 0, false);
            int at = patients.FindIndex(p => p.Key == key);
            KeyValuePair<string, PlacingPatient> patient = at >= 0
                ? patients[at]
                : KeyValuePair.Create(key, new PlacingPatient(caseFile, Catalogue, Rules, new PlanningOptions()));
            if (at >= 0)
            {
                patients.RemoveAt(at);
            }

            patients.Insert(0, patient);
            if (patients.Count > KeptPatients)
            {
                patients.RemoveAt(KeptPatients);
            }

            return patient.Value;
        }
    }

    /// <summary>A plan that has been made already.</summary>
    /// <param name="json">Text of the case.</param>
    /// <param name="rank">Rank of the chosen plan.</param>
    /// <param name="circulation">Whether with the circulation.</param>
    /// <returns>The result; null where it would have to be computed.</returns>
    public PlanningResult? Known(string json, int rank, bool circulation) => known.GetValueOrDefault(Key(json, rank, circulation));

    /// <summary>Frees the rows.</summary>
    public void Dispose()
    {
        quick.Dispose();
        whole.Dispose();
    }

    private void Keep(string key, PlanningResult result)
    {
        if (known.TryAdd(key, result))
        {
            order.Enqueue(key);
        }

        while (order.Count > Kept && order.TryDequeue(out string? oldest))
        {
            known.TryRemove(oldest, out _);
        }
    }

    private static string Key(string json, int rank, bool circulation) => string.Create(
        System.Globalization.CultureInfo.InvariantCulture, $"{Convert.ToHexString(SHA256.HashData(Encoding.UTF8.GetBytes(json)))}/{rank}/{circulation}");
}
