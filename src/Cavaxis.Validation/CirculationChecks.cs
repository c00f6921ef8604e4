using Cavaxis.Circulation.Parameters;
using Cavaxis.Circulation.Presets;
using Cavaxis.Circulation.Signals;
using Cavaxis.Circulation.Simulation;
using Cavaxis.Quantities;
using static Cavaxis.Circulation.Parameters.CirculationParameter;
using static Cavaxis.Circulation.Signals.CirculationQuantity;

namespace Cavaxis.Validation;

/// <summary>The circulation at rest, in shock, in children and under support against published values. All states are computed side by side.</summary>
public sealed class CirculationChecks : IReferenceChecks
{
    private static readonly Source Catheter = new("Reference tables of right heart catheterisation", Certainty.Seen);
    private static readonly Source Echo = new("Lang 2015, chamber quantification", Certainty.FromMemory);
    private static readonly Source Infarct = new("13 patients with infarct shock, 2009", Certainty.Seen);
    private static readonly Source Children = new("Age table of a children's textbook", Certainty.Seen);
    private static readonly Source AcutePigs = new("Ostadal et al. 2015, pigs in acute shock, flow 1 to 5 L/min", Certainty.Seen);
    private static readonly Source ChronicPigs = new("Hala et al. 2020, pigs with chronic failure, flow up to 5 L/min", Certainty.Seen);
    private static readonly Source Septostomy = new("Baruteau 2018: left atrial pressure 24.2 to 7.8 mmHg, 64 patients", Certainty.Seen);
    private static readonly Source Abdomen = new("Giebler 2000: caval transmural pressure biphasic in abdominal pressure, 20 people", Certainty.Seen);

    private static readonly (CirculationQuantity Quantity, string Name, double Middle, double HalfWidth, string Unit, Source Source)[] Rest =
    [
        (MeanArterialPressureMmHg, "mean arterial pressure", 87.5, 17.5, "mmHg", Catheter),
        (SystolicPressureMmHg, "systolic pressure", 115, 25, "mmHg", Catheter),
        (DiastolicPressureMmHg, "diastolic pressure", 75, 15, "mmHg", Catheter),
        (CentralVenousPressureMmHg, "central venous pressure", 4, 2, "mmHg", Catheter),
        (RightVentricularSystolicMmHg, "right ventricular systolic pressure", 22.5, 7.5, "mmHg", Catheter),
        (PulmonaryArterySystolicMmHg, "pulmonary artery systolic pressure", 22.5, 7.5, "mmHg", Catheter),
        (PulmonaryArteryDiastolicMmHg, "pulmonary artery diastolic pressure", 9.5, 5.5, "mmHg", Catheter),
        (PulmonaryArteryMeanMmHg, "pulmonary artery mean pressure, two SD", 14, 6, "mmHg", Catheter),
        (WedgePressureMmHg, "wedge pressure", 8, 4, "mmHg", Catheter),
        (NativeOutputLPerMin, "cardiac output", 6, 2, "L/min", Catheter),
        (StrokeVolumeMl, "stroke volume", 75, 25, "mL", Catheter),
        (SystemicResistanceWoodUnits, "systemic resistance", 14.4, 5.6, "WU", Catheter),
        (VenousSaturationPercent, "venous saturation", 70, 10, "%", Catheter),
        (LeftVentricularEjectionFractionPercent, "left ventricular ejection fraction", 63, 11, "%", Echo),
        (LeftVentricularEndDiastolicVolumeMl, "left ventricular end-diastolic volume", 106, 44, "mL", Echo),
        (RightArmPo2MmHg, "arterial oxygen tension", 90, 10, "mmHg", new("Teaching text", Certainty.SeenSecondHand)),
        (RightArmPco2MmHg, "arterial carbon dioxide tension", 40, 5, "mmHg", new("Teaching text", Certainty.SeenSecondHand)),
    ];

    /// <inheritdoc/>
    public IEnumerable<ValidationRow> Rows()
    {
        CirculationParameters shock = Preset("cardiogenic-shock").With(SweepLPerMin, 2.5);
        CirculationParameters closing = OnArtery(shock, 4.5).With(LeftVentricleElastanceMmHgPerMl, 0.3);
        CirculationParameters adult = Preset("adult");
        CirculationParameters ventilated = Preset("severe-lung-failure");
        CirculationSummary[] s = [.. CirculationSimulator.Settle(
        [
            adult, Preset("cardiogenic-shock"), Preset("child-20kg"), Preset("child-10kg"), Preset("newborn-3.5kg"),
            OnArtery(shock, 1), OnArtery(shock, 5), closing, closing.With(SeptalOpeningCm2, 1), closing.With(TargetFlowLPerMin, 1.5),
            ventilated.With(AbdominalPressureMmHg, 0), ventilated.With(AbdominalPressureMmHg, 10), ventilated.With(AbdominalPressureMmHg, 30),
        ]).Select(static state => state.RequireSummary())];
        return
        [
            .. Rest.Select(rest => Row("Adult at rest: " + rest.Name, rest.Source, rest.Middle, s[0][rest.Quantity], rest.Unit, Tolerance.Absolute, rest.HalfWidth)),
            .. Shock(s[1]), .. Young(s[2], s[3], s[4]), .. Support(s[5], s[6]), .. Unloading(s[7], s[8], s[9]), .. AbdominalPressure(s[10], s[11], s[12]),
        ];
    }

