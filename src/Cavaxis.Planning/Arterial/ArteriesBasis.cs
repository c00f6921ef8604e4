using System.Globalization;
using Cavaxis.Circulation.Calibration;
using Cavaxis.Circulation.Parameters;
using Cavaxis.Circulation.Signals;
using Cavaxis.Circulation.Simulation;
using Cavaxis.Devices.Catalogue;
using Cavaxis.Planning.Case;
using Cavaxis.Planning.Configurations;
using Cavaxis.Planning.Placing;
using Cavaxis.Planning.Plans;
using Cavaxis.Planning.Rules;
using Cavaxis.Planning.Running;
using Cavaxis.Planning.Search;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Planning.Arterial;

/// <summary>The circulation of a case that the arterial tree stands on: the support that runs, or a plan that returns to an artery.</summary>
/// <param name="Words">What it is, in words.</param>
/// <param name="Circulation">The circulation; null where there is none.</param>
/// <param name="Plan">The plan; null for support that runs.</param>
/// <param name="Assumed">What was assumed.</param>
/// <param name="Reason">Why there is none; empty where there is one.</param>
public sealed record ArteriesBasis(string Words, CirculationParameters? Circulation, CannulationPlan? Plan, IReadOnlyList<string> Assumed, string Reason)
{
    internal const string Venous = "The pump returns its blood into a vein: all arteries carry the same blood, and none holds a cannula.";

    /// <summary>Finds it.</summary>
    /// <param name="file">The case.</param>
    /// <param name="catalogue">Devices.</param>
    /// <param name="rank">Rank of a plan; null for the first that returns to an artery. Not looked at where support runs.</param>
    /// <param name="fitted">Whether the circulation of running support is fitted to the readings first.</param>
    /// <param name="cancellation">Ends the computation.</param>
    /// <returns>The basis, or one that says why there is none.</returns>
    /// <exception cref="InputFaultException">There is no plan of that rank, or the case cannot be computed.</exception>
    public static ArteriesBasis Of(CaseFile file, DeviceCatalogue catalogue, int? rank, bool fitted, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(file);
        ArgumentNullException.ThrowIfNull(catalogue);
        return file.Running.Configuration is RunningConfiguration configuration
            ? Running(file, catalogue, configuration, fitted, cancellation)
            : Planned(file, catalogue, rank, cancellation);
    }

    private static ArteriesBasis Running(CaseFile file, DeviceCatalogue catalogue, RunningConfiguration configuration, bool fitted, CancellationToken cancellation)
    {
        string words = fitted ? "The support that runs, fitted to the readings of the case." : "The support that runs, by first guesses from the case, not fitted to its readings.";
        if (configuration is RunningConfiguration.VvTwoSite or RunningConfiguration.VvDualLumen)
        {
            return new ArteriesBasis(words, null, null, [], Venous);
        }

        CirculationSetup setup = CirculationFromCase.Read(file, catalogue);
        string[] assumed = [.. setup.Assumed.Select(static m => $"{m.Field}: {m.UsedInstead}; matters for {m.Matters}")];
        if (!fitted)
        {
            return new ArteriesBasis(words, setup.Parameters, null, assumed, string.Empty);
        }

        CalibrationResult fit = CaseCalibration.Fit(file, setup, 0, 0, cancellation);
        return new ArteriesBasis(words, fit.Best, null, assumed, fit.Best is null ? $"No circulation fits the readings: {fit.Reason}" : string.Empty);
    }

    private static ArteriesBasis Planned(CaseFile file, DeviceCatalogue catalogue, int? rank, CancellationToken cancellation)
    {
        PlanningOptions options = new() { Circulation = true };
        PlanningResult planning = Planner.Plan(file, catalogue, RuleBookReader.BuiltIn, options, cancellation);
        if (rank is int asked && asked > planning.Plans.Count)
        {
            throw new InputFaultException(new InputFault(
                FaultCode.BadOption, "--plan", asked.ToString(CultureInfo.InvariantCulture), planning.Plans.Count == 0 ? "no plan was found for this case" : FormattableString.Invariant($"1 to {planning.Plans.Count}"),
                "Choose the rank of a plan in the list of `plan`."));
        }

        CannulationPlan? plan = rank is int chosen ? planning.Plans[chosen - 1] : planning.Plans.FirstOrDefault(ReturnsToArtery);
        if (plan is null || !ReturnsToArtery(plan))
        {
            return new ArteriesBasis(
                plan is null ? "No support runs." : PlanWords(plan), null, plan, [], plan is null ? "No plan for this case returns blood to an artery." : Venous);
        }

        return Connected(new PlacingPatient(file, catalogue, RuleBookReader.BuiltIn, options), plan, cancellation);
    }

    /// <summary>A plan on the middle one of the patients who agree with the case, by the opening of the aortic valve.</summary>
    /// <param name="patient">The patient.</param>
    /// <param name="plan">A plan of this patient.</param>
    /// <param name="cancellation">Ends the computation.</param>
    /// <returns>The basis, or one that says why there is none.</returns>
    internal static ArteriesBasis Connected(PlacingPatient patient, CannulationPlan plan, CancellationToken cancellation)
    {
        ConnectedPlan connected = patient.Connected(plan);
        SettledState[] rest = connected.Members.Count == 0
            ? []
            : [.. CirculationSimulator.Settle(connected.Members, cancellation).Where(static m => m.Settled).OrderBy(static m => m.RequireSummary()[CirculationQuantity.AorticValveOpenPercent])];
        return new ArteriesBasis(
            PlanWords(plan), rest.Length == 0 ? null : rest[rest.Length / 2].Parameters, plan, connected.Assumed,
            rest.Length > 0 ? string.Empty : connected.Reason.Length > 0 ? connected.Reason : "No patient who agrees with the case comes to rest on this plan.");
    }

    /// <summary>Whether a plan gives blood into an artery.</summary>
    /// <param name="plan">The plan.</param>
    /// <returns>True where one of its cannulae does.</returns>
    public static bool ReturnsToArtery(CannulationPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return plan.Cannulae.Any(static c => c.Role == CannulaRole.ArterialReturn);
    }

    private static string PlanWords(CannulationPlan plan) => string.Create(
        CultureInfo.InvariantCulture, $"No support runs. Plan {plan.Rank}, {plan.Name}, on the middle one of the patients who agree with the case.");
}
