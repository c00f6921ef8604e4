using Cavaxis.Planning.Case;
using Cavaxis.Planning.Configurations;
using Cavaxis.Planning.Plans;
using static Cavaxis.Planning.Steps.ImagingView;

namespace Cavaxis.Planning.Steps;

/// <summary>
/// Writes the steps of a plan with the view that can show each landmark, the views that cannot, and the hard stops. Common
/// practice unless a source is named in docs/models/planning.md.
/// </summary>
public static class StepListBuilder
{
    /// <summary>The step list of a plan.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="caseFile">The case, for what is on hand.</param>
    /// <returns>Numbered steps.</returns>
    public static IReadOnlyList<ProcedureStep> For(CannulationPlan plan, CaseFile caseFile)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(caseFile);
        Draft draft = new(caseFile.Resources);
        Prepare(draft, plan);
        foreach (PlacedCannula cannula in plan.Cannulae.OrderBy(Order))
        {
            draft.About(cannula.Role);
            string vessel = PlainWords.Vessel(cannula.Route, cannula.Side);
            switch (cannula.Role)
            {
                case CannulaRole.Drainage:
                    Vein(draft, vessel);
                    FemoralDrainage(draft, cannula);
                    break;
                case CannulaRole.VenousReturn:
                    Vein(draft, vessel);
                    VenousReturn(draft, cannula);
                    break;
                case CannulaRole.DualLumen:
                    Vein(draft, vessel);
                    DualLumen(draft, cannula);
                    break;
                case CannulaRole.ArterialReturn:
                    Artery(draft, cannula, vessel);
                    break;
                case CannulaRole.DistalPerfusion:
                    DistalPerfusion(draft, cannula, vessel);
                    break;
                default:
                    throw new InvalidOperationException($"No steps for {cannula.Role}.");
            }
        }

