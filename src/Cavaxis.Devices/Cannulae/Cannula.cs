using Cavaxis.Quantities;

namespace Cavaxis.Devices.Cannulae;

/// <summary>A cannula described by numbers alone: a generic family member or a device whose label the user typed in.</summary>
/// <param name="Id">Unique lower-case identifier in the catalogue, such as <c>drain-multi-25fr-55cm</c>.</param>
/// <param name="Description">What it is, in plain words, without any maker's name.</param>
/// <param name="Family">What it does.</param>
/// <param name="OuterDiameterFrench">Largest outer diameter of the inserted part, in French (a third of a millimetre).</param>
/// <param name="InsertableLengthMm">Length from tip to the mark that must stay outside the skin.</param>
/// <param name="Lumens">One lumen, or two for a dual-lumen cannula.</param>
/// <param name="LargestWireMm">Diameter of the largest wire that passes the introducer; null when unknown.</param>
/// <param name="DepthMarksEveryMm">Spacing of printed depth marks; null when unknown.</param>
/// <param name="BendingStiffnessNMm2">EI of the body as a stated range, since none is published; null when unknown.</param>
/// <param name="GeometrySource">Where the numbers come from.</param>
/// <param name="WaterCurve">
/// Bench curves by index into <paramref name="Lumens"/>: a lumen with an entry takes its pressure drop from that curve, carried over
/// to the liquid at hand by Reynolds similarity; a lumen without one takes it from its geometry. Hole shares always come from the
/// geometry. Empty when nothing was measured; never null.
/// </param>
public sealed record Cannula(
    string Id,
    string Description,
    CannulaFamily Family,
    double OuterDiameterFrench,
    double InsertableLengthMm,
    IReadOnlyList<Lumen> Lumens,
    double? LargestWireMm,
    double? DepthMarksEveryMm,
    StiffnessRange? BendingStiffnessNMm2,
    Source GeometrySource,
    IReadOnlyDictionary<int, WaterCurve> WaterCurve)
{
    /// <summary>Outer diameter in millimetres: French divided by three.</summary>
    public double OuterDiameterMm => OuterDiameterFrench * UnitFactors.MillimetresPerFrench;

    /// <summary>The lumen with the given purpose, or null when the cannula has none.</summary>
    /// <param name="purpose">Drainage or return.</param>
    /// <returns>The lumen, or null.</returns>
    public Lumen? LumenFor(LumenPurpose purpose)
    {
        foreach (Lumen lumen in Lumens)
        {
            if (lumen.Purpose == purpose)
            {
                return lumen;
            }
        }

        return null;
    }
}
