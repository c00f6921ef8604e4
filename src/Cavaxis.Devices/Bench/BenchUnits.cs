using System.Globalization;
using UnitsNet;
using UnitsNet.Units;

namespace Cavaxis.Devices.Bench;

/// <summary>Units as bench files write them, turned into the units of the engine.</summary>
internal static class BenchUnits
{
    /// <summary>Factor from a flow unit to m³/s, or null when it is none.</summary>
    internal static double? Flow(string unit) =>
        TryUnit(unit, out VolumeFlowUnit found) ? VolumeFlow.From(1, found).CubicMetersPerSecond : null;

    /// <summary>Factor from a pressure unit to Pa, or null when it is none.</summary>
    internal static double? DropPa(string unit) =>
        TryUnit(unit.Replace("H2O", "H₂O", StringComparison.OrdinalIgnoreCase), out PressureUnit found)
            ? Pressure.From(1, found).Pascals
            : null;

    /// <summary>Factor from a length unit to mm, or null when it is none. French is a third of a millimetre.</summary>
    internal static double? LengthMm(string unit) =>
        unit is "Fr" or "French" ? Quantities.UnitFactors.MillimetresPerFrench
        : TryUnit(unit, out LengthUnit found) ? Length.From(1, found).Millimeters
        : null;

    /// <summary>Factor from a viscosity unit to Pa s, or null when it is none.</summary>
    internal static double? ViscosityPaS(string unit) =>
        TryUnit(unit.Replace('.', '·'), out DynamicViscosityUnit found) ? DynamicViscosity.From(1, found).NewtonSecondsPerMeterSquared : null;

    private static bool TryUnit<T>(string unit, out T found)
        where T : struct, Enum
    {
        // Only what is needed: one exact spelling, the litre also with a small letter.
        string text = unit.Trim();
        UnitParser parser = UnitsNetSetup.Default.UnitParser;
        if (parser.TryParse(text, CultureInfo.InvariantCulture, out found))
        {
            return true;
        }

        string capital = text.Replace("l/", "L/", StringComparison.Ordinal);
        return capital != text && parser.TryParse(capital, CultureInfo.InvariantCulture, out found);
    }
}
