using Cavaxis.Devices.Cannulae;
using Cavaxis.Devices.Catalogue;
using Cavaxis.Devices.Hydraulics;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Devices.Bench;

/// <summary>
/// A bench curve as comma-separated text: note lines <c># key [unit]: value</c> about the cannula and the liquid, a heading with the
/// units, and one line for each point. The format stands in <c>docs/models/devices.md</c>.
/// </summary>
public static class BenchCurveFile
{
    /// <summary>Longest text accepted, characters.</summary>
    public const int LongestText = 1_000_000;

    // Tube between the inserted part and the connector when the file says nothing about it.
    private const double OutsideLengthMm = 50;

    /// <summary>Reads a bench file.</summary>
    /// <param name="csvText">The text of the file.</param>
    /// <param name="catalogue">Catalogue in which a note <c># like: ID</c> is looked up; the built-in one when omitted.</param>
    /// <returns>The cannula with its curve, and how well it fits.</returns>
    /// <exception cref="InputFaultException">The text is no bench curve; carries every fault found, with its line where it has one.</exception>
    public static BenchImport Parse(string csvText, DeviceCatalogue? catalogue = null)
    {
        ArgumentNullException.ThrowIfNull(csvText);
        if (csvText.Length > LongestText)
        {
            throw new InputFaultException(new InputFault(
                FaultCode.FileTooLarge, "(the file)", $"{csvText.Length} characters", $"at most {LongestText} characters", "Thin out the points."));
        }

        List<InputFault> faults = [];
        string text = csvText.TrimStart('\uFEFF');
        BenchNotes notes = BenchNotes.Read(text, faults);
        List<BenchPoint> points = BenchTable.Read(text, faults);
        Cannula? cannula = BenchCannula.Read(notes, catalogue ?? DeviceCatalogue.BuiltIn, OutsideLengthMm, faults);
        LumenPurpose? purpose = ReadPurpose(notes, cannula, faults);
        Fluid? fluid = ReadFluid(notes, faults);
        if (faults.Count > 0 || cannula is null || purpose is not { } measured || fluid is not { } liquid)
        {
            throw new InputFaultException([.. faults.OrderBy(f => f.Line ?? 0)]);
        }

        return Fitted(cannula, measured, liquid, points, faults);
    }

    private static BenchImport Fitted(Cannula cannula, LumenPurpose purpose, Fluid fluid, List<BenchPoint> points, List<InputFault> faults)
    {
        int index = cannula.Lumens.Select((l, i) => (l, i)).First(p => p.l.Purpose == purpose).i;
        double reference = cannula.Lumens[index].Segments.Min(s => 2 * Math.Sqrt(s.AreaMm2 / Math.PI));
        (WaterCurve curve, WaterCurveQuality quality) = WaterCurveFit.Fit(points, reference, fluid);
        Dictionary<int, WaterCurve> curves = new(cannula.WaterCurve) { [index] = curve };
        Cannula whole = cannula with { WaterCurve = curves };
        CannulaRules.Check(whole, "cannula", faults);
        return faults.Count > 0
            ? throw new InputFaultException(faults)
            : new BenchImport(whole, purpose, fluid, points, curve, quality);
    }

    private static LumenPurpose? ReadPurpose(BenchNotes notes, Cannula? cannula, List<InputFault> faults)
    {
        bool needed = cannula is { Lumens.Count: > 1 };
        LumenPurpose? purpose = notes.Choice<LumenPurpose>("lumen", needed);
        if (cannula is null || (purpose is null && (needed || notes.Has("lumen"))))
        {
            return null;
        }

        LumenPurpose chosen = purpose ?? cannula.Lumens[0].Purpose;
        if (cannula.LumenFor(chosen) is not null)
        {
            return chosen;
        }

        faults.Add(new InputFault(
            FaultCode.Contradiction, "lumen", JsonFields.Word(chosen), "a lumen that the cannula has", "Correct the lumen or the family.",
            notes.Find("lumen", false)?.Line, 1));
        return null;
    }

    private static Fluid? ReadFluid(BenchNotes notes, List<InputFault> faults)
    {
        bool own = notes.Has("density") || notes.Has("viscosity");
        if (own)
        {
            double? density = notes.Number("density", u => u is "kg/m3" or "kg/m³" ? 1 : null, 700, 1400, "kg/m3", true);
            double? viscosity = notes.Number("viscosity", BenchUnits.ViscosityPaS, 2e-4, 0.1, "Pa s", true);
            if (notes.Find("temperature", false) is { } extra)
            {
                notes.Fault(FaultCode.Contradiction, extra, "either the temperature of water, or density and viscosity", "Take one of the two out.");
            }

            return density is double d && viscosity is double v ? new Fluid(d, v) : null;
        }

        double? temperature = notes.Number(
            "temperature", u => u is "degC" or "°C" ? 1 : null, Water.LowestTemperatureC, Water.HighestTemperatureC, "degC", true);
        return temperature is double t ? Water.At(t) : null;
    }
}
