using Cavaxis.Devices.Catalogue;
using Cavaxis.Devices.Wires;
using Cavaxis.Planning.Case;
using Cavaxis.Planning.Configurations;
using Cavaxis.Planning.Plans;
using Cavaxis.Planning.Steps;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Planning.Insertion;

/// <summary>
/// Brings wire and cannulae of a plan into the sampled anatomies of a patient and counts where they end. Results compare options for one patient;
/// stiffness and friction are drawn from ranges, since nobody has published them. Model: docs/models/mechanics.md.
/// </summary>
public sealed class InsertionStudy
{
    private readonly CaseFile caseFile;
    private readonly DeviceCatalogue catalogue;
    private readonly InsertionOptions options;
    private readonly InsertionPatient patient;

    /// <summary>Samples the anatomies of a patient.</summary>
    /// <param name="caseFile">The case.</param>
    /// <param name="catalogue">Devices.</param>
    /// <param name="options">Wire, anatomies, seed.</param>
    /// <exception cref="InputFaultException">The number of anatomies is out of range.</exception>
    internal InsertionStudy(CaseFile caseFile, DeviceCatalogue catalogue, InsertionOptions options)
    {
        ArgumentNullException.ThrowIfNull(caseFile);
        ArgumentNullException.ThrowIfNull(catalogue);
        Require.InRange(options.Anatomies, InsertionOptions.FewestAnatomies, InsertionOptions.MostAnatomies, "anatomies", "Ask for a number of anatomies in this range.");
        (this.caseFile, this.catalogue, this.options) = (caseFile, catalogue, options);
        patient = new InsertionPatient(caseFile, options.Anatomies, options.Seed);
    }

    /// <summary>Studies a plan.</summary>
    /// <param name="caseFile">The case.</param>
    /// <param name="catalogue">Devices.</param>
    /// <param name="planning">The planning result that the plan is from.</param>
    /// <param name="plan">The plan.</param>
    /// <param name="options">Wire, anatomies, seed.</param>
    /// <param name="progress">Told after every insertion, on any thread.</param>
    /// <param name="cancellation">Ends the computation between anatomies.</param>
    /// <returns>The result. Same input, same bytes.</returns>
    /// <exception cref="InputFaultException">The number of anatomies is out of range.</exception>
    /// <exception cref="OperationCanceledException">It was ended.</exception>
    public static InsertionResult Of(
        CaseFile caseFile,
        DeviceCatalogue catalogue,
        PlanningResult planning,
        CannulationPlan plan,
        InsertionOptions options,
        IProgress<InsertionProgress>? progress = null,
        CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(planning);
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(options);
        int each = options.Anatomies + (options.Advice ? InsertionChange.CountFor(options.Wire) * Some(options.Anatomies) : 0);
        return new InsertionStudy(caseFile, catalogue, options).Of(planning, plan, new InsertionCounter(plan.Cannulae.Count(IsStudied) * each, progress), cancellation);
    }

    /// <summary>Studies a plan; what is known of the same cannula in another plan is taken over.</summary>
    /// <param name="planning">The planning result that the plan is from.</param>
    /// <param name="plan">The plan.</param>
    /// <param name="counter">Told after every insertion.</param>
    /// <param name="cancellation">Ends the computation between anatomies.</param>
    internal InsertionResult Of(PlanningResult planning, CannulationPlan plan, InsertionCounter counter, CancellationToken cancellation)
    {
        List<CannulaInsertion> studied = [];
        List<AnatomyOutcome[]> outcomes = [];
        List<string> not = [];
        foreach (PlacedCannula placed in plan.Cannulae)
        {
            if (IsStudied(placed))
            {
                InsertionTask task = new(placed.Role, catalogue.Cannula(placed.DeviceId), placed.Side, placed.Route == AccessRoute.Jugular, placed.Fit!.PlannedDepthCm.Value * 10, options.Wire);
                AnatomyOutcome[] inEach = patient.Outcomes(task, counter, cancellation);
                IReadOnlyList<InsertionAdvice> advice = options.Advice ? Advice(task, inEach, counter, cancellation) : [];
                AnatomyInsertion middle = patient.InMiddle(task);
                outcomes.Add(inEach);
                studied.Add(InsertionSummary.Of(task, placed, patient.Middle, middle.Outcome, inEach, advice) with
                {
                    Plays = options.Plays ? InsertionPlayer.Of(task, middle, patient, inEach) : [],
                });
            }
            else
            {
                not.Add($"{PlainWords.Role(placed.Role)}, {PlainWords.Vessel(placed.Route, placed.Side)}: only veins on the way to the heart are modelled.");
            }
        }

        return new InsertionResult(
            InsertionResult.CurrentVersion,
            planning.Caution,
            planning.CaseTitle,
            planning.Invented,
            plan.Rank,
            plan.Name,
            options.Wire,
            WireStiffness.Of(options.Wire).Source.ToString(),
            options.Anatomies,
            options.Seed,
            InsertionSummary.EveryRight(outcomes),
            studied,
            not,
            PredictedPitfalls.On(StepListBuilder.For(plan, caseFile), studied),
            Assumed(options.Wire),
            NotChecked);
    }

