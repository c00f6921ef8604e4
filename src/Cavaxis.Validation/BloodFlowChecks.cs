using Cavaxis.Blood.Demand;
using Cavaxis.Blood.Mixing;
using Cavaxis.Blood.Oxygen;
using Cavaxis.Blood.Rheology;
using Cavaxis.Quantities;
using static Cavaxis.Validation.BloodChecks;

namespace Cavaxis.Validation;

/// <summary>Viscosity, density, water, mixing, veno-venous balance and metabolic demand.</summary>
internal static class BloodFlowChecks
{
    private static readonly BloodConditions Standard = BloodConditions.Standard;

    internal static IEnumerable<ValidationRow> Rows() =>
    [
        .. Viscosity(), .. Density(), .. Water(), .. Mixing(), .. VenoVenous(), .. Demand(),
    ];

    private static IEnumerable<ValidationRow> Viscosity()
    {
        Source people = new(
            "Wesołowski and Młyńczak 2019, 30 healthy people: 3.352 (SD 0.360) mPa s at 37 °C", Certainty.Seen);
        Source line = new("Lichtman 1982 and 1987, line through points read from diagrams", Certainty.SeenSecondHand);
        Source eckmann = new("Eckmann et al. 2000, Anesth Analg 91:539: +50 to +300 % from 37 to 22 °C", Certainty.Seen);
        yield return Row(
            "Viscosity at haematocrit 0.43 (assumed for healthy people), 37 °C", people, 3.352,
            1000 * BloodViscosity.PascalSeconds(0.43, 37), "mPa s", Tolerance.Absolute, 0.360,
            "One standard deviation between people.");
        foreach (double h in new[] { 0.25, 0.30, 0.40, 0.45 })
        {
            yield return Row(
                Text($"Viscosity at haematocrit {h}, 37 °C"), line, Math.Pow(10, (1.138 * h) + 0.03699),
                1000 * BloodViscosity.PascalSeconds(h, 37), "mPa s", Tolerance.Relative, BloodViscosity.RelativeSd);
        }

        yield return Row(
            "Viscosity at 22 °C over that at 37 °C", eckmann, 1.5,
            BloodViscosity.PascalSeconds(0.35, 22) / BloodViscosity.PascalSeconds(0.35, 37), "1", Tolerance.AtLeast, 0,
            "High shear lies at the low end of the published range.");
        yield return Row(
            "Relative viscosity in a wide tube, haematocrit 0.45",
            new("Pries et al. 1992, large-tube limit", Certainty.Derived), 3.2,
            MicrovascularViscosity.Relative(0.45, 2000), "1", Tolerance.Absolute, 0.01);
        yield return Row(
            "Relative viscosity at its smallest, 7 µm, haematocrit 0.45",
            new("Pries et al. 1992, minimum of the Fåhræus-Lindqvist effect", Certainty.FromMemory), 1.25,
            MicrovascularViscosity.Relative(0.45, 7), "1", Tolerance.Absolute, 0.05);
    }

    private static IEnumerable<ValidationRow> Density()
    {
        yield return Row(
            "Density of blood, haematocrit 0.45, 37 °C",
            new("Physics text, whole blood at 37 °C", Certainty.SeenSecondHand), 1060, BloodDensity.KgPerM3(0.45, 37),
            "kg/m³", Tolerance.Relative, 0.015);
        yield return Row(
            "Density of blood, haematocrit 0.43 (assumed for healthy people), 37 °C",
            new("Wesołowski and Młyńczak 2019, 30 healthy people", Certainty.Seen), 1063.56,
            BloodDensity.KgPerM3(0.43, 37), "kg/m³", Tolerance.Relative, 0.015);
        yield return Row(
            "Density of plasma, 37 °C", new("Physics text", Certainty.SeenSecondHand), 1025,
            BloodDensity.KgPerM3(0, 37), "kg/m³", Tolerance.Relative, 0.01);
        yield return Row(
            "Density of plasma at 4 °C less that at 37 °C",
            new("Trudnowski and Rico 1974, Clin Chem 20:615", Certainty.Seen), 10.5,
            BloodDensity.KgPerM3(0, 4) - BloodDensity.KgPerM3(0, 37), "kg/m³", Tolerance.Absolute, 0.01,
            "The model is built on this source: the row guards the arithmetic.");
    }

    private static IEnumerable<ValidationRow> Water()
    {
        Source handbook = new("Chemical engineering handbook, saturated water, table 2-135", Certainty.Seen);
        foreach ((double kelvin, double mol, double micro) in BloodReferenceTables.Water)
        {
            yield return Row(
                Text($"Viscosity of water at {kelvin} K"), handbook, micro,
                1e6 * WaterProperties.ViscosityPascalSeconds(kelvin - 273.15), "µPa s", Tolerance.Relative, 0.002);
            yield return Row(
                Text($"Density of water at {kelvin} K"), handbook, mol * 18.015268,
                WaterProperties.DensityKgPerM3(kelvin - 273.15), "kg/m³", Tolerance.Relative, 0.0002,
                "Saturation pressure against one atmosphere: 0.00005.");
        }

        yield return Row(
            "Viscosity of water at 20 °C", new("University table of water properties", Certainty.Seen), 1.002,
            1000 * WaterProperties.ViscosityPascalSeconds(20), "mPa s", Tolerance.Relative, 0.001);
        yield return Row(
            "Density of water at 37 °C",
            new(
                "International Critical Tables, as reprinted in an engineering encyclopaedia",
                Certainty.SeenSecondHand),
            993.36, WaterProperties.DensityKgPerM3(37), "kg/m³", Tolerance.Relative, 0.0001);
    }

