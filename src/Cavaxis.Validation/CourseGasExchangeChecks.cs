using Cavaxis.Blood.Oxygen;
using Cavaxis.Course.GasExchange;
using Cavaxis.Quantities;

namespace Cavaxis.Validation;

/// <summary>Reference rows of what is measured while support runs. Document: <c>docs/models/gas-exchange-measured.md</c>.</summary>
public sealed class CourseGasExchangeChecks : IReferenceChecks
{
    private const double Recirculated = 0.305;

    // The abstract gives neither; sheep blood at a usual haemoglobin, oxygenated with pure oxygen.
    private const double AssumedHaemoglobin = 10;
    private const double AssumedPostPo2 = 500;

    private static readonly Source InVitro = new("Walker et al. 2007, Perfusion 22:239, sheep blood in a mixing chamber, recirculation 30.5 (SD 2.0) %, abstract", Certainty.Seen);
    private static readonly Source Syringes = new("Walker et al. 2009, Perfusion 24:333, porcine blood mixed by syringe, abstract", Certainty.Seen);

    /// <inheritdoc/>
    public IEnumerable<ValidationRow> Rows() => [.. Formula(), .. HighTension(), .. Support()];

    private static IEnumerable<ValidationRow> Formula()
    {
        Source formula = new("Walker et al. 2009, Perfusion 24:333, figure 1, (pre − venous)/(post − venous), by hand", Certainty.Derived);
        yield return Row("Recirculation by saturation from 80, 65 and 100 %", formula, 42.857, BySaturation(80, 65, 100), "%", Tolerance.Absolute, 0.01);
        yield return Row("Recirculation by saturation from 72, 72 and 100 %: none", formula, 0, BySaturation(72, 72, 100), "%", Tolerance.Absolute, 1e-9);
        yield return Row("Recirculation by saturation from 85, 60 and 98 %", formula, 65.789, BySaturation(85, 60, 98), "%", Tolerance.Absolute, 0.01);
        Source content = new("content 1.34·Hb·S + 0.0031·PO₂ put into the same formula, by hand", Certainty.ClosedForm);
        Source artery = new("balance of returned blood by hand: half of the output of the heart was returned blood and a fifth of 3.75 L/min recirculated", Certainty.ClosedForm);
        OxygenSample pre = new(Exact(80), Exact(46));
        OxygenSample post = new(Exact(100), Exact(500));
        VenousSample venous = new(new(Exact(65), Exact(35)), VenousSite.DrainageWithSweepOff);
        RecirculationReadings readings = new(pre, post, venous, Exact(10));
        yield return Row(
            "Recirculation by content from 80, 65 and 100 % at 46, 35 and 500 mmHg, 10 g/dL", content, 100 * 2.0441 / 6.1315, BloodGasRecirculation.ByContent(readings).Percent?.Value ?? double.NaN, "%", Tolerance.Absolute, 1e-6,
            "Nine points below the saturation method from the same samples.");
        yield return Row(
            "Recirculation with pulmonary artery blood, corrected, flow 3.75 and output 6 L/min", artery, 20, 100 * PulmonaryArteryCorrection.Fraction((0.2 - 0.5) / 0.5, 3.75 / 6), "%", Tolerance.Absolute, 1e-9);
        Source limits = new("Modified thermodilution in vitro: limits of agreement −18.6 to 7.9 %, abstract", Certainty.Seen);
        yield return Row("Width of the limits of agreement that one dilution is given", limits, 26.5, 2 * 1.96 * DilutionRecirculation.SingleSdPoints, "points", Tolerance.Absolute, 0.05);
    }

