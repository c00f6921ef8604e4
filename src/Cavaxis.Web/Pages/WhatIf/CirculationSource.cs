using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using Cavaxis.Circulation.Calibration;
using Cavaxis.Circulation.Parameters;
using Cavaxis.Circulation.Signals;
using Cavaxis.Circulation.Simulation;
using Cavaxis.Planning.Case;
using Cavaxis.Planning.Placing;
using Cavaxis.Planning.Plans;
using Cavaxis.Planning.Running;
using Cavaxis.Quantities.Faults;
using Cavaxis.Web.Desk;

namespace Cavaxis.Web.Pages.WhatIf;

/// <summary>Computes circulations and answers by the services that the command line uses, once for all windows.</summary>
/// <param name="runner">Holds the catalogue and the rules that plans are made with.</param>
public sealed class CirculationSource(PlanRunner runner) : ICirculationSource, IDisposable
{
    private const int Members = 40;
    private const ulong Seed = 1;
    private const double TransitionS = 24;
    private const double SpacingS = 0.01;
    private const int KeptPictures = 12;
    private const int KeptAnswers = 60;

    private readonly SharedWork<RunningPicture> pictures = new(KeptPictures);
    private readonly SharedWork<WhatIfOutcome> answers = new(KeptAnswers);

    /// <inheritdoc/>
    public Task<RunningPicture> OpenAsync(CaseFile caseFile, string json, CannulationPlan? plan, CancellationToken given)
    {
        ArgumentNullException.ThrowIfNull(caseFile);
        string hash = Convert.ToHexString(SHA256.HashData(Encoding.UTF8.GetBytes(json)));
        if (caseFile.Running.Configuration is not null)
        {
            return pictures.GetAsync(hash, stop => Fitted(hash, caseFile, stop), given);
        }

        if (plan is null)
        {
            return Task.FromResult(RunningPicture.None(hash, "No support runs, and there is no plan to connect.", false, "There is no plan yet that could be connected.", []));
        }

        string key = $"{hash}/{plan.Configuration}/{string.Join('+', plan.Cannulae.Select(static c => $"{c.DeviceId}:{c.Side}"))}";
        return pictures.GetAsync(key, stop => Connected(key, runner.Placing(caseFile, json), plan, stop), given);
    }

    /// <inheritdoc/>
    public Task<WhatIfOutcome> AskAsync(RunningPicture picture, IReadOnlyList<ParameterChange> changes, CancellationToken given)
    {
        ArgumentNullException.ThrowIfNull(picture);
        string key = string.Create(CultureInfo.InvariantCulture, $"{picture.Key}|{string.Join('|', changes.Select(static c => string.Create(CultureInfo.InvariantCulture, $"{c.Parameter}{c.Kind}{c.Amount:R}")))}");
        return answers.GetAsync(key, stop => Answer(picture, changes, stop), given);
    }

    /// <summary>Stops what is being computed.</summary>
    public void Dispose()
    {
        pictures.Dispose();
        answers.Dispose();
    }

    private RunningPicture Fitted(string key, CaseFile caseFile, CancellationToken stop)
    {
        const string Basis = "The support that runs, fitted to the readings of the case.";
        try
        {
            CirculationSetup setup = CirculationFromCase.Read(caseFile, runner.Catalogue);
            IReadOnlyList<string> assumed = Assumed(setup);
            CalibrationResult fit = CaseCalibration.Fit(caseFile, setup, Members, Seed, stop);
            if (!fit.Found)
            {
                return RunningPicture.None(key, Basis, true, fit.Reason, assumed);
            }

            RunningPicture bare = new(
                key, Basis, true, string.Empty, fit.BestState, [], null, setup.Circuit?.PumpReferenceSpeedPerMin, fit.NotDetermined, fit.Warnings, assumed, []);
            return Filled(bare, CirculationSimulator.Settle(fit.Ensemble, stop), stop);
        }
        catch (InputFaultException fault)
        {
            return RunningPicture.None(key, Basis, true, Sentence(fault), []);
        }
    }

