using Cavaxis.Blood.CarbonDioxide;
using Cavaxis.Blood.Oxygen;
using Cavaxis.Devices.Catalogue;
using Cavaxis.Planning.Case;
using Cavaxis.Planning.Needs;
using Cavaxis.Quantities;
using Cavaxis.Quantities.Faults;
using static Cavaxis.Circulation.Parameters.CirculationParameter;

namespace Cavaxis.Planning.Running;

/// <summary>
/// Turns a case into the numbers of the circulation (docs/models/circulation-from-case.md). What the case gives is taken; what it does not give
/// is a stated assumption, never normal in silence.
/// </summary>
public static class CirculationFromCase
{
    private const double HighestContentPH = 7.7;
    private const double LargestBaseExcess = 30;
    private const double RestingSaturation = 0.75;

    /// <summary>Reads a case.</summary>
    /// <param name="file">The case.</param>
    /// <param name="catalogue">Devices that the running section may name.</param>
    /// <returns>Numbers, assumptions, fits and readings.</returns>
    /// <exception cref="InputFaultException">A number lies outside what the circulation describes, or a device is not in the catalogue.</exception>
    public static CirculationSetup Read(CaseFile file, DeviceCatalogue catalogue)
    {
        ArgumentNullException.ThrowIfNull(file);
        ArgumentNullException.ThrowIfNull(catalogue);
        PatientReading reading = new(file);
        ParameterBook book = new(CirculatoryMass.Kg(reading.Habitus));
        CarbonDioxideFit curve = Blood(file, reading, book);
        HeartFromCase.Read(file, reading, book);
        LungFromCase.Read(file, reading, book);
        CircuitParts? circuit = CircuitFromCase.Read(file, catalogue, reading, book);
        book.Assume(
            "blood volume", FormattableString.Invariant($"{book.Parameters[BloodVolumeMl]:F0} mL, from age, sex, height and weight"),
            "filling pressures; depletion or overload are not known");
        return new CirculationSetup(
            book.Parameters, book.Origins, book.Assumed, book.NotChecked, curve, circuit,
            ObservationsFromCase.Read(file, book.Parameters.MassKg, circuit?.PumpReferenceSpeedPerMin));
    }

    private static CarbonDioxideFit Blood(CaseFile file, PatientReading reading, ParameterBook book)
    {
        foreach (Plans.MissingInput missing in reading.Missing.Where(static m => m.Field.StartsWith("blood.", StringComparison.Ordinal)))
        {
            book.Assume(missing);
        }

        PatientPicture picture = reading.Picture;
        double haemoglobin = picture.HaemoglobinGPerDl.Value;
        book.Take(HaemoglobinGPerDl, haemoglobin, "blood.haemoglobinGPerDl", picture.HaemoglobinGPerDl.Origin);

        // The factor from a tension to the virtual one is the ratio of the half-saturation tensions, since the curve keeps its form.
        double shift = OxygenDissociation.P50MmHg(BloodConditions.Standard) / OxygenDissociation.P50MmHg(reading.Conditions);
        book.Take(VirtualPo2Factor, shift, "blood.temperatureC, blood.arterialPh, blood.arterialPco2MmHg", Origin.Calculated);
        book.Take(OxygenConsumptionMlPerMin, picture.OxygenConsumptionMlPerMin.Value, "blood.oxygenConsumptionMlPerMin", picture.OxygenConsumptionMlPerMin.Origin);
        book.Take(CarbonDioxideProductionMlPerMin, picture.CarbonDioxideProductionMlPerMin.Value, "blood.oxygenConsumptionMlPerMin", Origin.Calculated);

        double excess = 0;
        if (file.Blood is { ArterialPh: { } pH, ArterialPco2MmHg: { } pco2 })
        {
            double saturation = (file.Blood.ArterialSaturationPercent?.Value ?? 100 * RestingSaturation) / 100;
            excess = Math.Clamp(
                BaseExcess.MmolPerL(Math.Min(pH.Value, HighestContentPH), pco2.Value, haemoglobin, saturation), -LargestBaseExcess, LargestBaseExcess);
        }
        else
        {
            book.Assume("blood.arterialPh, blood.arterialPco2MmHg", "a base excess of 0 mmol/L", "carbon dioxide content at a tension");
        }

        CarbonDioxideFit curve = CarbonDioxideCurve.Fit(haemoglobin, excess);
        const string Field = "blood.arterialPh, blood.arterialPco2MmHg";
        book.Take(CarbonDioxideScale, curve.Scale, Field, Origin.Calculated);
        book.Take(CarbonDioxideExponent, curve.Exponent, Field, Origin.Calculated);
        book.Take(HaldaneFactor, curve.Haldane, Field, Origin.Calculated);
        return curve;
    }
}