    private static IEnumerable<ValidationRow> HighTension()
    {
        // Actual and calculated venous saturation with their standard deviations, as printed.
        (string Name, double Actual, double Sd, double Calculated, double CalculatedSd, bool Miss)[] groups =
        [
            ("low", 31.8, 3.95, 37.0, 6.7, false), ("medium", 61.7, 1.5, 72.3, 1.8, true), ("high", 84.4, 0.9, 91.2, 1.1, false),
        ];
        const string Note = "Haemoglobin 10 g/dL and 500 mmHg are assumed, human curve; the abstract gives neither. Bound: twice the joint standard deviation printed.";
        foreach ((string name, double actual, double sd, double calculated, double calculatedSd, bool miss) in groups)
        {
            double excess = Excess(Recirculated, actual / 100, AssumedPostPo2);
            yield return Row(
                $"Venous saturation computed from saturations, {name} group: too high", InVitro, 0, excess, "points", Tolerance.AtLeast, 0, "The sign of the bias.");
            yield return Row(
                $"Venous saturation computed from saturations, {name} group: by how much too high", InVitro, calculated - actual, excess, "points", Tolerance.Absolute, 2 * double.Hypot(sd, calculatedSd),
                miss ? Note + " Dissolved oxygen explains part of what was measured." : Note) with
            { KnownMiss = miss };
        }

        double mean = groups.Average(static g => Excess(Recirculated, g.Actual / 100, AssumedPostPo2));
        yield return Row(
            "Venous saturation computed from saturations, mean of three groups: by how much too high", InVitro, groups.Average(static g => g.Calculated - g.Actual), mean, "points", Tolerance.Absolute,
            2 * Math.Sqrt(groups.Sum(static g => (g.Sd * g.Sd) + (g.CalculatedSd * g.CalculatedSd))) / 3, Note);
        yield return Row(
            "Venous saturation computed from saturations, 30 % recirculation: rise of the excess from 150 to 500 mmHg", Syringes, 0, Excess(0.3, 0.65, 500) - Excess(0.3, 0.65, 150), "points", Tolerance.AtLeast, 0);
        yield return Row(
            "Venous saturation computed from saturations, 500 mmHg: rise of the excess from 20 to 60 % recirculation", Syringes, 0, Excess(0.6, 0.65, 500) - Excess(0.2, 0.65, 500), "points", Tolerance.AtLeast, 0);
    }

    private static IEnumerable<ValidationRow> Support()
    {
        Source teaching = new("Anaesthesia teaching text, oxygen content: 15 g/dL, 5 L/min, arterial 20.1 and venous 15.2 mL/dL give 1005 and 245 mL/min", Certainty.Seen);
        MembraneLungReadings lung = new(Exact(5)) { HaemoglobinGPerDl = Exact(15), Pre = new(Exact(75), Exact(45)), Post = new(Exact(100), Exact(100)) };
        double transfer = MembraneLungAssessment.Of(lung).OxygenTransferMlPerMin?.Value ?? double.NaN;
        OxygenBudget? budget = OxygenBudgets.Of(new(Exact(15), Exact(5), new(Exact(100), Exact(100)), Exact(245)));
        yield return Row(
            "Oxygen uptake by Fick, 15 g/dL, 75 to 100 % and 45 to 100 mmHg at 5 L/min", teaching, 245, transfer, "mL/min", Tolerance.Relative, 0.08,
            "The text leaves dissolved oxygen out on the arterial side only; that is 15 mL/min.");
        yield return Row("Oxygen delivery, 15 g/dL, saturation 1, 100 mmHg, 5 L/min", teaching, 1005, budget?.DeliveryMlPerMin.Value ?? double.NaN, "mL/min", Tolerance.Relative, 0.02, "The text leaves dissolved oxygen out here.");
        yield return Row("Delivery over consumption from these", teaching, 1005.0 / 245, budget?.DeliveryOverConsumption?.Value ?? double.NaN, "1", Tolerance.Relative, 0.02);
        Source rating = new("1.34·12·0.20·10 mL for a litre of rating blood from 75 to 95 %, by hand", Certainty.ClosedForm);
        MembraneLungReadings rated = new(Exact(1)) { HaemoglobinGPerDl = Exact(12), Pre = new(Exact(75), Exact(40)), Post = new(Exact(95), Exact(40)) };
        yield return Row("Oxygen bound by a litre of rating blood", rating, 32.16, MembraneLungAssessment.Of(rated).OxygenTransferMlPerMin?.Value ?? double.NaN, "mL/min", Tolerance.Absolute, 1e-9);
        Source healthy = new("Lieberman et al. 2000, Anesthesiology 92:407, abstract: 7.3 delivered for 3.2 mL/kg/min consumed without sign of want", Certainty.Seen);
        yield return Row(
            "Ratio of delivery and consumption taken as critical lies below what healthy people bear", healthy, 7.3 / 3.2, OxygenBudgets.CriticalRatio, "1", Tolerance.AtMost, 0);
    }

    private static double Excess(double recirculation, double venous, double postPo2) => 100 * (SaturationMethodBias.VenousSaturationBySaturations(
        recirculation, venous, AssumedHaemoglobin, postPo2, BloodConditions.Standard, BloodConstants.Default) - venous);

    private static double BySaturation(double pre, double venous, double post) => BloodGasRecirculation.BySaturation(
        new(new(Exact(pre)), new(Exact(post)), new(new(Exact(venous)), VenousSite.DrainageWithSweepOff))).Percent?.Value ?? double.NaN;

    private static Estimate Exact(double value) => Estimate.Normal(value, 0, Origin.Measured);

    private static ValidationRow Row(string check, Source source, double expected, double got, string unit, Tolerance tolerance, double bound, string note = "") =>
        new("Course", check, source, expected, got, unit, tolerance, bound, note);
}