    /// <summary>True for a cannula in a vein that leads to the heart.</summary>
    /// <param name="placed">The cannula.</param>
    public static bool IsStudied(PlacedCannula placed)
    {
        ArgumentNullException.ThrowIfNull(placed);
        return placed is { Fit: not null, Route: AccessRoute.Jugular or AccessRoute.FemoralVein };
    }

    private static IReadOnlyList<string> NotChecked { get; } =
    [
        "Perforation: no force at which a blunt wire goes through a vein or an atrium is published, so contact forces are told without a limit.",
        "The eustachian valve, trabeculae, an open oval foramen, the coronary sinus, pacing leads, filters, thrombus.",
        "Veins that collapse, breathing and the beating heart; sections are round.",
        "The hand: it pushes slowly and straight, and does not turn, withdraw and try again as a person does under imaging.",
        "A J tip: the soft end is straight here. Kinking of wire and cannula. Arterial cannulae.",
    ];

    private static IReadOnlyList<string> Assumed(WireClass wire)
    {
        WireStiffness range = WireStiffness.Of(wire);
        return
        [
            FormattableString.Invariant($"Wire of {WireStiffness.DiameterMm} mm, body {range.LowNMm2:F0} to {range.HighNMm2:F0} N mm2 ({range.Source}), soft tip of {WireStiffness.SoftTipMm / 10:F0} cm with {InsertionUnknowns.WireTip.LowNMm2:F0} to {InsertionUnknowns.WireTip.HighNMm2:F0} N mm2 (from memory, weak)."),
            "Cannula as stiff as the catalogue's range, which is an assumption: none is published.",
            FormattableString.Invariant($"Introducer {InsertionUnknowns.Introducer.LowNMm2:F0} to {InsertionUnknowns.Introducer.HighNMm2:F0} N mm2, {InsertionTask.IntroducerLeadMm / 10:F0} cm ahead of the cannula (assumption)."),
            FormattableString.Invariant($"Friction on the vein {InsertionUnknowns.Friction.Low} to {InsertionUnknowns.Friction.High} (no value for a wire on a vein is published)."),
            "The wire is fed, under imaging, as far as would reach its usual place if it ran straight there; the cannula goes to the planned depth.",
        ];
    }

    /// <summary>What is done otherwise is tried in a quarter of the anatomies, at least in twenty where there are so many.</summary>
    private static int Some(int all) => Math.Max(Math.Min(all, 20), all / 4);

    private IReadOnlyList<InsertionAdvice> Advice(InsertionTask task, AnatomyOutcome[] asPlanned, InsertionCounter counter, CancellationToken cancellation)
    {
        AnatomyOutcome[] before = asPlanned[..Some(asPlanned.Length)];
        return
        [
            .. InsertionChange.For(task)
                .Select(change => change.Told(before, patient.First(before.Length, change.Task, counter, cancellation)))
                .OrderByDescending(static advice => advice.Gain.Value),
        ];
    }
}
