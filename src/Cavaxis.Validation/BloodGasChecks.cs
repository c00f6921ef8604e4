using Cavaxis.Blood.CarbonDioxide;
using Cavaxis.Blood.Demand;
using Cavaxis.Blood.Oxygen;
using Cavaxis.Quantities;
using static Cavaxis.Validation.BloodChecks;

namespace Cavaxis.Validation;

/// <summary>Dissociation curve, its shifts and inverses, oxygen and carbon dioxide contents.</summary>
internal static class BloodGasChecks
{
    private const double MmHgPerKPa = 1000 / UnitFactors.PascalsPerMmHg;

    private static readonly BloodConditions Standard = BloodConditions.Standard;

    private static readonly Source Severinghaus =
        new("Severinghaus 1979, J Appl Physiol 46:599, table 1, as transcribed in a public code", Certainty.SeenSecondHand);

    private static readonly Source Douglas =
        new(
            "Douglas, Jones, Reed 1988, J Appl Physiol 65:473, table 3, as transcribed in a public data file",
            Certainty.SeenSecondHand);

    internal static IEnumerable<ValidationRow> Rows() =>
    [
        .. Dissociation(), .. Inverse(), .. Shifts(), .. OxygenContents(), .. CarbonDioxideContents(),
    ];

    private static IEnumerable<ValidationRow> Dissociation()
    {
        double all = 0;
        double working = 0;
        int count = 0;
        double heldOut = 0;
        for (int i = 0; i < BloodReferenceTables.Dissociation.Length; i++)
        {
            (double po2, double percent) = BloodReferenceTables.Dissociation[i];
            bool fitted = i % 2 == 0;
            double got = OxygenDissociation.SaturationAt(po2, Standard);
            double off = Math.Abs(got - (percent / 100));
            all += off;
            if (po2 < 10)
            {
                continue;
            }

            if (po2 <= 150)
            {
                working += off;
                count++;
                heldOut = fitted ? heldOut : Math.Max(heldOut, off);
            }

            yield return Row(
                Text($"Saturation at PO2 {po2} mmHg, standard blood"), Severinghaus, percent / 100, got, "1",
                Tolerance.Absolute, 0.003,
                fitted
                    ? "The correction of the curve was fitted to this point among others; the author's own equation is allowed 0.0055."
                    : "Held out: the correction of the curve was not fitted to this point.");
        }

        yield return Row(
            "Largest difference from the held-out measured points, 10 to 150 mmHg", Severinghaus, 0.003, heldOut, "1",
            Tolerance.AtMost, 0, "The points between those that the correction was fitted to.");

        yield return Row(
            "Mean absolute difference from all 51 measured points", Severinghaus, 0.0026,
            all / BloodReferenceTables.Dissociation.Length, "1", Tolerance.AtMost, 0, "The author states 0.0026 for his equation; the correction must not make it worse.");
        yield return Row(
            "Mean absolute difference from the measured points, 10 to 150 mmHg", Severinghaus, 0.003, working / count, "1",
            Tolerance.AtMost, 0);
        yield return Row(
            "P50 of standard blood", Severinghaus, 26 + (2 * (50 - 48.27) / (53.16 - 48.27)),
            OxygenDissociation.P50MmHg(Standard), "mmHg", Tolerance.Absolute, 0.3, "Straight line between table points 26 and 28 mmHg.");
    }

    private static IEnumerable<ValidationRow> Inverse()
    {
        Source ellis = new(
            "Ellis 1989, J Appl Physiol 67:902: Cardano's root of the 1979 equation", Certainty.SeenSecondHand);
        Source approximate = new(
            "Severinghaus 1979, J Appl Physiol 46:599, equation 2 (approximate inverse)", Certainty.Seen);
        foreach (double s in new[] { 0.1, 0.5, 0.75, 0.9 })
        {
            double a = 11700 / ((1 / s) - 1);
            double b = Math.Sqrt(125000 + (a * a));
            yield return Row(
                Text($"PO2 at saturation {s} against Cardano's root"), ellis, Math.Cbrt(a + b) - Math.Cbrt(b - a),
                OxygenDissociation.Po2At(s, Standard), "mmHg", Tolerance.Relative, 0.04,
                "The root of the published equation without the correction: how far the correction moves the tension.");
        }

        foreach (double s in new[] { 0.25, 0.5, 0.75, 0.9 })
        {
            double ln = (0.385 * Math.Log(s / (1 - s))) + 3.32 - (1 / (72 * s)) - (0.17 * Math.Pow(s, 6));
            yield return Row(
                Text($"PO2 at saturation {s} against the published approximate inverse"), approximate, Math.Exp(ln),
                OxygenDissociation.Po2At(s, Standard), "mmHg", Tolerance.Relative, 0.015,
                "The published inverse is itself approximate; it is not used.");
        }

        double worst = 0;
        for (double po2 = 1; po2 <= 700; po2 += 1)
        {
            BloodConditions c = new(7.25, 34, 3, 55);
            double s = OxygenDissociation.SaturationAt(po2, c);
            worst = Math.Max(worst, Math.Abs((OxygenDissociation.Po2At(s, c) / po2) - 1));
            double content = OxygenContent.FromPo2(9, po2, c, BloodConstants.Default);
            worst = Math.Max(worst, Math.Abs((OxygenContent.Po2At(content, 9, c, BloodConstants.Default) / po2) - 1));
        }

        yield return Row(
            "Largest relative error of PO2 from saturation and from content, there and back, 1 to 700 mmHg", Closed, 1e-9,
            worst, "1", Tolerance.AtMost, 0);
    }