    private static IEnumerable<ValidationRow> Shock(CirculationSummary s) =>
    [
        Row("Cardiogenic shock: cardiac output at 1.9 m2, one SD", Infarct, 1.5 * 1.9, s[NativeOutputLPerMin], "L/min", Tolerance.Absolute, 0.3 * 1.9),
        Row("Cardiogenic shock: wedge pressure, one SD", Infarct, 24, s[WedgePressureMmHg], "mmHg", Tolerance.Absolute, 9),
        Row("Cardiogenic shock: systemic resistance, one SD", Infarct, 23, s[SystemicResistanceWoodUnits], "WU", Tolerance.Absolute, 5),
        Row(
            "Cardiogenic shock: cardiac power, one SD", Infarct, 0.462, s[NativeOutputLPerMin] * s[MeanArterialPressureMmHg] / 451, "W",
            Tolerance.Absolute, 0.164),
    ];

    private static IEnumerable<ValidationRow> Young(CirculationSummary twenty, CirculationSummary ten, CirculationSummary newborn) =>
    [
        Row("Child of 20 kg: mean arterial pressure, 3 to 12 years", Children, 71, twenty[MeanArterialPressureMmHg], "mmHg", Tolerance.Absolute, 6),
        Row("Child of 20 kg: heart rate, 5 to 12 years", Children, 87.5, twenty[CirculationQuantity.HeartRatePerMin], "/min", Tolerance.Absolute, 22.5),
        Row("Child of 10 kg: mean arterial pressure, around 1 year", Children, 57.5, ten[MeanArterialPressureMmHg], "mmHg", Tolerance.Absolute, 7.5),
        Row("Newborn of 3.5 kg: mean arterial pressure", Children, 47.5, newborn[MeanArterialPressureMmHg], "mmHg", Tolerance.Absolute, 7.5),
        Row("Newborn of 3.5 kg: heart rate", Children, 140, newborn[CirculationQuantity.HeartRatePerMin], "/min", Tolerance.Absolute, 40),
        Row(
            "Newborn of 3.5 kg: cardiac output", new("Williams 1993, quoted in a report of a national academy", Certainty.SeenSecondHand), 0.6,
            newborn[NativeOutputLPerMin], "L/min", Tolerance.Relative, 0.25),
    ];

    private static IEnumerable<ValidationRow> Support(CirculationSummary low, CirculationSummary high)
    {
        double Change(CirculationQuantity q) => high[q] - low[q];
        yield return Row(
            "Arterial return 1 to 5 L/min in shock: rise of mean pressure", AcutePigs, 0, Change(MeanArterialPressureMmHg), "mmHg", Tolerance.AtLeast, 0,
            "Systolic 60 at shock to 97 mmHg.");
        yield return Row(
            "The same: rise of left ventricular end-systolic volume, of it", AcutePigs, 19.0 / 64,
            Change(LeftVentricularEndSystolicVolumeMl) / low[LeftVentricularEndSystolicVolumeMl], "1", Tolerance.Absolute, 0.2);
        yield return Row(
            "The same: rise of left ventricular end-systolic volume, of it", ChronicPigs, 28.0 / 139,
            Change(LeftVentricularEndSystolicVolumeMl) / low[LeftVentricularEndSystolicVolumeMl], "1", Tolerance.Absolute, 0.2);
        yield return Row("The same: change of ejection fraction", AcutePigs, 0, Change(LeftVentricularEjectionFractionPercent), "%", Tolerance.AtMost, 0);
        yield return Row("The same: change of stroke volume", AcutePigs, 0, Change(StrokeVolumeMl), "mL", Tolerance.AtMost, 0, "The chronic pigs held it.");
        yield return Row(
            "The same: rise of wedge pressure, as that of end-diastolic pressure", ChronicPigs, 8, Change(WedgePressureMmHg), "mmHg", Tolerance.Absolute, 7.2,
            "Two standard errors of the difference.");
    }

    private static IEnumerable<ValidationRow> Unloading(CirculationSummary closed, CirculationSummary septum, CirculationSummary slow)
    {
        Source mechanism = new("Review of ventricular distension: the valve stays shut when ventricular lies below aortic pressure", Certainty.Seen);
        yield return Row("Weak ventricle at 4.5 L/min: share of the beat with open valve", mechanism, 0, closed[AorticValveOpenPercent], "%", Tolerance.AtMost, 0);
        yield return Row("The same at 1.5 L/min", mechanism, 5, slow[AorticValveOpenPercent], "%", Tolerance.AtLeast, 0);
        yield return Row(
            "Atrial opening of 1 cm2: fall of left atrial pressure, of it", Septostomy, 0.68,
            1 - (septum[WedgePressureMmHg] / closed[WedgePressureMmHg]), "1", Tolerance.Absolute, 0.3, "A second series of 9 adults has 0.40.");
    }

    private static IEnumerable<ValidationRow> AbdominalPressure(CirculationSummary none, CirculationSummary some, CirculationSummary much)
    {
        yield return Row(
            "Ventilated adult, abdominal pressure 0 to 10 mmHg: change of output", Abdomen, 0, some[NativeOutputLPerMin] - none[NativeOutputLPerMin], "L/min", Tolerance.AtLeast, 0);
        yield return Row(
            "The same, 10 to 30 mmHg", Abdomen, 0, much[NativeOutputLPerMin] - some[NativeOutputLPerMin], "L/min", Tolerance.AtMost, 0,
            "The turning point rises with filling: Takata 1990.");
    }

    private static CirculationParameters Preset(string name) => CirculationPresets.Of(name).Parameters();

    internal static CirculationParameters OnArtery(CirculationParameters patient, double flowLPerMin) =>
        patient.With(CircuitOn, 1).With(ArterialShareOfReturn, 1).With(AscendingShareOfArterialReturn, 0).With(TargetFlowLPerMin, flowLPerMin);

    internal static ValidationRow Row(
        string check, Source source, double expected, double got, string unit, Tolerance tolerance, double bound, string note = "") =>
        new("Circulation", check, source, expected, got, unit, tolerance, bound, note);
}
