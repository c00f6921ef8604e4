using Cavaxis.Devices.Cannulae;
using Cavaxis.Quantities;

namespace Cavaxis.Devices.Wires;

/// <summary>
/// A guide wire described by its bending modulus, not by the word on its package: two wires called alike differ five-fold
/// (Harrison et al. 2011, J Endovasc Ther 18:797).
/// </summary>
/// <param name="Id">Unique lower-case identifier in the catalogue.</param>
/// <param name="Description">What it is, in plain words, without any maker's name.</param>
/// <param name="DiameterMm">Outer diameter.</param>
/// <param name="LengthCm">Length.</param>
/// <param name="FloppyTipCm">Length of the soft tip.</param>
/// <param name="LowFlexuralModulusGPa">Lowest effective bending modulus of the body.</param>
/// <param name="HighFlexuralModulusGPa">Highest effective bending modulus of the body.</param>
/// <param name="FloppyTipStiffness">Bending stiffness of the soft tip, swept.</param>
/// <param name="Source">Where the numbers come from.</param>
public sealed record GuideWire(
    string Id,
    string Description,
    double DiameterMm,
    double LengthCm,
    double FloppyTipCm,
    double LowFlexuralModulusGPa,
    double HighFlexuralModulusGPa,
    StiffnessRange FloppyTipStiffness,
    Source Source)
{
    /// <summary>Second moment of area of the round section, π d⁴/64, mm⁴.</summary>
    public double SecondMomentMm4 => Math.PI * Math.Pow(DiameterMm, 4) / 64;

    /// <summary>Bending stiffness EI of the body, N mm²: modulus times second moment of area.</summary>
    public StiffnessRange BodyStiffness => new(
        LowFlexuralModulusGPa * 1000 * SecondMomentMm4, HighFlexuralModulusGPa * 1000 * SecondMomentMm4);
}
