using Cavaxis.Anatomy.Body;
using Cavaxis.Blood.Demand;
using Cavaxis.Blood.Oxygen;
using Cavaxis.Blood.Rheology;
using Cavaxis.Planning.Case;
using Cavaxis.Planning.Plans;
using Cavaxis.Quantities;

namespace Cavaxis.Planning.Needs;

/// <summary>
/// Reads from a case the numbers that planning works with. Where the case is silent, a wide assumption takes its place and
/// is listed as missing; unknown is never taken as normal without saying so.
/// </summary>
public sealed class PatientReading
{
    private const double AssumedHaemoglobinGPerDl = 10;
    private const double AssumedHaemoglobinSd = 2;
    private const double HaematocritPerHaemoglobin = 3.0;
    private const double HighestHaematocritPercent = 75;
    private readonly List<MissingInput> missing = [];

    /// <summary>Reads a case.</summary>
    /// <param name="caseFile">The case.</param>
    public PatientReading(CaseFile caseFile)
    {
        ArgumentNullException.ThrowIfNull(caseFile);
        PatientSection patient = caseFile.Patient;
        Habitus = new BodyHabitus(patient.AgeYears, patient.Sex, patient.HeightCm, patient.WeightKg);
        double bsa = BodySurfaceArea.M2(Habitus);
        Estimate haemoglobin = Given(caseFile.Blood.HaemoglobinGPerDl) ?? Assume(
            "blood.haemoglobinGPerDl", AssumedHaemoglobinGPerDl, AssumedHaemoglobinSd, "g/dL", "oxygen content, flow needed, viscosity");
        Estimate haematocrit = Given(caseFile.Blood.HaematocritPercent) ?? Estimate.Normal(
            haemoglobin.Value * HaematocritPerHaemoglobin, Math.Max(1, haemoglobin.Sd * HaematocritPerHaemoglobin), Origin.Calculated);
        Estimate temperature = Given(caseFile.Blood.TemperatureC) ?? Assume(
            "blood.temperatureC", 37, 0.7, "°C", "oxygen consumption, viscosity");
        double viscosity = BloodViscosity.PascalSeconds(haematocrit.Value / 100, temperature.Value);
        double viscositySd = double.Hypot(
            BloodViscosity.PascalSeconds(AnotherHaematocrit(haematocrit) / 100, temperature.Value) - viscosity,
            viscosity * BloodViscosity.RelativeSd);
        Estimate oxygen;
        Estimate carbonDioxide;
        MetabolicDemand demand = MetabolicDemand.Estimate(patient.AgeYears, bsa, patient.WeightKg, temperature.Value);
        if (Given(caseFile.Blood.OxygenConsumptionMlPerMin) is Estimate measured)
        {
            oxygen = measured;
            double quotient = demand.CarbonDioxideProductionMlPerMin.Value / demand.OxygenConsumptionMlPerMin.Value;
            carbonDioxide = Estimate.Normal(
                quotient * measured.Value, double.Hypot(quotient * measured.Sd, 0.07 * quotient * measured.Value), Origin.Calculated);
        }
        else
        {
            oxygen = demand.OxygenConsumptionMlPerMin;
            carbonDioxide = demand.CarbonDioxideProductionMlPerMin;
            missing.Add(new MissingInput(
                "blood.oxygenConsumptionMlPerMin",
                FormattableString.Invariant($"{oxygen.Value:F0} ± {oxygen.Sd:F0} mL/min from age, size and temperature"),
                "flow needed for oxygen, sweep gas"));
        }

        Picture = new PatientPicture(
            patient.AgeYears,
            patient.HeightCm,
            patient.WeightKg,
            Estimate.Normal(bsa, 0.03 * bsa, Origin.Calculated),
            haemoglobin,
            haematocrit,
            temperature,
            Estimate.Normal(viscosity * 1e3, viscositySd * 1e3, Origin.Calculated),
            CardiacOutput(caseFile, bsa),
            oxygen,
            carbonDioxide,
            Given(caseFile.Heart.MeanArterialPressureMmHg) ?? Assume(
                "heart.meanArterialPressureMmHg", 65, 10, "mmHg", "pressure against which the pump returns to an artery"),
            Given(caseFile.Heart.CentralVenousPressureMmHg) ?? Assume(
                "heart.centralVenousPressureMmHg", 8, 4, "mmHg", "pressure from which the cannula drains"));

        Conditions = new BloodConditions(
            caseFile.Blood.ArterialPh?.Value ?? BloodConditions.StandardPH,
            temperature.Value,
            BloodConditions.StandardDpgMmolPerL,
            caseFile.Blood.ArterialPco2MmHg?.Value ?? BloodConditions.StandardPco2MmHg);
        DensityKgPerM3 = BloodDensity.KgPerM3(haematocrit.Value / 100, temperature.Value);
        OtherMissing(caseFile);
    }

