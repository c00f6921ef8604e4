using Cavaxis.Quantities.Faults;

namespace Cavaxis.Blood;

/// <summary>The accepted ranges at the public entries of this room, in one place so that every entry refuses alike.</summary>
internal static class BloodInput
{
    internal const double HighestHaemoglobin = 25;
    internal const double HighestPo2 = 3000;
    internal const double HighestSaturation = 0.999999;
    internal const double HighestContent = 60;
    internal const double HighestHaematocrit = 0.75;
    internal const double HighestFlow = 50;

    private const string SaturationRemedy = "Give the saturation as a fraction, 0.75 for 75 %.";

    internal static double Haemoglobin(double gPerDl) => Require.InRange(
        gPerDl, 0, HighestHaemoglobin, "haemoglobinGPerDl", "Give haemoglobin in g/dL (150 g/L is 15 g/dL).");

    internal static double Saturation(double fraction) =>
        Require.InRange(fraction, 0, 1, "saturation", SaturationRemedy);

    internal static double SaturationBelowOne(double fraction) => Require.InRange(
        fraction, 0, HighestSaturation, "saturation",
        SaturationRemedy + " Full saturation has no single oxygen tension: give the tension instead.");

    internal static double Po2(double mmHg) => Require.InRange(
        mmHg, 0, HighestPo2, "po2MmHg", "Give the oxygen tension in mmHg (1 kPa is 7.5 mmHg).");

    internal static double Content(double mlPerDl, string field) => Require.InRange(
        mlPerDl, 0, HighestContent, field, "Give the content in mL of gas per dL of blood.");

    internal static double Haematocrit(double fraction) => Require.InRange(
        fraction, 0, HighestHaematocrit, "haematocrit", "Give the haematocrit as a fraction, 0.40 for 40 %.");

    internal static double Temperature(double celsius, double low, double high) => Require.InRange(
        celsius, low, high, "temperatureC", "Give the temperature in degrees Celsius.");

    internal static double Flow(double lPerMin, string field) => Require.InRange(
        lPerMin, 0, HighestFlow, field, "Give the flow in L/min.");
}
