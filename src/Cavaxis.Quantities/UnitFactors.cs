namespace Cavaxis.Quantities;

/// <summary>Exact or conventional factors between the clinical units at the edges and the SI units inside the engines.</summary>
public static class UnitFactors
{
    /// <summary>Pascals in one conventional millimetre of mercury (ISO 80000-4:2019; 133.322 387 415 Pa).</summary>
    public const double PascalsPerMmHg = 133.322387415;

    /// <summary>Cubic metres per second in one litre per minute (exact).</summary>
    public const double CubicMetresPerSecondPerLPerMin = 1e-3 / 60;

    /// <summary>Millimetres of outer diameter in one French (definition: a third of a millimetre).</summary>
    public const double MillimetresPerFrench = 1.0 / 3.0;

    /// <summary>Metres in one millimetre (exact).</summary>
    public const double MetresPerMm = 1e-3;
}
