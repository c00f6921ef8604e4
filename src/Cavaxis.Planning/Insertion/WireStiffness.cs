using Cavaxis.Devices.Wires;
using Cavaxis.Quantities;

namespace Cavaxis.Planning.Insertion;

/// <summary>Bending of a class of wires of 0.889 mm (0.035 in).</summary>
/// <param name="Class">The class.</param>
/// <param name="LowModulusGPa">Lowest bending modulus of the body.</param>
/// <param name="HighModulusGPa">Highest bending modulus of the body.</param>
/// <param name="Source">Where the moduli come from.</param>
public sealed record WireStiffness(WireClass Class, double LowModulusGPa, double HighModulusGPa, Source Source)
{
    /// <summary>Diameter of the wires that were measured, mm.</summary>
    public const double DiameterMm = 0.889;

    /// <summary>Length of the soft tip, mm (common practice, no source).</summary>
    public const double SoftTipMm = 70;

    private const string Measured = "Harrison et al. 2011, J Endovasc Ther 18:797: three-point bending";

    /// <summary>All classes, softest first.</summary>
    public static IReadOnlyList<WireStiffness> All { get; } =
    [
        new(WireClass.Floppy, 2.5, 9.5, new($"{Measured}, softest plain wire 9.5 GPa; down to a quarter of it is assumed", Certainty.Assumption)),
        new(WireClass.Standard, 9.5, 14.5, new($"{Measured}, plain 9.5, heavy duty 11.4 to 14.5 GPa", Certainty.Seen)),
        new(WireClass.Stiff, 17, 29.2, new($"{Measured}, 17 and 29.2 GPa", Certainty.Seen)),
        new(WireClass.ExtraStiff, 60.3, 158.4, new($"{Measured}, 60.3, 65.4, 139.6 and 158.4 GPa", Certainty.Seen)),
    ];

    /// <summary>Lowest bending stiffness EI of the body, N mm²: modulus times π d⁴/64.</summary>
    public double LowNMm2 => LowModulusGPa * 1000 * SecondMomentMm4;

    /// <summary>Highest bending stiffness EI of the body, N mm².</summary>
    public double HighNMm2 => HighModulusGPa * 1000 * SecondMomentMm4;

    private static double SecondMomentMm4 => Math.PI * Math.Pow(DiameterMm, 4) / 64;

    /// <summary>The row of a class.</summary>
    /// <param name="wire">The class.</param>
    public static WireStiffness Of(WireClass wire) => All[(int)wire];
}
