using Cavaxis.Anatomy.Axis;
using Cavaxis.Anatomy.Body;
using Cavaxis.Imaging.Measurement;
using Cavaxis.Planning.Case;
using Cavaxis.Planning.Json;

namespace Cavaxis.Bedside.Images;

/// <summary>A field of the case that a measurement on an image can fill.</summary>
/// <param name="Path">Path of its value in the case, such as <c>vessels[vessel=internalJugularVein,side=right].diameterMm</c>.</param>
/// <param name="Words">What it is, for people.</param>
/// <param name="Unit">Its unit.</param>
public sealed record CaseTarget(string Path, string Words, string Unit)
{
    /// <summary>The measurement that would fill it.</summary>
    public required ImageMeasurement Measured { get; init; }

    /// <summary>The dimension of the axis; null where it is another field.</summary>
    public AxisDimension? Dimension { get; init; }

    /// <summary>Vessel and side; null where it is another field.</summary>
    public (VesselName Vessel, BodySide Side)? Vessel { get; init; }

    /// <summary>True for the depth of the vessel under the skin, not its diameter.</summary>
    public bool IsDepth { get; init; }

    /// <summary>True where the dimension has a sign and the person says that it is negative.</summary>
    public bool IsNegative { get; init; }

    /// <summary>Path of a field of one vessel.</summary>
    /// <param name="vessel">The vessel.</param>
    /// <param name="side">Its side.</param>
    /// <param name="field">Name of the field.</param>
    /// <returns>The path.</returns>
    public static string PathOf(VesselName vessel, BodySide side, string field) =>
        $"vessels[vessel={JsonName.Of(vessel.ToString())},side={JsonName.Of(side.ToString())}].{field}";

    /// <summary>Path of a field of one dimension of the axis.</summary>
    /// <param name="dimension">The dimension.</param>
    /// <param name="field">Name of the field.</param>
    /// <returns>The path.</returns>
    public static string PathOf(AxisDimension dimension, string field) => $"axis[dimension={JsonName.Of(dimension.ToString())}].{field}";
}
