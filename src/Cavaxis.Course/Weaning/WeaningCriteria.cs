using Cavaxis.Course.Criteria;
using Cavaxis.Quantities;
using static Cavaxis.Course.Criteria.CriterionComparison;
using static Cavaxis.Course.Weaning.WeaningQuantity;
using static Cavaxis.Course.Weaning.WeaningRole;

namespace Cavaxis.Course.Weaning;

/// <summary>Published criteria of weaning as data. Where sources disagree, the other threshold stands beside the first.</summary>
public static class WeaningCriteria
{
    private static readonly Source Aissaoui = new("Aissaoui et al. 2011, Intensive Care Med 37:1738, at a flow below 1.5 L/min", Certainty.SeenSecondHand);
    private static readonly Source AissaouiMemory = new("Aissaoui et al. 2011, Intensive Care Med 37:1738", Certainty.FromMemory);
    private static readonly Source Review = new("systematic review 2022, Crit Care, 10.1186/s13054-022-04249-w, take-home message", Certainty.Seen);
    private static readonly Source RightHeart = new("three-dimensional echocardiography, 46 patients: above 24.6 %, area under the curve 0.90", Certainty.Seen);
    private static readonly Source Chapter = new("textbook chapter on weaning of veno-venous support", Certainty.Seen);
    private static readonly Source Guideline = new("Tonna et al. 2021, ASAIO J 67:601, as quoted by a teaching page", Certainty.SeenSecondHand);
    private static readonly Source Breathing = new("signs that a trial of spontaneous breathing fails, PMC4157996, table 1: above 35/min for 5 min", Certainty.Seen);
    private static readonly Source Common = new("common practice, no source", Certainty.CommonPractice);

    /// <summary>All published criteria.</summary>
    public static IReadOnlyList<WeaningCriterion> Published { get; } =
    [
        Va(Entry, MeanArterialPressureMmHg, "mean arterial pressure before the trial", AtLeast, 60, "mmHg", AissaouiMemory, "With a pulsatile trace."),
        Va(Entry, VasoactiveInotropicScore, "vasoactive inotropic score before the trial", AtMost, 10, "1", Common, "No or low dose of inotropes; the number is a convention."),
        Va(Success, OutflowVtiCm, "velocity-time integral of the outflow", AtLeast, 10, "cm", Aissaoui, "The review of 2022 says above 10 cm."),
        Va(Success, EjectionFractionPercent, "ejection fraction", Above, 25, "%", Aissaoui, "Published as above 20 to 25 %; the stricter limit decides.", new OtherThreshold(20, Aissaoui)),
        Va(Success, LateralMitralVelocityCmPerS, "lateral mitral annulus systolic velocity", AtLeast, 6, "cm/s", Aissaoui, "The review of 2022 asks for more than 10 cm/s.", new OtherThreshold(10, Review)),
        Va(Success, MeanArterialPressureMmHg, "mean arterial pressure at the lowest flow", AtLeast, 60, "mmHg", AissaouiMemory),
        Va(Success, TricuspidExcursionMm, "tricuspid annular plane systolic excursion", AtLeast, 19, "mm", Review),
        Va(Success, RightEjectionFractionPercent, "right ventricular ejection fraction", Above, 24.6, "%", RightHeart, "The review of 2022 says at least 25 %."),
        Va(Success, VasoactiveInotropicScore, "vasoactive inotropic score at the lowest flow", AtMost, 10, "1", Common, "The sources ask for no significant rise during the trial; the number is a convention."),
        Va(Stop, MeanArterialPressureMmHg, "mean arterial pressure", Below, 60, "mmHg", AissaouiMemory),
        Vv(Entry, InspiredOxygenFraction, "inspired oxygen fraction before the trial", AtMost, 0.6, "1", Guideline, "The textbook chapter says below 0.6."),
        Vv(Entry, PeepCmH2O, "end-expiratory pressure before the trial", AtMost, 10, "cmH2O", Guideline, "The textbook chapter says 5 to 12.", new OtherThreshold(12, Chapter)),
        Vv(Entry, PlateauPressureCmH2O, "plateau pressure before the trial", AtMost, 28, "cmH2O", Guideline, "The textbook chapter says below 30.", new OtherThreshold(30, Chapter)),
        Vv(Entry, TidalVolumeMlPerKg, "tidal volume before the trial", AtMost, 6, "mL/kg", Chapter, "Of predicted body weight; 6 to 8 in other texts.", new OtherThreshold(8, new Source("Tonna et al. 2021, ASAIO J 67:601", Certainty.FromMemory))),
        Vv(Success, RightArmPo2MmHg, "arterial oxygen tension with the sweep off", Above, 60, "mmHg", Chapter, "The guideline of 2021 asks for 70 mmHg.", new OtherThreshold(70, Guideline)),
        Vv(Success, RightArmSaturationPercent, "arterial saturation with the sweep off", Above, 90, "%", Chapter),
        Vv(Success, InspiredOxygenFraction, "inspired oxygen fraction with the sweep off", Below, 0.6, "1", Chapter),
        Vv(Success, PlateauPressureCmH2O, "plateau pressure with the sweep off", Below, 30, "cmH2O", Chapter),
        Vv(Success, RightArmPh, "arterial pH with the sweep off", Above, 7.3, "1", Guideline, "Other wording of the same guideline: above 7.25.", new OtherThreshold(7.25, new Source("Tonna et al. 2021, ASAIO J 67:601", Certainty.FromMemory))),
        Vv(Success, RespiratoryRatePerMin, "breaths with the sweep off", AtMost, 35, "/min", Breathing, "Published for breathing trials without extracorporeal support."),
        Vv(Success, OesophagealSwingCmH2O, "swing of the oesophageal pressure with the sweep off", AtMost, 15, "cmH2O", Common, "A sign of effort; 10 to 15 cmH2O in the literature."),
        Vv(Stop, RightArmSaturationPercent, "arterial saturation", Below, 88, "%", Common),
        Vv(Stop, RespiratoryRatePerMin, "breaths", Above, 35, "/min", Breathing, "Published for breathing trials without extracorporeal support."),
        Vv(Stop, RightArmPh, "arterial pH", Below, 7.25, "1", new Source("Tonna et al. 2021, ASAIO J 67:601: pH above 7.25", Certainty.FromMemory)),
    ];

    private static WeaningCriterion Va(
        WeaningRole role, WeaningQuantity quantity, string words, CriterionComparison comparison, double threshold, string unit, Source source, string note = "", OtherThreshold? other = null) =>
        Row(WeaningKind.VenoArterialFlow, "va", role, quantity, new(words, comparison, threshold, unit, source, note, other));

    private static WeaningCriterion Vv(
        WeaningRole role, WeaningQuantity quantity, string words, CriterionComparison comparison, double threshold, string unit, Source source, string note = "", OtherThreshold? other = null) =>
        Row(WeaningKind.VenoVenousSweep, "vv", role, quantity, new(words, comparison, threshold, unit, source, note, other));

    private static WeaningCriterion Row(WeaningKind kind, string prefix, WeaningRole role, WeaningQuantity quantity, Printed printed) => new(
        kind, role, quantity,
        new Criterion($"{prefix}{role}{quantity}", printed.Words, printed.Comparison, printed.Threshold, printed.Unit, printed.Source, printed.Note, printed.Other));

    private sealed record Printed(string Words, CriterionComparison Comparison, double Threshold, string Unit, Source Source, string Note, OtherThreshold? Other);
}
