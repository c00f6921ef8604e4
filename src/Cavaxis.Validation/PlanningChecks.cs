using Cavaxis.Anatomy.Axis;
using Cavaxis.Anatomy.Body;
using Cavaxis.Anatomy.Conditioning;
using Cavaxis.Anatomy.Population;
using Cavaxis.Anatomy.Sampling;
using Cavaxis.Blood.Oxygen;
using Cavaxis.Planning.Configurations;
using Cavaxis.Planning.Information;
using Cavaxis.Planning.Plans;
using Cavaxis.Planning.Rules;
using Cavaxis.Quantities;

namespace Cavaxis.Validation;

/// <summary>Reference rows of the planning room. What disagrees with practice stands in <c>docs/dual-lumen-by-height.md</c>, not here.</summary>
public sealed class PlanningChecks : IReferenceChecks
{
    private const string NotTuned = "Population values and zones were not tuned to this row; docs/dual-lumen-by-height.md shows where they disagree with practice.";
    private static readonly Source Practice = new(
        "dual-lumen family whose return port lies 94 mm from the tip: a patient of 190 cm is not served, one of average height is", Certainty.CommonPractice);

    /// <inheritdoc/>
    public IEnumerable<ValidationRow> Rows() => [.. DualLumen(), .. Limits(), .. Flows(), .. Information()];

    private static IEnumerable<ValidationRow> DualLumen()
    {
        foreach (DualLumenSetting setting in new[] { DualLumenSetting.Low, DualLumenSetting.Mid, DualLumenSetting.Unknown })
        {
            yield return Row(
                $"Every port of the dual-lumen device in its zone at 190 cm, {setting.Name}", Practice, 0.5,
                DualLumenByHeight.Probability(setting, DualLumenByHeight.TallHeightCm), "1", Tolerance.AtMost, 0, NotTuned);
        }

        yield return Row(
            "Every port of the dual-lumen device in its zone at 172 cm, low entry, tip 30 to 80 mm", Practice, 0.5,
            DualLumenByHeight.Probability(DualLumenSetting.Low, DualLumenByHeight.AverageHeightCm), "1", Tolerance.AtLeast, 0, NotTuned);
        yield return Row(
            "Height at which that falls under one half, low entry, tip 30 to 80 mm", Practice, 181,
            DualLumenByHeight.CrossingHeightCm(DualLumenSetting.Low) ?? double.NaN, "cm", Tolerance.Absolute, 9,
            "Between the average and the height that practice does not serve, so the middle of the two and half their distance.");
    }

    private static IEnumerable<ValidationRow> Limits()
    {
        Source vein = new("cannula at most about two thirds to four fifths of the vessel", Certainty.CommonPractice);
        Source artery = new("clinical reviews: at most about 60 to 80 % of the lumen", Certainty.FromMemory);
        RuleBook book = RuleBookReader.BuiltIn;
        yield return Row(
            "Cannula to vein from which the plan cautions", vein, 2.2 / 3, book[LimitName.CannulaToVeinCaution], "1", Tolerance.Absolute, 0.2 / 3,
            "Middle of two thirds and four fifths.");
        yield return Row(
            "Cannula to vein that is not planned", new("four fifths to nine tenths of a measured diameter", Certainty.CommonPractice), 0.85,
            book[LimitName.CannulaToVeinStop], "1", Tolerance.Absolute, 0.0501, "Middle of the two; four fifths and more is only cautioned against.");
        yield return Row(
            "Cannula to artery from which the plan warns", artery, 0.7, book[LimitName.CannulaToArteryCaution], "1", Tolerance.Absolute, 0.1);
        yield return Row(
            "Cannula to artery that is not planned", new("a cannula is narrower than the vessel it enters", Certainty.Derived), 1,
            book[LimitName.CannulaToArteryStop], "1", Tolerance.AtMost, 0);
    }

