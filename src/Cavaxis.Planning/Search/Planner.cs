using System.Runtime.ExceptionServices;
using Cavaxis.Anatomy.Axis;
using Cavaxis.Anatomy.Population;
using Cavaxis.Devices.Catalogue;
using Cavaxis.Planning.Case;
using Cavaxis.Planning.Configurations;
using Cavaxis.Planning.Information;
using Cavaxis.Planning.Outlook;
using Cavaxis.Planning.Plans;
using Cavaxis.Planning.Ranking;
using Cavaxis.Planning.Rules;
using Cavaxis.Planning.Steps;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Planning.Search;

/// <summary>The planning service that the command line and the workspace call: a case in, ranked and explained plans out.</summary>
public static class Planner
{
    /// <summary>The caution that stands on every plan, screen and report.</summary>
    public const string Caution =
        "Supports trained clinicians; not a certified medical device. It defers to imaging, the device's instructions for use, "
        + "local protocol and licensed practice. Numbers marked estimated come from populations, not from this patient.";

    /// <summary>Plans a case.</summary>
    /// <param name="caseFile">The case.</param>
    /// <param name="catalogue">Devices to choose from.</param>
    /// <param name="rules">The rule book.</param>
    /// <param name="options">Number of anatomies, seed, weights.</param>
    /// <param name="cancellation">Ends the computation of the circulation, which takes seconds; the rest is done in one.</param>
    /// <returns>Ranked plans with everything around them. Same input, same bytes.</returns>
    /// <exception cref="InputFaultException">An option is out of range, a weight is bad, or the case names devices that the catalogue lacks.</exception>
    /// <exception cref="OperationCanceledException">It was ended.</exception>
    public static PlanningResult Plan(
        CaseFile caseFile, DeviceCatalogue catalogue, RuleBook rules, PlanningOptions options, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(caseFile);
        ArgumentNullException.ThrowIfNull(catalogue);
        ArgumentNullException.ThrowIfNull(rules);
        ArgumentNullException.ThrowIfNull(options);
        Require.InRange(
            options.Anatomies, PlanningOptions.FewestAnatomies, PlanningOptions.MostAnatomies, "anatomies", "Ask for a number of anatomies in this range.");
        Require.InRange(
            options.PlansPerConfiguration, 1, PlanningOptions.MostPlansPerConfiguration, "plansPerConfiguration", "Ask for at least one plan of each configuration.");
        CheckDevices(caseFile, catalogue);
        CriteriaScale scale = new(rules.Criteria, caseFile.Support.Goal, options.Weights);
        PlanningContext context = new(caseFile, catalogue, rules, options);
        Searched[] searched = SearchAll(context, scale);
        NotPlanned[] notPlanned = [.. searched.Select(s => s.NotPlanned).OfType<NotPlanned>()];
        Found[] ranked = [.. WithCirculation(context, scale, [.. searched.SelectMany(s => s.Found)], cancellation)
            .OrderBy(f => f.Plan.HasStop ? 1 : 0)
            .ThenByDescending(f => f.Plan.Score)
            .ThenBy(f => f.Plan.Configuration)
            .ThenBy(f => f.Combination.Devices, StringComparer.Ordinal)];
        IReadOnlyList<bool> front = RankedFront.Of([.. ranked.Select(static f => f.Plan)], scale.Weights);
        CannulationPlan[] plans = [.. ranked.Select((f, i) => f.Plan with { Rank = i + 1, OnParetoFront = front[i] })];
        int chosen = ranked.Length == 0 ? 0 : (int)Require.InRange(
            options.ChosenRank, 1, ranked.Length, "plan", "Choose the rank of a plan in the list.");
        return new PlanningResult(
            PlanningResult.CurrentVersion,
            Caution,
            caseFile.Title ?? "(no title)",
            caseFile.Invented,
            options.Seed,
            context.Samples.Count,
            rules.Edition,
            RuleBookComparison.Loosened(rules),
            context.Reading.Picture,
            [.. AxisDimensions.All.Select(d => new AxisValue(d, context.Axis.Interval(d), AxisDimensions.UnitOf(d), PopulationTable.For(d).Source))],
            plans,
            notPlanned,
            chosen,
            ranked.Length == 0 || options.Brief ? [] : Next(context, ranked[chosen - 1]),
            ranked.Length == 0 || options.Brief ? [] : StepListBuilder.For(plans[chosen - 1], caseFile),
            context.Reading.Missing,
            [.. context.Axis.Surprises.Select(surprise => surprise.ToString()), .. CaseNotes.Of(caseFile).Select(note => $"{note.Field}: {note.Text}")],
            NotChecked);
    }