    /// <summary>Size of the patient.</summary>
    public BodyHabitus Habitus { get; }

    /// <summary>The numbers.</summary>
    public PatientPicture Picture { get; }

    /// <summary>Conditions of the blood for the dissociation curve.</summary>
    public BloodConditions Conditions { get; }

    /// <summary>Density of the blood.</summary>
    public double DensityKgPerM3 { get; }

    /// <summary>What the case does not say.</summary>
    public IReadOnlyList<MissingInput> Missing => missing;

    /// <summary>True when the cardiac output comes from this patient and not from an assumption.</summary>
    public bool CardiacOutputKnown { get; private set; }

    /// <summary>A haematocrit one deviation away, on the side that stays within what the viscosity is defined for, percent.</summary>
    private static double AnotherHaematocrit(Estimate haematocrit) => haematocrit.Value + haematocrit.Sd <= HighestHaematocritPercent
        ? haematocrit.Value + haematocrit.Sd
        : Math.Max(0, haematocrit.Value - haematocrit.Sd);

    private static Estimate? Given(Measurement? measurement) => measurement is null
        ? null
        : Estimate.Normal(measurement.Value, measurement.Sd, Origin.Measured);

    private Estimate Assume(string field, double value, double sd, string unit, string matters)
    {
        missing.Add(new MissingInput(field, FormattableString.Invariant($"{value:G4} ± {sd:G3} {unit} (assumption)"), matters));
        return Estimate.Normal(value, sd, Origin.Estimated);
    }

    private Estimate CardiacOutput(CaseFile caseFile, double bsa)
    {
        HeartSection heart = caseFile.Heart;
        if (Given(heart.CardiacOutputLPerMin) is Estimate measured)
        {
            CardiacOutputKnown = true;
            return measured;
        }

        if (heart.LvotDiameterMm is { } lvot && heart.LvotVtiCm is { } vti && heart.RatePerMin is { } rate)
        {
            CardiacOutputKnown = true;

            // π/4 d² · VTI · rate; mm² · cm / 100 = mL, then to litres.
            double output = Math.PI / 4 * lvot.Value * lvot.Value / 100 * vti.Value * rate.Value / 1000;
            double relative = Math.Sqrt(
                Square(2 * lvot.Sd / lvot.Value) + Square(vti.Sd / Math.Max(vti.Value, 1)) + Square(rate.Sd / Math.Max(rate.Value, 1)));
            return Estimate.Normal(output, output * relative, Origin.Calculated);
        }

        if (caseFile.Support.Goal == SupportGoal.Arrest)
        {
            missing.Add(new MissingInput("heart.cardiacOutputLPerMin", "0 L/min (goal is arrest)", "nothing: the plan carries the whole flow"));
            return Estimate.Normal(0, 0, Origin.Estimated);
        }

        bool heartFails = caseFile.Support.Goal is SupportGoal.Circulation or SupportGoal.Both;
        double index = heartFails ? 1.8 : 3.2;
        return Assume("heart.cardiacOutputLPerMin", index * bsa, 0.3 * index * bsa, "L/min", "saturation in veno-venous support, flow needed");
    }

    private static double Square(double x) => x * x;

    private void OtherMissing(CaseFile caseFile)
    {
        if (caseFile.Support.Goal is null)
        {
            missing.Add(new MissingInput("support.goal", "no goal: every configuration is ranked as for circulation", "which configurations make sense"));
        }

        if (caseFile.Vessels.Count == 0)
        {
            missing.Add(new MissingInput("vessels", "population diameters for this body size", "cannula-to-vessel ratio, patency, thrombus"));
        }

        if (caseFile.Axis.Count == 0)
        {
            missing.Add(new MissingInput("axis", "population axis for this body size", "insertion depth, where the ports come to lie"));
        }

        if (caseFile.Blood.ArterialPh is null)
        {
            missing.Add(new MissingInput("blood.arterialPh", "7.40 (standard)", "position of the oxygen dissociation curve"));
        }
    }
}