    private static IEnumerable<ValidationRow> Flows()
    {
        CannulationPlan[] venous = [.. SampleCases.Plan(SampleCases.LungFailure).Plans.Where(
            plan => plan.Configuration == ConfigurationKind.VvFemoralJugular)];
        CannulationPlan best = venous[0];
        yield return Row(
            "Widest cannula of the first femoro-jugular plan of an average man, to its vein", new(
                "cannula at most about two thirds to four fifths of the vessel", Certainty.CommonPractice), 0.8,
            best.Cannulae.Max(c => c.CannulaToVessel.Value), "1", Tolerance.AtMost, 0);
        Source mixing = new(
            "separate calculation: venous and pump blood mixed turn by turn until nothing changes, oxygen conserved", Certainty.ClosedForm);
        yield return Row(
            "Saturation after mixing turn by turn at the flow planned for 90 %, recirculation half of Q/(Q + CO)", mixing, 90,
            SaturationByMixing(best.Flow.Candidates[0].FlowLPerMin), "%", Tolerance.Absolute, 0.05,
            "Guards the quadratic for the flow and the closed oxygen balance together.");
        CannulationPlan arterial = SampleCases.Plan(SampleCases.HeartFailure).Plans.First(
            plan => plan.Configuration == ConfigurationKind.VaFemoralWithDistalPerfusion);
        yield return Row(
            "Veno-arterial flow for 2.4 L/min/m² at 172 cm and 71 kg", new("index times Mosteller surface, by hand", Certainty.ClosedForm),
            2.4 * 1.84179, arterial.Flow.FlowLPerMin.Value, "L/min", Tolerance.Relative, 1e-4);
    }

    private static IEnumerable<ValidationRow> Information()
    {
        Source gaussian = new("law of total variance for two Gaussians: reduction = sd²/(sd² + error²)", Certainty.ClosedForm);
        AxisDistribution belief = PopulationModel.For(new BodyHabitus(45, Sex.Male, 172, 71), NeckEntry.LowNeck);
        const int Count = 20_000;
        double[] bends = AxisSampler.Draw(belief, Count, 3)[AxisDimension.CavalBendSagittal].ToArray();
        double[] other = AxisSampler.Draw(belief, Count, 4)[AxisDimension.CavalBendSagittal].ToArray();
        double mean = belief.Median(AxisDimension.CavalBendSagittal);
        double sd = belief.LatentSd(AxisDimension.CavalBendSagittal);
        foreach (double error in new[] { 4.0, 10, 20 })
        {
            double[] readings = [.. bends.Select((bend, i) => bend + (error / sd * (other[i] - mean)))];
            (double now, double after) = ValueOfInformation.ExpectedVariance(readings, (double[])bends.Clone());
            yield return Row(
                BloodChecks.Text($"Share of the variance of an angle that reading it with an error of {error} degrees removes"), gaussian,
                sd * sd / ((sd * sd) + (error * error)), 1 - (after / now), "1", Tolerance.Absolute, 0.02,
                "Twenty thousand samples in forty bins.");
        }

        foreach (double depthMm in SampleCases.NeckDepthsMm)
        {
            MeasurementValue[] axis = SampleCases.AxisMeasurements(depthMm);
            yield return Row(
                BloodChecks.Text($"Axis measurements worth more than the atrial span at 165 cm, depth from the neck measured as {depthMm} mm (sd 4 mm)"),
                new(
                    "geometry: tip and return port are a fixed 94 mm apart, and the span is the only length between their landmarks", Certainty.Derived),
                0, Array.FindIndex(axis, value => value.Dimension == AxisDimension.AtrialSpan), "1", Tolerance.Absolute, 0,
                "Vessel diameters are not of the axis. The caval bend ranks low here: docs/dual-lumen-by-height.md says why.");
        }
    }

    /// <summary>Written apart from the engine: only the dissociation curve and the content are shared.</summary>
    private static double SaturationByMixing(double flow)
    {
        const double Output = 6;
        const double Consumption = 250;
        const double Haemoglobin = 12;
        double post = OxygenContent.FromPo2(
            Haemoglobin, RuleBookReader.BuiltIn[LimitName.PostMembranePo2MmHg], BloodConditions.Standard, BloodConstants.Default);
        double effective = flow * (1 - (0.5 * flow / (flow + Output)));
        double arterial = post;
        for (int turn = 0; turn < 2000; turn++)
        {
            double venous = arterial - (Consumption / (10 * Output));
            arterial = ((effective * post) + ((Output - effective) * venous)) / Output;
        }

        return 100 * OxygenContent.SaturationAt(arterial, Haemoglobin, BloodConditions.Standard, BloodConstants.Default);
    }

    private static ValidationRow Row(
        string check, Source source, double expected, double got, string unit, Tolerance tolerance, double bound, string note = "") =>
        new("Planning", check, source, expected, got, unit, tolerance, bound, note);
}