    private static IEnumerable<ValidationRow> Shifts()
    {
        Source samaja = new("Samaja et al. 1983, Clin Chem 29:110, abstract", Certainty.Seen);
        Source siggaard = new("Siggaard-Andersen et al. 1984, Clin Chem 30:1646, abstract", Certainty.Seen);
        Source variable = new("Severinghaus 1979, J Appl Physiol 46:599, equations 3 and 4 at 26.6 mmHg", Certainty.Seen);
        double temperature = Log10P50(new(7.4, 37.5)) - Log10P50(new(7.4, 36.5));
        double fixedAcid = (Log10P50(new(7.5)) - Log10P50(new(7.3))) / 0.2;
        double low = BaseExcess.PhAt(60, 0, 15, 1);
        double high = BaseExcess.PhAt(30, 0, 15, 1);
        double carbonDioxide = (Log10P50(new(high, pco2MmHg: 30)) - Log10P50(new(low, pco2MmHg: 60))) / (high - low);
        double anaerobic = Math.Log(10)
            * (Log10P50(new(7.4 - 0.0147, 38, pco2MmHg: 40 * Math.Pow(10, 0.019))) - Log10P50(new(7.4)));

        yield return Row(
            "Change of log10 P50 for one degree, constant pH", samaja, 2150 / (310.15 * 310.15), temperature, "1/°C",
            Tolerance.Relative, 0.10, "The published −2138 to −2162 K about 37 °C.");
        yield return Row(
            "Change of log10 P50 for one degree, constant pH", siggaard, 0.055 / Math.Log(10), temperature, "1/°C",
            Tolerance.Relative, 0.01);
        yield return Row(
            "Change of log10 P50 for one pH unit, constant PCO2", samaja, -0.36, fixedAcid, "1", Tolerance.Absolute,
            0.05, "Published 0.39 at 19 °C to 0.35 at 43 °C, straight line to 37 °C.");
        yield return Row(
            "Change of log10 P50 for one pH unit moved by carbon dioxide at base excess 0", variable,
            (1 - 2.2) / Math.Log(10), carbonDioxide, "1", Tolerance.Absolute, 0.06);
        yield return Row(
            "Change of log10 P50 for one pH unit moved by carbon dioxide at base excess 0", siggaard,
            -1.04 / Math.Log(10), carbonDioxide, "1", Tolerance.Absolute, 0.06);
        yield return Row(
            "Change of ln P50 for one degree in a sealed sample (pH −0.0147, log10 PCO2 +0.019 for one degree, from memory)",
            variable with { Certainty = Certainty.FromMemory }, (0.058 / ((0.243 * Math.Pow(0.266, 3.88)) + 1)) + 0.013, anaerobic, "1/°C",
            Tolerance.Relative, 0.05, "Shows that the two published temperature coefficients agree once the pH is let go.");
    }

    private static IEnumerable<ValidationRow> OxygenContents()
    {
        BloodConstants emergency = new() { OxygenSolubilityMlPerDlPerMmHg = 0.023 / MmHgPerKPa };
        BloodConstants postgraduate = new() { HuefnerMlPerG = 1.39, OxygenSolubilityMlPerDlPerMmHg = 0.0225 / MmHgPerKPa };
        Source examples = new(
            "Emergency medicine teaching page, oxygen in human physiology, worked examples", Certainty.Seen);
        Source delivery = new("Postgraduate Medical Journal, table of oxygen delivery in a 70 kg man", Certainty.Seen);
        Source teaching = new("Anaesthesia teaching text on oxygen content, worked example", Certainty.Seen);
        foreach ((double s, double kPa, double expected, double bound) in new[]
        {
            (0.97, 10.0, 197, 0.5), (1.0, 50.0, 212.5, 0.05), (0.57, 4.5, 116, 0.5),
        })
        {
            yield return Row(
                Text($"Oxygen content, 15 g/dL, saturation {s}, {kPa} kPa"), examples, expected,
                10 * OxygenContent.MlPerDl(15, s, kPa * MmHgPerKPa, emergency), "mL/L", Tolerance.Absolute, bound, "The source rounds.");
        }

        double arterial = OxygenContent.MlPerDl(14, 0.98, 13.3 * MmHgPerKPa, postgraduate);
        yield return Row(
            "Oxygen content, 14 g/dL, saturation 0.98, 13.3 kPa, 1.39 mL/g", delivery, 19.4, arterial, "mL/dL",
            Tolerance.Absolute, 0.05);
        yield return Row(
            "Oxygen delivery of that blood at 4.9 L/min", delivery, 950.6,
            new OxygenBalance(arterial, 4.9, 250).DeliveryMlPerMin, "mL/min", Tolerance.Relative, 0.002,
            "The source multiplies the rounded content.");
        yield return Row(
            "Arterial content, 15 g/dL, saturation 1, 13.3 kPa", teaching, 20.4,
            OxygenContent.MlPerDl(15, 1, 13.3 * MmHgPerKPa, BloodConstants.Default), "mL/dL", Tolerance.Absolute, 0.05);
        yield return Row(
            "Venous content, 15 g/dL, saturation 0.75, 6 kPa", teaching, 15.2,
            OxygenContent.MlPerDl(15, 0.75, 6 * MmHgPerKPa, BloodConstants.Default), "mL/dL", Tolerance.Absolute, 0.05);
        yield return Row(
            "Venous content by Fick: arterial 20.1 mL/dL, 5 L/min, consumption 245 mL/min", teaching, 15.2,
            new OxygenBalance(20.1, 5, 245).VenousContentMlPerDl, "mL/dL", Tolerance.Absolute, 1e-9);
    }

