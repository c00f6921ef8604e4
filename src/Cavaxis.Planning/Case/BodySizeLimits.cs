using System.Globalization;
using Cavaxis.Planning.Json;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Planning.Case;

/// <summary>
/// Age, height and weight that no person has together: months written as years, inches, grams. The limits lie far
/// outside growth charts (about eight standard deviations; assumption of this project), so that a very small or very
/// large patient passes.
/// </summary>
internal static class BodySizeLimits
{
    // Age in years, shortest and longest body in cm; straight lines between.
    private static readonly (double AgeYears, double Shortest, double Longest)[] Lengths =
    [
        (0, 30, 75), (1, 48, 105), (2, 55, 120), (5, 65, 155), (10, 70, 200), (15, 70, 240), (18, 70, 260),
    ];

    private const double LowestBodyMassIndex = 6;
    private const double HighestBodyMassIndex = 160;
    private const double HighestBodyMassIndexUnderFive = 60;
    private const double FiveYears = 5;

    /// <summary>Records height against age and weight against height.</summary>
    /// <param name="patient">The patient as bound.</param>
    /// <param name="ledger">Places of the values; takes the faults.</param>
    public static void Check(PatientSection? patient, FaultLedger ledger)
    {
        const string Age = "patient.ageYears";
        const string Height = "patient.heightCm";
        const string Weight = "patient.weightKg";
        if (patient is null || !ledger.IsSound(Age) || !ledger.IsSound(Height))
        {
            return;
        }

        (double shortest, double longest) = LengthsAt(patient.AgeYears);
        if (patient.HeightCm < shortest || patient.HeightCm > longest)
        {
            Add(
                Height, $"{NumberWords.Of(patient.HeightCm)} cm at {NumberWords.Of(patient.AgeYears)} years",
                string.Create(CultureInfo.InvariantCulture, $"{shortest:0} to {longest:0} cm at this age"),
                "Check age (years; months as a fraction) and height (cm).", ledger);
            return;
        }

        if (!ledger.IsSound(Weight))
        {
            return;
        }

        double squareMetres = patient.HeightCm * patient.HeightCm / 1e4;
        double highest = patient.AgeYears < FiveYears ? HighestBodyMassIndexUnderFive : HighestBodyMassIndex;
        double index = patient.WeightKg / squareMetres;
        if (index < LowestBodyMassIndex || index > highest)
        {
            Add(
                Weight, $"{NumberWords.Of(patient.WeightKg)} kg at {NumberWords.Of(patient.HeightCm)} cm",
                string.Create(CultureInfo.InvariantCulture, $"{LowestBodyMassIndex * squareMetres:0.#} to {highest * squareMetres:0.#} kg at this height"),
                "Check weight (kg) and height (cm).", ledger);
        }
    }

    private static (double Shortest, double Longest) LengthsAt(double ageYears)
    {
        int above = Array.FindIndex(Lengths, row => row.AgeYears > ageYears);
        if (above < 0)
        {
            return (Lengths[^1].Shortest, Lengths[^1].Longest);
        }

        (double age0, double short0, double long0) = Lengths[above - 1];
        (double age1, double short1, double long1) = Lengths[above];
        double share = (ageYears - age0) / (age1 - age0);
        return (short0 + (share * (short1 - short0)), long0 + (share * (long1 - long0)));
    }

    private static void Add(string path, string value, string accepted, string remedy, FaultLedger ledger) =>
        ledger.Add(FaultCode.Contradiction, path, value, accepted, remedy, ledger.PlaceOf(path));
}