        draft.About(null);
        Finish(draft, plan);
        return draft.Steps;
    }

    private static int Order(PlacedCannula cannula) => cannula.Role switch
    {
        CannulaRole.DistalPerfusion => 0,
        CannulaRole.ArterialReturn => 1,
        _ => 2,
    };

    private static void Prepare(Draft draft, CannulationPlan plan)
    {
        draft.Add(
            $"Lay out {string.Join(", ", plan.Cannulae.Select(c => FormattableString.Invariant($"{c.OuterDiameterFrench:F0} Fr {PlainWords.Role(c.Role)} ({c.InsertableLengthCm:F0} cm)")))}. Check each package against this plan: length, depth marks, holes, largest wire.",
            [],
            [],
            "The device in hand has the length and hole positions that this plan was computed with; if not, enter it and plan again.");
        draft.Add(
            "Look at the heart before anything is in it: both cavo-atrial junctions, oval foramen, tricuspid valve, thrombus, aortic valve.",
            [TransoesophagealBicaval, SubcostalBicaval],
            [FluoroscopySoftTissue]);
    }

    private static void Vein(Draft draft, string vessel) => draft.Add(
        $"Puncture the {vessel} under ultrasound and pass the wire.",
        [VascularTwoPlanes],
        [FluoroscopySoftTissue],
        $"The wire lies in the {vessel} and not in the artery beside it, seen in two planes, before any dilator.",
        "A dilator in an artery.");

    private static void FemoralDrainage(Draft draft, PlacedCannula cannula)
    {
        draft.Add(
            "Advance the wire through the inferior caval vein and the atrium into the upper superior caval vein.",
            [TransoesophagealBicaval, SubcostalBicaval, FluoroscopyWire],
            [ChestFilm, FluoroscopySoftTissue],
            "The wire is seen in the upper SVC before the drainage cannula advances.",
            "The wire turns into a hepatic vein, the appendage, the right ventricle or through an open oval foramen.",
            InsertionPhase.WireFeed);
        Dilate(draft);
        draft.Add(
            FormattableString.Invariant($"Advance the drainage cannula over the wire to {Depth(cannula)} from the skin."),
            [TransoesophagealBicaval, SubcostalBicaval],
            [FluoroscopySoftTissue, ChestFilm],
            "No wire in view, no advance.",
            "The cannula carries the wire with it into a hepatic vein or against the atrial wall.",
            InsertionPhase.CannulaAdvance);
        TipHidden(draft, "drainage tip");
    }

    private static void VenousReturn(Draft draft, PlacedCannula cannula)
    {
        draft.Add(
            cannula.Route == AccessRoute.Jugular
                ? "Advance the wire through the atrium into the inferior caval vein."
                : "Advance the wire through the inferior caval vein and the atrium into the superior caval vein.",
            [TransoesophagealBicaval, SubcostalBicaval, FluoroscopyWire],
            [ChestFilm, FluoroscopySoftTissue],
            "The wire is seen beyond the atrium, in the far caval vein, before the return cannula advances.",
            "The wire loops in the atrium or enters the right ventricle.",
            InsertionPhase.WireFeed);
        Dilate(draft);
        draft.Add(
            FormattableString.Invariant($"Advance the return cannula over the wire to {Depth(cannula)} from the skin."),
            [TransoesophagealBicaval, SubcostalBicaval],
            [FluoroscopySoftTissue],
            "No wire in view, no advance.",
            "The tip meets the lateral atrial wall or the septum.",
            InsertionPhase.CannulaAdvance);
        TipHidden(draft, "return tip");
    }

    private static void DualLumen(Draft draft, PlacedCannula cannula)
    {
        draft.Add(
            "Advance a stiff wire through the atrium deep into the inferior caval vein.",
            [TransoesophagealBicaval, TransgastricCaval, SubcostalBicaval, FluoroscopyWire],
            [ChestFilm, FluoroscopySoftTissue],
            "The wire lies deep in the IVC, and neither in the right ventricle nor in a hepatic vein, before the dual-lumen cannula advances.",
            "The wire slips back into the atrium, loops and perforates it.",
            InsertionPhase.WireFeed);
        Dilate(draft);
        draft.Add(
            FormattableString.Invariant($"Advance the dual-lumen cannula over the wire to {Depth(cannula)} from the skin, watching the wire throughout."),
            [TransoesophagealBicaval, TransgastricCaval, SubcostalBicaval],
            [FluoroscopySoftTissue],
            "No wire in view, no advance.",
            "The cannula pulls the wire out of the deep vein and follows it into the right ventricle or a hepatic vein.",
            InsertionPhase.CannulaAdvance);
        draft.Add(
            FormattableString.Invariant($"Turn the cannula so that the return port faces the tricuspid valve{(cannula.Fit?.RotationWindowDeg is { } window ? FormattableString.Invariant($" (about ± {window.Value:F0}° either way still meets the annulus; estimated {window.Low:F0} to {window.High:F0}°)") : string.Empty)}."),
            [TransoesophagealJet, SubcostalFourChamber],
            [FluoroscopySoftTissue],
            "The return jet is seen to enter the tricuspid valve on colour Doppler at working flow.",
            "The jet hits the septum or the lateral wall, or runs to the inferior caval vein.");
        TipHidden(draft, "tip in the inferior caval vein");
    }

    private static void Dilate(Draft draft) => draft.Add(
        "Dilate step by step over the wire, moving the wire freely after each dilator.",
        [FluoroscopyWire, TransoesophagealBicaval],
        [],
        null,
        "A kinked wire lets the dilator leave the vein.");

    private static void TipHidden(Draft draft, string what) => draft.Add(
        $"Take out introducer and wire, clamp, and confirm the {what} from what can still be seen: first side holes, return port, depth mark at the skin.",
        [TransoesophagealBicaval, SubcostalBicaval],
        [TipWithoutWire, ChestFilm],
        null,
        "The tip is not visible once the wire is out; it is inferred along the axis from what is visible.",
        InsertionPhase.Removal);

    private static void Artery(Draft draft, PlacedCannula cannula, string vessel)
    {
        if (cannula.Route == AccessRoute.AxillaryGraft)
        {
            draft.Add(
                $"Expose the {vessel.Replace(" (8 mm graft)", string.Empty, StringComparison.Ordinal)}, sew the graft end to side, and seat the return cannula in the graft.",
                [DirectView],
                [],
                "The anastomosis is dry and the graft lies without a kink before flow starts.",
                "Too much flow into the arm; watch the arm's size and pressure.");
            return;
        }

        draft.Add(
            $"Puncture the {vessel} above its division under ultrasound and pass the wire into the aorta.",
            [VascularTwoPlanes, TransoesophagealAorta],
            [ChestFilm],
            "The wire lies in the artery and not in the vein beside it, in two planes, and is seen in the descending aorta, before any dilator.",
            "Puncture below the division or through the back wall; a wire in a false lumen.");
        Dilate(draft);
        draft.Add(
            FormattableString.Invariant($"Advance the {cannula.OuterDiameterFrench:F0} Fr return cannula over the wire to its hub mark."),
            [VascularTwoPlanes],
            [],
            "The cannula advances without resistance; pulsatile bright blood comes back.",
            "Dissection by a cannula that is wide for its artery.");
    }

    private static void DistalPerfusion(Draft draft, PlacedCannula cannula, string vessel) => draft.Add(
        FormattableString.Invariant($"Place the {cannula.OuterDiameterFrench:F0} Fr distal perfusion cannula in the {vessel}, towards the foot, before the artery is occluded."),
        [VascularTwoPlanes],
        [],
        "Flow in the cannula and a signal at the foot are shown after support starts.",
        "Placed in the deep branch, where it feeds the thigh and not the foot.");

    private static void Finish(Draft draft, CannulationPlan plan)
    {
        draft.Add(
            FormattableString.Invariant($"Connect without air and raise the flow in steps towards {plan.Circuit.FlowLPerMin:F1} L/min. Expect an inlet pressure near {plan.Circuit.InletPressureMmHg.Value:F0} mmHg."),
            [CircuitPressures],
            [],
            "No air in either line.",
            "Chatter of the drainage line: hypovolaemia, a kink, a wall on the holes, or raised abdominal pressure.");
        draft.Add(
            "Confirm every port again at working flow, write down depth at the skin, fix with at least two sutures, and repeat after every turn of the patient.",
            [TransoesophagealBicaval, SubcostalBicaval],
            [ChestFilm],
            null,
            "A shift of the dressing by centimetres is a shift of the ports by centimetres.");
    }

    private static string Depth(PlacedCannula cannula) => cannula.Fit is null
        ? "its hub mark"
        : FormattableString.Invariant($"{cannula.Fit.PlannedDepthCm.Value:F1} cm ({cannula.Fit.PlannedDepthCm.Low:F1} to {cannula.Fit.PlannedDepthCm.High:F1} suits most anatomies; imaging decides)");

    /// <summary>Collects steps and says for each whether a view that shows it is on hand.</summary>
    private sealed class Draft(ResourceSection resources)
    {
        private readonly List<ProcedureStep> steps = [];
        private CannulaRole? cannula;

        public IReadOnlyList<ProcedureStep> Steps => steps;

        public void About(CannulaRole? role) => cannula = role;

        public void Add(string action, ImagingView[] shows, ImagingView[] cannot, string? hardStop = null, string? pitfall = null, InsertionPhase phase = InsertionPhase.None) =>
            steps.Add(new ProcedureStep(
                steps.Count + 1,
                action,
                [.. shows.Select(view => view.Words)],
                [.. cannot.Select(view => view.Words)],
                hardStop,
                shows.Length == 0 || shows.Any(view => view.IsOnHand(resources)),
                pitfall)
            {
                Cannula = cannula,
                Phase = phase,
            });
    }
}