    private static IEnumerable<ValidationRow> Mixing()
    {
        MixedBlood mixed = BloodMixing.Mix([new(3, 12, 17), new(2, 9, 10)], Standard, BloodConstants.Default);
        yield return Row(
            "Mixed oxygen content of 3 L/min at 17 and 2 L/min at 10 mL/dL", Closed, 14.2, mixed.OxygenContentMlPerDl,
            "mL/dL", Tolerance.Relative, 1e-12);
        yield return Row(
            "Mixed haemoglobin of 3 L/min at 12 and 2 L/min at 9 g/dL", Closed, 10.8, mixed.HaemoglobinGPerDl, "g/dL",
            Tolerance.Relative, 1e-12);
        yield return Row(
            "Content rebuilt from the mixed saturation and tension", Closed, 14.2,
            OxygenContent.MlPerDl(10.8, mixed.Saturation, mixed.Po2MmHg, BloodConstants.Default), "mL/dL",
            Tolerance.Relative, 1e-12);
    }

    private static IEnumerable<ValidationRow> VenoVenous()
    {
        Source algebra = new(
            "Separate calculation with the balance Ca = Cpost − VO2 (1/Qe − 1/CO), 0.003 mL/dL/mmHg, 300 mmHg after the membrane",
            Certainty.Derived);
        Source study = new(
            "Schmidt et al. 2013, Intensive Care Med 39:838: flow above 60 % of cardiac output gave saturation above 90 %; "
            + "conditions of the study not seen",
            Certainty.FromMemory);
        foreach ((double hb, double vo2, double output, double share, double percent) in new[]
        {
            (10.0, 250.0, 10.0, 0.6, 92.8), (12.0, 200.0, 6.0, 0.6, 90.7), (10.0, 250.0, 6.0, 0.6, 84.9),
            (8.0, 250.0, 6.0, 0.6, 81.2), (12.0, 250.0, 10.0, 0.8, 99.1), (8.0, 200.0, 6.0, 0.4, 60.9),
        })
        {
            yield return Row(
                Text($"Arterial saturation without native lung: {hb} g/dL, {vo2} mL/min, {output} L/min, effective flow {share} of it"),
                algebra, percent / 100, SaturationOnSupport(hb, vo2, output, share), "1", Tolerance.Absolute, 0.0055,
                "Worked with the 1979 equation without correction, which is allowed 0.0055 of saturation.");
        }

        yield return Row(
            "Arterial saturation at effective flow 0.6 of a cardiac output of 10 L/min, 10 g/dL, 250 mL/min, no native lung",
            study, 0.90, SaturationOnSupport(10, 250, 10, 0.6), "1", Tolerance.AtLeast, 0, "Assumed conditions.");
        yield return Row(
            "The same at a cardiac output of 6 L/min", study, 0.90, SaturationOnSupport(10, 250, 6, 0.6), "1",
            Tolerance.AtMost, 0,
            "The rule is not universal: at this extraction it needs a native lung or more haemoglobin.");
    }

    private static IEnumerable<ValidationRow> Demand()
    {
        double adult = MetabolicDemand.Estimate(50, 1.9, 80, 37).OxygenConsumptionMlPerMin.Value;
        double child = MetabolicDemand.Estimate(5, 0.75, 18, 37).OxygenConsumptionMlPerMin.Value / 18;
        double newborn = MetabolicDemand.Estimate(0, 0.22, 3.5, 37).OxygenConsumptionMlPerMin.Value / 3.5;
        double ratio = MetabolicDemand.Estimate(50, 1.9, 80, 39).OxygenConsumptionMlPerMin.Value
            / MetabolicDemand.Estimate(50, 1.9, 80, 33).OxygenConsumptionMlPerMin.Value;
        double sd = MetabolicDemand.RelativeSd;
        yield return Row(
            "Oxygen consumption of an adult of 1.9 m² (assumed)",
            new("Adults on extracorporeal support, 52 patients, 1523 kcal/day", Certainty.Derived), 217, adult,
            "mL/min", Tolerance.Relative, sd);
        yield return Row(
            "Oxygen consumption of an adult of 1.9 m² (assumed)",
            new("Critically ill adults, 31 patients, Clin Nutr 1989;8:89, calorimetry", Certainty.Seen), 287, adult,
            "mL/min", Tolerance.Relative, sd);
        yield return Row(
            "Oxygen consumption of a child of 5 years",
            new("Seear et al., children after heart surgery", Certainty.Seen), 4.3, child, "mL/min/kg",
            Tolerance.Absolute, 0.8, "One published standard deviation.");
        yield return Row(
            "Oxygen consumption of a newborn", new("Evans et al. 1978, Arch Dis Child 53:330", Certainty.Seen), 6.52,
            newborn, "mL/min/kg", Tolerance.Relative, sd);
        yield return Row(
            "Oxygen consumption at 39 °C over that at 33 °C",
            new("Sheep on bypass: 5.33 and 3.17 mL/kg/min", Certainty.Seen), 5.33 / 3.17, ratio, "1",
            Tolerance.Relative, 0.10);
    }

    private static double SaturationOnSupport(double hb, double vo2, double output, double share)
    {
        BloodConstants k = new() { OxygenSolubilityMlPerDlPerMmHg = 0.003 };
        double post = OxygenContent.MlPerDl(hb, 1, 300, k);
        double arterial = VenoVenousSupport.Balance(share * output, output, post, vo2).ArterialContentMlPerDl;
        return OxygenContent.SaturationAt(arterial, hb, Standard, k);
    }
}
