using System.Globalization;
using Cavaxis.Course.Criteria;
using Cavaxis.Course.GasExchange;
using Cavaxis.Course.Weaning;
using Cavaxis.Quantities;

namespace Cavaxis.Validation;

/// <summary>
/// Published thresholds of weaning and of failing membrane lungs, each on both sides. The thresholds are written here anew from the sources, not read from the
/// tables that are checked.
/// </summary>
public sealed class CourseCriteriaChecks : IReferenceChecks
{
    private static readonly Source Heart = new("Aissaoui et al. 2011, Intensive Care Med 37:1738: integral ≥10 cm, EF >20–25 %, S′ ≥6 cm/s, at a flow below 1.5 L/min", Certainty.SeenSecondHand);
    private static readonly Source RightHeart = new("systematic review 2022, Crit Care, 10.1186/s13054-022-04249-w: TAPSE ≥19 mm", Certainty.Seen);
    private static readonly Source Lung = new("textbook chapter on weaning of veno-venous support: PaO₂ >60 mmHg, SaO₂ >90 %, FiO₂ <0.6, plateau <30 cmH₂O", Certainty.Seen);
    private static readonly Source Guideline = new("Tonna et al. 2021, ASAIO J 67:601, as quoted by a teaching page: FiO₂ ≤0.6, PEEP ≤10, plateau ≤28 cmH₂O on entry", Certainty.SeenSecondHand);
    private static readonly Source Membrane = new("Lubnow et al. 2014, PLoS One 9:e112316, table 6: values that suggest malfunction", Certainty.Seen);

    /// <inheritdoc/>
    public IEnumerable<ValidationRow> Rows() => [.. Weaning(), .. Failing()];

    private static IEnumerable<ValidationRow> Weaning() =>
    [
        .. Both("Integral of the outflow", Heart, WeaningKind.VenoArterialFlow, WeaningRole.Success, WeaningQuantity.OutflowVtiCm, 10, 9.9),
        .. Both("Ejection fraction, stricter limit", Heart, WeaningKind.VenoArterialFlow, WeaningRole.Success, WeaningQuantity.EjectionFractionPercent, 25.1, 25),
        .. Both("Lateral mitral velocity", Heart, WeaningKind.VenoArterialFlow, WeaningRole.Success, WeaningQuantity.LateralMitralVelocityCmPerS, 6, 5.9),
        .. Both("Tricuspid excursion", RightHeart, WeaningKind.VenoArterialFlow, WeaningRole.Success, WeaningQuantity.TricuspidExcursionMm, 19, 18.9),
        .. Both("Arterial oxygen tension", Lung, WeaningKind.VenoVenousSweep, WeaningRole.Success, WeaningQuantity.RightArmPo2MmHg, 60.1, 60),
        .. Both("Arterial saturation", Lung, WeaningKind.VenoVenousSweep, WeaningRole.Success, WeaningQuantity.RightArmSaturationPercent, 90.1, 90),
        .. Both("Inspired oxygen", Lung, WeaningKind.VenoVenousSweep, WeaningRole.Success, WeaningQuantity.InspiredOxygenFraction, 0.59, 0.6),
        .. Both("Plateau pressure", Lung, WeaningKind.VenoVenousSweep, WeaningRole.Success, WeaningQuantity.PlateauPressureCmH2O, 29.9, 30),
        .. Both("Inspired oxygen on entry", Guideline, WeaningKind.VenoVenousSweep, WeaningRole.Entry, WeaningQuantity.InspiredOxygenFraction, 0.6, 0.61),
        .. Both("End-expiratory pressure on entry", Guideline, WeaningKind.VenoVenousSweep, WeaningRole.Entry, WeaningQuantity.PeepCmH2O, 10, 10.1),
        .. Both("Plateau pressure on entry", Guideline, WeaningKind.VenoVenousSweep, WeaningRole.Entry, WeaningQuantity.PlateauPressureCmH2O, 28, 28.1),
        Row("Integral of 14 cm at 1.5 L/min counts (1 yes)", Heart, 1, Judged(WeaningKind.VenoArterialFlow, WeaningRole.Success, WeaningQuantity.OutflowVtiCm, 14, 1.5)),
        Row("Integral of 14 cm at 1.6 L/min counts (1 yes)", Heart, 0, Judged(WeaningKind.VenoArterialFlow, WeaningRole.Success, WeaningQuantity.OutflowVtiCm, 14, 1.6)),
    ];

