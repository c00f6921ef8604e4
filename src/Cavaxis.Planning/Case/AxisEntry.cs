using Cavaxis.Anatomy.Axis;

namespace Cavaxis.Planning.Case;

/// <summary>One measurement of the cavo-atrial axis.</summary>
public sealed record AxisEntry
{
    /// <summary>What was measured.</summary>
    [Meaning("What was measured. Lengths and diameters in mm, angles in degrees, tricuspidFraction without unit.")]
    public required AxisDimension Dimension { get; init; }

    /// <summary>The value.</summary>
    [Meaning("The value, in the dimension's unit.")]
    [Number(-90, 900, "mm, deg or 1")]
    public required double Value { get; init; }

    /// <summary>Standard deviation of the measurement.</summary>
    [Meaning("Standard deviation of the measurement, in the same unit; the method's usual error is taken when left out.")]
    [Number(0, 200, "mm, deg or 1")]
    public double? Sd { get; init; }

    /// <summary>How it was measured.</summary>
    [Meaning("How it was measured.")]
    public AxisMethod Method { get; init; }

    /// <summary>Edge taken as the superior junction.</summary>
    [Meaning("Edge taken as the superior cavo-atrial junction, where the dimension touches it.")]
    public JunctionEdge SuperiorEdge { get; init; }

    /// <summary>Edge taken as the inferior junction.</summary>
    [Meaning("Edge taken as the inferior cavo-atrial junction, where the dimension touches it.")]
    public JunctionEdge InferiorEdge { get; init; }
}
