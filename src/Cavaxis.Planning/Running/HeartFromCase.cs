using Cavaxis.Planning.Case;
using Cavaxis.Planning.Needs;
using Cavaxis.Quantities;
using static Cavaxis.Circulation.Parameters.CirculationParameter;

namespace Cavaxis.Planning.Running;

/// <summary>Heart, valves and systemic resistance from a case: first guesses by closed forms, which calibration moves.</summary>
internal static class HeartFromCase
{
    // Assumptions of this project: function where nobody looked, by what the support is for, and right ventricular strength by grade.
    private const double FailingEjectionPercent = 20;
    private const double ArrestEjectionPercent = 8;
    private const double WorkingEjectionPercent = 60;
    private const double EndSystolicOfMean = 1.15;

    /// <summary>Output that stays of the output before support when a pump returns to the artery and nobody measured it (assumption).</summary>
    private const double OutputLeftOnSupport = 0.4;

    /// <summary>Reads the sections.</summary>
    /// <param name="file">The case.</param>
    /// <param name="reading">The numbers of planning.</param>
    /// <param name="book">Takes the numbers.</param>
    public static void Read(CaseFile file, PatientReading reading, ParameterBook book)
    {
        bool failing = file.Support.Goal is SupportGoal.Circulation or SupportGoal.Both or SupportGoal.Arrest;
        bool arrest = file.Support.Goal == SupportGoal.Arrest || file.Heart.RatePerMin is { Value: < 20 };
        double rate = Rate(file, arrest, book);
        double ejection = Ejection(file, failing, arrest, book) / 100;
        double output = Output(file, reading, rate, book);
        double mean = (file.Observations.MeanArterialPressureMmHg ?? file.Heart.MeanArterialPressureMmHg)?.Value ?? reading.Picture.MeanArterialPressureMmHg.Value;
        double venous = (file.Observations.CentralVenousPressureMmHg ?? file.Heart.CentralVenousPressureMmHg)?.Value ?? reading.Picture.CentralVenousPressureMmHg.Value;
        foreach (Plans.MissingInput missing in reading.Missing.Where(m => m.Field is "heart.meanArterialPressureMmHg" or "heart.centralVenousPressureMmHg"))
        {
            if (missing.Field.EndsWith("ArterialPressureMmHg", StringComparison.Ordinal) ? file.Observations.MeanArterialPressureMmHg is null : file.Observations.CentralVenousPressureMmHg is null)
            {
                book.Assume(missing with { Matters = "first guess of the systemic resistance" });
            }
        }

        double systemic = output + (ArterialFlow(file) ?? 0);
        double veins = book.Parameters[LowerVenousResistanceMmHgSPerMl] / 2;
        book.Guess(SystemicResistanceMmHgSPerMl, (Math.Max(10, mean - venous) / Math.Max(0.3, systemic) * 0.06) - veins);
        Left(ejection, output, rate, mean, arrest, book);
        Right(file.Heart.RightVentricularDysfunction, arrest, book);
        Valves(file.Heart, book);
    }

    private static double Rate(CaseFile file, bool arrest, ParameterBook book)
    {
        if (arrest)
        {
            book.Assume("heart.ratePerMin", "arrest: a heart that hardly contracts, at the rate of the table", "pulsatility, filling of the left ventricle");
            return book.Parameters[HeartRatePerMin];
        }

        if (file.Observations.HeartRatePerMin is { } seen)
        {
            book.Take(HeartRatePerMin, seen.Value, "observations.heartRatePerMin");
        }
        else if (file.Heart.RatePerMin is { } before)
        {
            book.Take(HeartRatePerMin, before.Value, "heart.ratePerMin");
        }
        else
        {
            book.Assume("heart.ratePerMin", FormattableString.Invariant($"{book.Parameters[HeartRatePerMin]:F0} /min, resting rate for this size"), "output, filling");
        }

        return book.Parameters[HeartRatePerMin];
    }