    private static IEnumerable<ValidationRow> Failing()
    {
        MembraneLungReadings bare = new(Estimate.Normal(4, 0, Origin.Measured)) { SweepOxygenFraction = Exact(1), SweepLPerMin = Exact(11) };
        (string Name, Criterion Criterion, MembraneLungReadings There, MembraneLungReadings Absent)[] signs =
        [
            ("oxygen tension after it 199 and 200 mmHg", MembraneFailureSigns.PostPo2, bare with { Post = new(Exact(97), Exact(199)) }, bare with { Post = new(Exact(97), Exact(200)) }),
            ("carbon dioxide tension after it 41 and 40 mmHg", MembraneFailureSigns.PostPco2, bare with { PostPco2MmHg = Exact(41) }, bare with { PostPco2MmHg = Exact(40) }),
            ("fall of carbon dioxide tension 4.9 and 5 mmHg", MembraneFailureSigns.Pco2Fall, Gas(bare, 44.9), Gas(bare, 45)),
            ("D-dimer 26 and 25 mg/L", MembraneFailureSigns.DDimer, bare with { DDimerMgPerL = Exact(26) }, bare with { DDimerMgPerL = Exact(25) }),
            ("fibrinogen 1.9 and 2 g/L", MembraneFailureSigns.Fibrinogen, bare with { FibrinogenGPerL = Exact(1.9) }, bare with { FibrinogenGPerL = Exact(2) }),
            ("free haemoglobin 301 and 300 mg/L", MembraneFailureSigns.FreeHaemoglobin, bare with { FreeHaemoglobinMgPerL = Exact(301) }, bare with { FreeHaemoglobinMgPerL = Exact(300) }),
            ("lactate dehydrogenase 1001 and 1000 U/L", MembraneFailureSigns.LactateDehydrogenase, bare with { LactateDehydrogenaseUPerL = Exact(1001) }, bare with { LactateDehydrogenaseUPerL = Exact(1000) }),
        ];
        foreach ((string name, Criterion criterion, MembraneLungReadings there, MembraneLungReadings absent) in signs)
        {
            yield return Row($"Failing membrane lung, {name}: the first is a sign (1 yes)", Membrane, 1, Sign(criterion, there));
            yield return Row($"Failing membrane lung, {name}: the second is a sign (1 yes)", Membrane, 0, Sign(criterion, absent));
        }

        MembraneLungReadings first = bare with { PrePressureMmHg = Exact(120), PostPressureMmHg = Exact(100) };
        foreach ((double rise, double expected) in new[] { (1.31, 1.0), (1.29, 0.0) })
        {
            MembraneLungReadings later = bare with { PrePressureMmHg = Exact(100 + (20 * rise)), PostPressureMmHg = Exact(100) };
            yield return Row(
                string.Create(CultureInfo.InvariantCulture, $"Failing membrane lung, drop over flow {100 * (rise - 1):0} % up is a sign (1 yes)"), Membrane, expected,
                Met(MembraneLungAssessment.Of(later, first).FailureSigns.Single(static s => s.Criterion == MembraneFailureSigns.DropRise)));
        }
    }

    private static ValidationRow[] Both(string name, Source source, WeaningKind kind, WeaningRole role, WeaningQuantity quantity, double met, double not) =>
    [
        Row(string.Create(CultureInfo.InvariantCulture, $"Weaning, {name}: {met} meets it (1 yes)"), source, 1, Judged(kind, role, quantity, met, 1.4)),
        Row(string.Create(CultureInfo.InvariantCulture, $"Weaning, {name}: {not} meets it (1 yes)"), source, 0, Judged(kind, role, quantity, not, 1.4)),
    ];

    private static double Judged(WeaningKind kind, WeaningRole role, WeaningQuantity quantity, double value, double flow)
    {
        WeaningJudgement judged = WeaningJudge.Judge(new WeaningTrial(kind, [new WeaningStep(0, 120, flow, 0, [new WeaningReading(quantity, Exact(value))])]));
        return Met((role == WeaningRole.Entry ? judged.Entry : judged.Success).Single(f => f.Criterion.Quantity == quantity).Judgement);
    }

    private static double Sign(Criterion criterion, MembraneLungReadings readings) =>
        Met(MembraneLungAssessment.Of(readings).FailureSigns.Single(s => s.Criterion == criterion));

    private static double Met(CriterionJudgement judgement) => judgement.Verdict == CriterionVerdict.Met ? 1 : 0;

    private static MembraneLungReadings Gas(MembraneLungReadings bare, double pre) => bare with { PrePco2MmHg = Exact(pre), PostPco2MmHg = Exact(40) };

    private static Estimate Exact(double value) => Estimate.Normal(value, 0, Origin.Measured);

    private static ValidationRow Row(string check, Source source, double expected, double got) =>
        new("Course", check, source, expected, got, "1", Tolerance.Absolute, 0);
}