    private static IEnumerable<ValidationRow> CarbonDioxideContents()
    {
        Source package = new(
            "Unit tests of a public physiology package: 0.867593 × 54.803778 mL/dL", Certainty.SeenSecondHand);
        Source text = new("Respiratory text: arterial 48, venous 52 volumes percent", Certainty.SeenSecondHand);
        Source siggaard = new(
            "Paediatric hospital page after Siggaard-Andersen 1971: 0.9287 (HCO3 − 24.4 + 14.83 (pH − 7.4))",
            Certainty.Seen);
        double plasma = 0;
        double sum = 0;
        double squares = 0;
        double largest = 0;
        int n = BloodReferenceTables.CarbonDioxide.Length;
        foreach (var (pH, hb, percent, blood, pco2, published) in BloodReferenceTables.CarbonDioxide)
        {
            plasma = Math.Max(plasma, Math.Abs(CarbonDioxideContent.PlasmaMlPerDl(pco2, pH, 37) - published));
            double off = CarbonDioxideContent.MlPerDl(pco2, pH, hb, percent / 100, 37) - blood;
            sum += off;
            squares += off * off;
            largest = Math.Max(largest, Math.Abs(off));
        }

        double mean = sum / n;
        yield return Row(
            "Largest difference from the authors' 38 plasma contents", Douglas, 0.005, plasma, "mL/dL",
            Tolerance.AtMost, 0, "Half the last printed digit.");
        yield return Row(
            "Mean difference from 38 measured blood contents", Douglas, 0.02, mean, "mL/dL", Tolerance.Absolute,
            2 * 1.19 / Math.Sqrt(n), "The authors state 0.02 for all nine men; two standard errors.");
        yield return Row(
            "Standard deviation of that difference", Douglas, 1.19, Math.Sqrt((squares - (n * mean * mean)) / (n - 1)),
            "mL/dL", Tolerance.AtMost, 0, "The authors state 1.19.");
        yield return Row(
            "Largest of those differences", Douglas, 3 * 1.19, largest, "mL/dL", Tolerance.AtMost, 0,
            "Three of the authors' standard deviations.");
        yield return Row(
            "Content at 5 kPa, pH 7.40, 10 g/dL, saturation 0.9", package, 0.867593 * 54.803778,
            CarbonDioxideContent.MlPerDl(5 * MmHgPerKPa, 7.4, 10, 0.9, 37), "mL/dL", Tolerance.Absolute, 0.001);
        yield return Row(
            "Arterial content at 40 mmHg, pH 7.40, 15 g/dL, saturation 0.97", text, 48,
            CarbonDioxideContent.MlPerDl(40, 7.4, 15, 0.97, 37), "mL/dL", Tolerance.Absolute, 2 * 1.19,
            "Two standard deviations of the equation.");
        yield return Row(
            "Venous content at 46 mmHg, pH 7.37, 15 g/dL, saturation 0.75", text, 52,
            CarbonDioxideContent.MlPerDl(46, 7.37, 15, 0.75, 37), "mL/dL", Tolerance.Absolute, 2 * 1.19,
            "Two standard deviations of the equation.");
        yield return Row(
            "Base excess at pH 7.25, PCO2 40 mmHg, 5 g/dL", siggaard,
            0.9287 * ((0.03 * 40 * Math.Pow(10, 1.15)) - 24.4 - (14.83 * 0.15)), BaseExcess.MmolPerL(7.25, 40, 5, 1),
            "mmol/L", Tolerance.Absolute, 1, "The equations differ by up to 1 mmol/L by their authors' own account.");
    }

    private static double Log10P50(in BloodConditions c) => Math.Log10(OxygenDissociation.P50MmHg(c));
}