    private static double Ejection(CaseFile file, bool failing, bool arrest, ParameterBook book)
    {
        if ((file.Observations.EjectionFractionPercent ?? file.Heart.EjectionFractionPercent) is { } given && !arrest)
        {
            return Math.Clamp(given.Value, 3, 85);
        }

        double used = arrest ? ArrestEjectionPercent : failing ? FailingEjectionPercent : WorkingEjectionPercent;
        book.Assume(
            "heart.ejectionFractionPercent", FormattableString.Invariant($"{used:F0} %, by what the support is for"), "contractility of the left ventricle");
        return used;
    }

    private static double Output(CaseFile file, PatientReading reading, double rate, ParameterBook book)
    {
        if (file.Observations.CardiacOutputLPerMin is { } seen)
        {
            return seen.Value;
        }

        if (file is { Observations.OutflowVtiCm: { } vti, Heart.LvotDiameterMm: { } diameter })
        {
            return Math.PI / 4 * diameter.Value * diameter.Value / 100 * vti.Value * rate / 1000;
        }

        double before = reading.Picture.CardiacOutputLPerMin.Value;
        if (!reading.CardiacOutputKnown)
        {
            book.Assume(
                "heart.cardiacOutputLPerMin", FormattableString.Invariant($"{before:F1} L/min before support, by size and what the support is for"),
                "first guess of systemic resistance and contractility");
        }

        return ArterialFlow(file) > 0 ? OutputLeftOnSupport * before : before;
    }

    private static double? ArterialFlow(CaseFile file) => file.Running.Configuration switch
    {
        RunningConfiguration.VaFemoral or RunningConfiguration.VaAxillary => file.Running.FlowLPerMin?.Value ?? file.Support.FlowLPerMin,
        RunningConfiguration.VavFemoral => 0.5 * (file.Running.FlowLPerMin?.Value ?? file.Support.FlowLPerMin),
        _ => null,
    };

    /// <summary>
    /// End-systolic elastance by its definition, end-systolic pressure over end-systolic volume above the zero volume, with the volume from
    /// stroke volume and ejection fraction.
    /// </summary>
    private static void Left(double ejection, double output, double rate, double mean, bool arrest, ParameterBook book)
    {
        if (arrest)
        {
            book.Guess(LeftVentricleElastanceMmHgPerMl, 0, Origin.Estimated);
            return;
        }

        double stroke = Math.Max(1, output) * 1000 / rate;
        double endSystolic = stroke * ((1 / ejection) - 1);
        double active = Math.Max(0.3 * endSystolic, endSystolic - book.Parameters[LeftVentricleZeroVolumeMl]);
        book.Guess(LeftVentricleElastanceMmHgPerMl, EndSystolicOfMean * mean / active);
    }

    private static void Right(Severity grade, bool arrest, ParameterBook book)
    {
        double factor = grade switch { Severity.Mild => 0.75, Severity.Moderate => 0.5, Severity.Severe => 0.3, _ => 1 };
        double strength = arrest ? 0 : book.Parameters[RightVentricleElastanceMmHgPerMl] * factor;
        book.Guess(RightVentricleElastanceMmHgPerMl, strength, Origin.Estimated);
        if (grade == Severity.Unknown && !arrest)
        {
            book.Assume("heart.rightVentricularDysfunction", "a right ventricle as in the table for this size", "output of the right heart, venous pressure");
        }
    }

    private static void Valves(HeartSection heart, ParameterBook book)
    {
        double size = Math.Pow(book.MassRatio, 0.667);
        Leak(heart.AorticRegurgitation, "heart.aorticRegurgitation", AorticLeakAreaCm2, [0.06, 0.18, 0.35], "filling of the left ventricle on arterial return");
        Leak(heart.MitralRegurgitation, "heart.mitralRegurgitation", MitralLeakAreaCm2, [0.1, 0.27, 0.45], "wedge pressure");
        if (heart.TricuspidRegurgitation is Severity.Moderate or Severity.Severe)
        {
            book.Leave("Tricuspid regurgitation is given; the circulation has no leak there.");
        }

        void Leak(Severity grade, string field, Circulation.Parameters.CirculationParameter area, double[] byGrade, string matters)
        {
            switch (grade)
            {
                case Severity.Unknown:
                    book.Assume(field, "no leak", matters);
                    break;
                case Severity.None:
                    break;
                default:
                    book.Guess(area, byGrade[grade - Severity.Mild] * size, Origin.Estimated);
                    break;
            }
        }
    }
}
