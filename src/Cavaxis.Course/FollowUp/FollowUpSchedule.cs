using Cavaxis.Quantities;

namespace Cavaxis.Course.FollowUp;

/// <summary>
/// The schedule of examinations after removal. That veins be looked at is published; on which day is custom, and said so. Published shares of veins with
/// thrombus run from one in four to more than four in five by patients and by how hard one looks; the schedule rests on none of them.
/// </summary>
public static class FollowUpSchedule
{
    private static readonly Source Custom = new("common practice, no source", Certainty.CommonPractice);

    private static readonly Source Menaker = new("Menaker et al. 2017, ASAIO J 63:588-591, doi 10.1097/MAT.0000000000000539, abstract: 41 of 48 patients screened after veno-venous support", Certainty.Seen);

    private static readonly Source Cooper = new("Cooper et al. 2015, Crit Care Med, doi 10.1097/CCM.0000000000001277, abstract: 8.1 per 1000 cannula days in the screened of 81 survivors; routine venous Doppler after decannulation warranted", Certainty.SeenSecondHand);

    private static readonly Source Trieu = new("Trieu et al. 2024, ASAIO J, doi 10.1097/MAT.0000000000002289, abstract: 24.7 % of those screened of 82 weaned; duration of support is a risk; routine screening suggested", Certainty.SeenSecondHand);

    private static readonly Source Minnen = new("van Minnen et al. 2022, Artif Organs, doi 10.1111/aor.14271, abstract: 15 of 30, 10 of them in a cannulated vein", Certainty.SeenSecondHand);

    private static readonly Source Shin = new("Shin et al. 2024, Circ J, CJ-24-0400, abstract: 33 of 212 had an arterial complication that needed an intervention after veno-arterial support, 23 of them acute limb ischaemia", Certainty.Seen);

    /// <summary>The items, in the order in which they come due.</summary>
    public static IReadOnlyList<FollowUpItem> Items { get; } =
    [
        new(
            "artery-duplex-early", "duplex of the artery that held the cannula, pulses and skin of the limb", FollowUpNeed.ArterialCannula, TimeSpan.Zero, TimeSpan.FromHours(24),
            "Occlusion, stenosis, false aneurysm and fistula are found after removal, whether it was pulled or repaired.", [Shin], Custom),
        new(
            "vein-duplex-early", "duplex of every vein that held a cannula, neck and groin", FollowUpNeed.VenousCannula, TimeSpan.FromHours(24), TimeSpan.FromHours(48),
            "Thrombus in a cannulated vein is frequent, mostly without signs, and found only by looking.", [Menaker, Cooper, Trieu, Minnen], Custom),
        new(
            "vein-duplex-before-discharge", "duplex of the cannulated veins again, before discharge at the latest", FollowUpNeed.VenousCannula, TimeSpan.FromDays(7), TimeSpan.FromDays(14),
            "A first look can be too early or not see the iliac and central veins; the patient lies and has catheters meanwhile.", [Custom], Custom),
        new(
            "thrombus-review", "duplex of the veins with thrombus, and review of anticoagulation", FollowUpNeed.ThrombusFound, TimeSpan.FromDays(80), TimeSpan.FromDays(100),
            "Treatment of a thrombus that was provoked is reviewed at about three months.", [new Source("three months for provoked thrombosis, guidelines of chest physicians", Certainty.FromMemory)], Custom),
    ];
}
