using System.Collections.Concurrent;
using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using Cavaxis.Circulation.Parameters;
using Cavaxis.Planning.Arterial;
using Cavaxis.Planning.Plans;
using Cavaxis.Quantities.Faults;
using Cavaxis.Web.Desk;
using Cavaxis.Web.Pages.WhatIf;

namespace Cavaxis.Web.Pages.Blood;

/// <summary>Computes arterial trees by the service that the command line uses, on the circulation of "What if?", once for all windows.</summary>
/// <param name="runner">Holds the catalogue that plans are made with.</param>
/// <param name="circulations">Gives the circulation of the case.</param>
public sealed class BloodSource(PlanRunner runner, ICirculationSource circulations) : IBloodSource, IDisposable
{
    private const int Kept = 40;
    private static readonly double[] FlowSteps = [0.5, 1, 1.5];
    private static readonly double[] Strengths = [0.5, 1, 2];

    private readonly SharedWork<ArteriesAnswer> answers = new(Kept);
    private readonly ConcurrentDictionary<string, double> progress = new();
    private readonly SemaphoreSlim turn = new(1, 1);

    /// <inheritdoc/>
    public async Task<BloodPicture> AskAsync(BloodQuestion question, CancellationToken given)
    {
        ArgumentNullException.ThrowIfNull(question);
        RunningPicture picture = await circulations.OpenAsync(question.File, question.Json, question.Plan, given);
        if (picture.Shown is null)
        {
            return new BloodPicture(picture, ArteriesAnswer.None(question.File, picture.Basis, picture.Reason));
        }

        string key = Key(question);
        try
        {
            return new BloodPicture(picture, await answers.GetAsync(key, stop => Compute(question, picture, key, stop), given));
        }
        finally
        {
            progress.TryRemove(key, out _);
        }
    }

    /// <inheritdoc/>
    public double? ProgressOf(BloodQuestion question) => progress.TryGetValue(Key(question), out double known) ? known : null;

    /// <summary>Stops what is being computed.</summary>
    public void Dispose()
    {
        answers.Dispose();
        turn.Dispose();
    }

    private ArteriesAnswer Compute(BloodQuestion question, RunningPicture picture, string key, CancellationToken stop)
    {
        turn.Wait(stop);
        try
        {
            CirculationParameters after = question.Changes.Aggregate(picture.Shown!.Parameters, static (patient, change) => change.Apply(patient));
            double flow = after[CirculationParameter.TargetFlowLPerMin];
            ArteriesQuestion asked = new(
                question.File, runner.Catalogue, after, picture.IsFitted ? null : question.Plan, picture.Basis, picture.Assumed);
            return ArteriesStudy.Of(
                question.Sweep ? asked with { SweepFlowsLPerMin = [.. FlowSteps.Select(s => s * flow)], SweepStrengths = Strengths } : asked, new Told<double>(now => progress[key] = now), stop);
        }
        catch (InputFaultException fault)
        {
            return ArteriesAnswer.None(question.File, picture.Basis, string.Join(" ", fault.Faults.Select(static f => $"{f.Field}: {f.Value}; accepted: {f.Accepted}. {f.Remedy}")));
        }
        finally
        {
            turn.Release();
        }
    }

    private static string Key(BloodQuestion question)
    {
        string plan = question.Plan is CannulationPlan p
            ? string.Create(CultureInfo.InvariantCulture, $"{p.Configuration}/{p.Circuit.FlowLPerMin:R}/{string.Join('+', p.Cannulae.Select(static c => $"{c.DeviceId}:{c.Side}"))}")
            : string.Empty;
        string changes = string.Join('|', question.Changes.Select(static c => string.Create(CultureInfo.InvariantCulture, $"{c.Parameter}{c.Kind}{c.Amount:R}")));
        return $"{Convert.ToHexString(SHA256.HashData(Encoding.UTF8.GetBytes(question.Json)))}/{plan}/{changes}/{question.Sweep}";
    }
}