    private static IReadOnlyList<string> NotChecked { get; } =
    [
        "How wire and cannula behave in the curved anatomy, unless an insertion study of the plan is asked for; perforation in no case.",
        "Recirculation beyond the model of docs/models/recirculation.md: turning of the cannula, side holes against a wall, a valve that leaks.",
        "Where native and pump blood meet in the aorta beyond three mixed volumes (ascending, arch, descending), and how the leg below an arterial cannula is supplied, unless the arterial tree of the plan is asked for.",
        "Clotting, bleeding, infection, and drugs.",
        "The height of the pump below the patient, kinks, and movement with breathing or turning.",
        "The hole map of the device in hand, unless it was entered from its label.",
    ];

    /// <summary>
    /// Each plan on the model of the circulation, whose oxygen and recirculation take the place of their limits in the ranking. The search
    /// among devices still goes by the limits: they cost nothing and differ little between devices of one configuration.
    /// </summary>
    private static IEnumerable<Found> WithCirculation(PlanningContext context, CriteriaScale scale, Found[] found, CancellationToken cancellation)
    {
        cancellation.ThrowIfCancellationRequested();
        return !context.Options.Circulation || found.Length == 0
            ? found
            : found.Zip(
                new CirculationForecast(context, PatientSetBuilder.Of(context, cancellation), scale)
                    .Of([.. found.Select(f => new PlannedSupport(f.Plan, f.Combination, f.Search))], cancellation),
                (f, plan) => f with { Plan = plan });
    }

    /// <summary>Each search holds some hundred rows of numbers: no more searches at once than can run.</summary>
    private static readonly ParallelOptions OnePerCore = new() { MaxDegreeOfParallelism = Environment.ProcessorCount };

    /// <summary>
    /// Searches the configurations on all cores. They share nothing that changes but caches of pure functions, and each
    /// result goes to its own place: the same bytes come out on one core as on many.
    /// </summary>
    private static Searched[] SearchAll(PlanningContext context, CriteriaScale scale)
    {
        ConfigurationTable[] asked = [.. ConfigurationTable.All.Where(
            table => context.Options.Configurations.Count == 0 || context.Options.Configurations.Contains(table.Configuration))];
        Searched[] searched = new Searched[asked.Length];
        try
        {
            Parallel.For(0, searched.Length, OnePerCore, i => searched[i] = Search(context, asked[i], scale));
        }
        catch (AggregateException failures) when (failures.InnerExceptions[0] is InputFaultException fault)
        {
            ExceptionDispatchInfo.Throw(fault);
        }

        return searched;
    }

    private static Searched Search(PlanningContext context, ConfigurationTable configuration, CriteriaScale scale)
    {
        ConfigurationSearch search = new(context, configuration, scale);
        IReadOnlyList<Combination> best = search.Best(context.Options.PlansPerConfiguration);
        PlanWriter writer = new(context, configuration, search, scale);
        Found[] found = [.. best.Select(combination => new Found(writer.Write(combination), combination, search))];
        foreach (SlotOption option in best.SelectMany(combination => combination.Options))
        {
            option.Windows?.Release();
        }

        return new Searched(
            found,
            best.Count == 0 ? new NotPlanned(configuration.Configuration, search.EmptyReason) : null);
    }

    private static IReadOnlyList<MeasurementValue> Next(PlanningContext context, Found best) =>
        new NextMeasurements(context).Of(best.Combination);

    private static void CheckDevices(CaseFile caseFile, DeviceCatalogue catalogue)
    {
        List<InputFault> faults = [];
        for (int i = 0; i < caseFile.DevicesOnHand.Count; i++)
        {
            string id = caseFile.DevicesOnHand[i];
            if (catalogue.FindCannula(id) is null)
            {
                faults.Add(new InputFault(
                    FaultCode.NotFound,
                    $"devicesOnHand[{i}]",
                    InputFault.Shown(id),
                    "an identifier of the catalogue",
                    "List the catalogue with `cannula list`, or import the device first."));
            }
        }

        if (faults.Count > 0)
        {
            throw new InputFaultException(faults);
        }
    }

    private sealed record Searched(Found[] Found, NotPlanned? NotPlanned);

    private sealed record Found(CannulationPlan Plan, Combination Combination, ConfigurationSearch Search);
}
