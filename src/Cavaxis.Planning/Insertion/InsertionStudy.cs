using Cavaxis.Anatomy.Conditioning;
using Cavaxis.Anatomy.Lumens;
using Cavaxis.Anatomy.Sampling;
using Cavaxis.Devices.Catalogue;
using Cavaxis.Planning.Case;
using Cavaxis.Planning.Configurations;
using Cavaxis.Planning.Needs;
using Cavaxis.Planning.Plans;
using Cavaxis.Planning.Search;
using Cavaxis.Planning.Steps;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Planning.Insertion;

/// <summary>
/// Brings wire and cannulae of a plan into the sampled anatomies of a patient and counts where they end. Results compare options for one patient;
/// stiffness and friction are drawn from ranges, since nobody has published them. Model: docs/models/mechanics.md.
/// </summary>
public static class InsertionStudy
{
    /// <summary>Studies a plan.</summary>
    /// <param name="caseFile">The case.</param>
    /// <param name="catalogue">Devices.</param>
    /// <param name="planning">The planning result that the plan is from.</param>
    /// <param name="plan">The plan.</param>
    /// <param name="options">Wire, anatomies, seed.</param>
    /// <param name="cancellation">Ends the computation between anatomies.</param>
    /// <returns>The result. Same input, same bytes.</returns>
    /// <exception cref="InputFaultException">The number of anatomies is out of range.</exception>
    /// <exception cref="OperationCanceledException">It was ended.</exception>
    public static InsertionResult Of(
        CaseFile caseFile, DeviceCatalogue catalogue, PlanningResult planning, CannulationPlan plan, InsertionOptions options, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(caseFile);
        ArgumentNullException.ThrowIfNull(catalogue);
        ArgumentNullException.ThrowIfNull(planning);
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(options);
        Require.InRange(options.Anatomies, InsertionOptions.FewestAnatomies, InsertionOptions.MostAnatomies, "anatomies", "Ask for a number of anatomies in this range.");
        AxisDistribution belief = AxisFromCase.Distribution(caseFile, new PatientReading(caseFile).Habitus);
        AxisSamples samples = AxisSampler.Draw(belief, options.Anatomies, options.Seed);
        LumenShape[] shapes = [.. Enumerable.Range(0, samples.Count).Select(i => LumenShape.OfSample(samples, i, options.Seed))];
        LumenShape middle = LumenShape.OfMedians(belief);
        List<CannulaInsertion> studied = [];
        List<string> not = [];
        foreach (PlacedCannula placed in plan.Cannulae)
        {
            if (placed is { Fit: { } fit, Route: AccessRoute.Jugular or AccessRoute.FemoralVein })
            {
                InsertionTask task = new(placed.Role, catalogue.Cannula(placed.DeviceId), placed.Side, placed.Route == AccessRoute.Jugular, fit.PlannedDepthCm.Value * 10, options.Wire);
                AnatomyOutcome[] outcomes = Run(task, shapes, options.Seed, cancellation);
                IReadOnlyList<InsertionAdvice> advice = options.Advice ? Advice(task, shapes, outcomes, options.Seed, cancellation) : [];
                studied.Add(InsertionSummary.Of(task, placed, middle, Middle(task, middle), outcomes, advice));
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
            studied,
            not,
            PredictedPitfalls.On(StepListBuilder.For(plan, caseFile), studied),
            Assumed(options.Wire),
            NotChecked);
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

    private static AnatomyOutcome Middle(InsertionTask task, LumenShape middle) => AnatomyInsertion.Of(task, middle, InsertionUnknowns.Middle(task.Wire, Stiffness(task)));

    private static AnatomyOutcome[] Run(InsertionTask task, LumenShape[] shapes, ulong seed, CancellationToken cancellation)
    {
        AnatomyOutcome[] outcomes = new AnatomyOutcome[shapes.Length];
        Parallel.For(
            0,
            shapes.Length,
            new ParallelOptions { MaxDegreeOfParallelism = Environment.ProcessorCount, CancellationToken = cancellation },
            i => outcomes[i] = AnatomyInsertion.Of(task, shapes[i], InsertionUnknowns.Draw(task.Wire, Stiffness(task), (uint)i, seed)));
        return outcomes;
    }

    private static Devices.Cannulae.StiffnessRange Stiffness(InsertionTask task) => task.Cannula.BendingStiffnessNMm2 ?? InsertionUnknowns.AnyCannula;

    private static IReadOnlyList<InsertionAdvice> Advice(
        InsertionTask task, LumenShape[] shapes, AnatomyOutcome[] asPlanned, ulong seed, CancellationToken cancellation)
    {
        LumenShape[] some = shapes[..Math.Max(Math.Min(shapes.Length, 20), shapes.Length / 4)];
        AnatomyOutcome[] before = asPlanned[..some.Length];
        return
        [
            .. InsertionChange.For(task)
                .Select(change => change.Told(before, Run(change.Task, some, seed, cancellation)))
                .OrderByDescending(static advice => advice.Gain.Value),
        ];
    }
}
