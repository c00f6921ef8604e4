using System.Globalization;
using Cavaxis.Circulation.Calibration;
using Cavaxis.Circulation.Parameters;
using Cavaxis.Circulation.Signals;
using Cavaxis.Planning.Case;
using Cavaxis.Planning.Json;
using Cavaxis.Planning.Search;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Planning.Running;

/// <summary>Fits the circulation of a case to its readings, and asks the fit what a change would do.</summary>
public static class CaseCalibration
{
    /// <summary>Fewest members of the ensemble.</summary>
    public const int FewestMembers = 8;

    /// <summary>Most members of the ensemble.</summary>
    public const int MostMembers = 2000;

    /// <summary>Fits.</summary>
    /// <param name="file">The case.</param>
    /// <param name="setup">Its numbers and readings.</param>
    /// <param name="members">Members of the ensemble.</param>
    /// <param name="seed">Key of its random numbers.</param>
    /// <param name="cancellation">Stops the search.</param>
    /// <returns>The fit, or the finding that there is none.</returns>
    /// <exception cref="InputFaultException">The case holds no reading, or one that this configuration cannot give.</exception>
    public static CalibrationResult Fit(CaseFile file, CirculationSetup setup, int members, ulong seed, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(file);
        ArgumentNullException.ThrowIfNull(setup);
        if (setup.Observations.Count == 0)
        {
            throw new InputFaultException(new InputFault(
                FaultCode.MissingField, "observations", "(nothing)", "at least one reading", "Add what was read at the bedside to the section observations."));
        }

        CalibrationOptions options = CalibrationOptions.Usual with
        {
            EnsembleSize = members,
            Seed = seed,
            HaemoglobinUnknown = file.Blood.HaemoglobinGPerDl is null,
        };
        return CirculationCalibrator.Fit(setup.Parameters, [.. setup.Observations.Select(static r => r.Observation)], options, cancellation);
    }

    /// <summary>The fit as it is told.</summary>
    /// <param name="file">The case.</param>
    /// <param name="setup">Its numbers and readings.</param>
    /// <param name="fit">The fit.</param>
    /// <param name="seed">Key of its random numbers.</param>
    /// <returns>Numbers and sentences.</returns>
    public static CalibrationAnswer Tell(CaseFile file, CirculationSetup setup, CalibrationResult fit, ulong seed)
    {
        ArgumentNullException.ThrowIfNull(file);
        ArgumentNullException.ThrowIfNull(setup);
        ArgumentNullException.ThrowIfNull(fit);
        return new CalibrationAnswer(
            CalibrationAnswer.CurrentVersion, Planner.Caution, file.Title ?? "(no title)", file.Invented, fit.Found, fit.Reason,
            CirculationRun.Patient(setup, fit.Best ?? setup.Parameters),
            [.. fit.Observations.Select(o => Reading(setup, o))],
            [.. fit.Parameters.Select(Parameter)],
            fit.NotDetermined, fit.Warnings, fit.ChiSquare, fit.MisfitProbability, fit.Converged, fit.Rounds, fit.Ensemble.Count, seed,
            fit.BestState?.Summary is CirculationSummary best ? CirculationRun.Quantities(fit.Best!, best) : []);
    }

    /// <summary>What changes would do to every member of the fit.</summary>
    /// <param name="file">The case.</param>
    /// <param name="setup">Its numbers.</param>
    /// <param name="fit">A fit that was found.</param>
    /// <param name="changes">Changes, read against the best fit.</param>
    /// <param name="cancellation">Stops between rows.</param>
    /// <returns>Bands before, after and of the difference.</returns>
    public static WhatIfAnswer Ask(
        CaseFile file, CirculationSetup setup, CalibrationResult fit, IReadOnlyList<RequestedChange> changes, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(file);
        ArgumentNullException.ThrowIfNull(setup);
        ArgumentNullException.ThrowIfNull(fit);
        ArgumentNullException.ThrowIfNull(changes);
        WhatIfResult? result = fit.Found ? WhatIf.Compute(fit, [.. changes.Select(static c => c.Change)], cancellation) : null;
        CirculationParameters patient = fit.Best ?? setup.Parameters;
        IReadOnlyList<CirculationQuantity> told = CirculationRun.Told(patient);
        WhatIfRefusal? refused = Refusal(result);
        string reason = refused switch
        {
            null => string.Empty,
            WhatIfRefusal.NoFit => fit.Reason,
            _ => string.Create(CultureInfo.InvariantCulture, $"Only {result!.Used} of {result.Members} members are left, fewer than half: bands over them would speak for the wrong patients. {string.Join(" ", result.LeftOut.Select(static l => l.Sentence))}"),
        };
        return new WhatIfAnswer(
            WhatIfAnswer.CurrentVersion, Planner.Caution, file.Title ?? "(no title)", file.Invented, refused is null, refused, reason,
            CirculationRun.Patient(setup, patient), [.. changes.Select(ChangeMade.Of)],
            [.. (result?.Quantities ?? []).Where(q => told.Contains(q.Quantity)).Select(static q => new WhatIfQuantity(
                JsonName.Of(q.Quantity.ToString()), QuantityWords.Of(q.Quantity), QuantityWords.UnitOf(q.Quantity), q.Before, q.After, q.Difference,
                q.Difference is null ? $"in at least one member {QuantityWords.NotDefined(q.Quantity)}" : null))],
            result?.Members ?? 0, result?.Used ?? 0, result?.NotSettledBefore ?? 0, result?.NotSettledAfter ?? 0, result?.OutOfRange ?? 0, [.. (result?.LeftOut ?? []).Select(static l => l.Sentence)],
            fit.MisfitProbability, fit.NotDetermined, fit.Warnings);
    }

    private static WhatIfRefusal? Refusal(WhatIfResult? result) => result is null ? WhatIfRefusal.NoFit
        : result.Found ? null
        : result.NotSettledBefore + result.NotSettledAfter >= result.OutOfRange ? WhatIfRefusal.NotSettled
        : WhatIfRefusal.OutOfRange;

    private static CalibratedReading Reading(CirculationSetup setup, FittedObservation fitted)
    {
        ObservationDefinition definition = ObservationTable.Of(fitted.Kind);
        string field = setup.Observations.FirstOrDefault(r => r.Observation.Kind == fitted.Kind)?.Field ?? string.Empty;
        return new CalibratedReading(field, definition.Words, definition.Unit, fitted.Observed, fitted.Fitted.Value, fitted.ResidualSd, fitted.TakenDirectly);
    }

    private static CalibratedParameter Parameter(FittedParameter fitted)
    {
        ParameterDefinition definition = ParameterTable.Of(fitted.Parameter);
        return new CalibratedParameter(
            JsonName.Of(definition.Name), definition.Meaning, definition.Unit, fitted.Prior, fitted.Posterior, fitted.Determined, fitted.IsDetermined);
    }
}