    private static RunningPicture Connected(string key, PlacingPatient patient, CannulationPlan plan, CancellationToken stop)
    {
        string basis = $"No support runs. Plan {plan.Rank.ToString(CultureInfo.InvariantCulture)}, {plan.Name}, is connected to patients who agree with the case.";
        try
        {
            ConnectedPlan connected = patient.Connected(plan);
            if (connected.Members.Count < 2)
            {
                return RunningPicture.None(key, basis, false, Capital(connected.Reason) + ".", connected.Assumed);
            }

            stop.ThrowIfCancellationRequested();
            IReadOnlyList<SettledState> members = CirculationSimulator.Settle(connected.Members, stop);
            CirculationQuantity matters = SupportSenses.Key(SupportSenses.Of(connected.Members[0]));
            SettledState[] rest = [.. members.Where(static m => m.Settled).OrderBy(m => m.RequireSummary()[matters])];
            RunningPicture bare = new(
                key, basis, false, string.Empty, rest.Length > 0 ? rest[rest.Length / 2] : null, [], null,
                null, ["Nothing was read on this support: the spread is that of the patients who agree with the case before it."], [], connected.Assumed, []);
            return rest.Length > 0 ? Filled(bare, members, stop) : RunningPicture.None(key, basis, false, members[0].Reason, connected.Assumed);
        }
        catch (InputFaultException fault)
        {
            return RunningPicture.None(key, basis, false, Sentence(fault), []);
        }
    }

    private static RunningPicture Filled(RunningPicture bare, IReadOnlyList<SettledState> members, CancellationToken stop)
    {
        WhatIfResult present = Circulation.Calibration.WhatIf.Compute(members, [], stop);
        return present.Found
            ? bare with { Ensemble = members, Present = present, Levers = LeverSearch.Of(bare, stop) }
            : RunningPicture.None(bare.Key, bare.Basis, bare.IsFitted, $"Only {present.Used} of {present.Members} patients that fit come to rest, too few for bands. {string.Join(" ", present.LeftOut.Select(static l => l.Sentence))}", bare.Assumed);
    }

    private static WhatIfOutcome Answer(RunningPicture picture, IReadOnlyList<ParameterChange> changes, CancellationToken stop)
    {
        WhatIfResult result = Circulation.Calibration.WhatIf.Compute(picture.Ensemble, changes, stop);
        SettledState shown = picture.Shown!;
        try
        {
            CirculationParameters changed = changes.Aggregate(shown.Parameters, static (patient, change) => change.Apply(patient));
            SettledState after = CirculationSimulator.Settle(changed);
            if (!result.Found || !after.Settled)
            {
                return new WhatIfOutcome(changes, result, null, null, after.Reason);
            }

            stop.ThrowIfCancellationRequested();
            double period = after.RequireBreath().PeriodS;
            double seconds = period * Math.Ceiling(TransitionS / period);
            return new WhatIfOutcome(changes, result, after, CirculationSimulator.Run(shown, changed, seconds, SpacingS), string.Empty)
            {
                Alone = changes.Count < 2 ? new Dictionary<(CirculationParameter, CirculationQuantity), double>() : Alone(shown, changes, stop),
            };
        }
        catch (InputFaultException fault)
        {
            return new WhatIfOutcome(changes, result, null, null, Sentence(fault));
        }
        catch (NotSettledException rest)
        {
            return new WhatIfOutcome(changes, result, null, null, rest.Message);
        }
    }

    private static Dictionary<(CirculationParameter, CirculationQuantity), double> Alone(
        SettledState shown, IReadOnlyList<ParameterChange> changes, CancellationToken stop)
    {
        CirculationSummary before = shown.RequireSummary();
        IReadOnlyList<SettledState> each = CirculationSimulator.Settle([.. changes.Select(c => c.Apply(shown.Parameters))], stop);
        return changes.Zip(each).Where(static pair => pair.Second.Settled)
            .SelectMany(pair => Enum.GetValues<CirculationQuantity>().Select(q => (Key: (pair.First.Parameter, q), Value: pair.Second.RequireSummary()[q] - before[q])))
            .Where(static entry => double.IsFinite(entry.Value))
            .ToDictionary(static entry => entry.Key, static entry => entry.Value);
    }

    private static IReadOnlyList<string> Assumed(CirculationSetup setup) => [.. setup.Assumed.Select(static m => $"{string.Join(", ", m.Field.Split(", ").Select(Label))}: {m.UsedInstead}")];

    /// <summary>A field of the case as the entry calls it; other words as they are.</summary>
    private static string Label(string field) => Entry.EntryForm.FieldOf(field) is { } asked && asked.Path == field ? asked.Label : field;

    private static string Sentence(InputFaultException fault) => string.Join(" ", fault.Faults.Select(static f => $"{f.Field}: {f.Value}; accepted: {f.Accepted}. {f.Remedy}"));

    private static string Capital(string words) => words.Length == 0 ? words : char.ToUpperInvariant(words[0]) + words[1..];
}
