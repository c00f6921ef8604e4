using Cavaxis.Circulation.Calibration;
using Cavaxis.Planning.Case;
using Cavaxis.Planning.Running;
using Cavaxis.Planning.Search;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Planning.Outlook;

/// <summary>Finds patients of the circulation model who agree with what the case says about the time before support.</summary>
internal static class PatientSetBuilder
{
    /// <summary>Patients in the set: one row of the solver for each plan.</summary>
    private const int Members = 8;

    private const int MostRounds = 3;

    /// <summary>Builds the set.</summary>
    /// <param name="context">The case.</param>
    /// <param name="cancellation">Ends the computation.</param>
    /// <returns>The set, or why there is none.</returns>
    /// <exception cref="OperationCanceledException">It was ended.</exception>
    public static PatientSet Of(PlanningContext context, CancellationToken cancellation = default)
    {
        try
        {
            // Support that runs already is another question; the plan starts from the patient without it.
            CaseFile before = context.Case with { Running = new RunningSection(), Observations = new ObservationSection() };
            CirculationSetup setup = CirculationFromCase.Read(before, context.Catalogue);
            CalibrationOptions options = CalibrationOptions.Usual with
            {
                EnsembleSize = Members,
                MostRounds = MostRounds,
                Seed = context.Options.Seed,
                HaemoglobinUnknown = before.Blood.HaemoglobinGPerDl is null,
            };
            CalibrationResult fitted = CirculationCalibrator.Fit(
                setup.Parameters, [.. setup.Observations.Select(static r => r.Observation)], options, cancellation);
            IReadOnlyList<string> assumed = [.. setup.Assumed.Select(static m => $"{m.Field}: {m.UsedInstead}")];
            return fitted.Ensemble.Count < 2
                ? new PatientSet([], assumed, $"the model of the circulation could not be made to agree with the case ({fitted.Reason})")
                : new PatientSet(fitted.Ensemble, assumed, string.Empty);
        }
        catch (InputFaultException fault)
        {
            return new PatientSet([], [], $"the case lies outside what the model of the circulation describes ({fault.Faults[0].Field}: {fault.Faults[0].Value}, accepted {fault.Faults[0].Accepted})");
        }
    }
}
