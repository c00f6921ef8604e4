using Cavaxis.Quantities;

namespace Cavaxis.Devices.Hydraulics;

/// <summary>How well the bore and the holes of a device are known.</summary>
/// <param name="BoreRelativeSd">Relative standard deviation of the inner diameter.</param>
/// <param name="HoleAreaRelativeSd">Relative standard deviation of the open area of a hole group.</param>
public sealed record GeometryTolerance(double BoreRelativeSd, double HoleAreaRelativeSd)
{
    /// <summary>A device whose label or drawing was read: manufacturing spread only (assumption of this project).</summary>
    public static GeometryTolerance Labelled { get; } = new(0.01, 0.05);

    /// <summary>A generic device whose bore and holes are a remembered or assumed default.</summary>
    public static GeometryTolerance Generic { get; } = new(0.04, 0.25);

    /// <summary>The tolerance that fits the certainty of a geometry source.</summary>
    /// <param name="certainty">How far the source was opened.</param>
    /// <returns>Labelled for numbers that were read, generic for remembered or assumed ones.</returns>
    public static GeometryTolerance For(Certainty certainty) => certainty switch
    {
        Certainty.Seen or Certainty.SeenSecondHand or Certainty.Derived or Certainty.ClosedForm => Labelled,
        Certainty.FromMemory or Certainty.CommonPractice or Certainty.Assumption => Generic,
        _ => throw new ArgumentOutOfRangeException(nameof(certainty), certainty, "Not a certainty."),
    };
}
