using Cavaxis.Quantities;

namespace Cavaxis.Validation;

/// <summary>One comparison of this program with something outside it.</summary>
/// <param name="Room">Room that computed the value, such as "Blood".</param>
/// <param name="Check">What is compared, in one sentence.</param>
/// <param name="Source">Where the expected value comes from.</param>
/// <param name="Expected">The published or exact value.</param>
/// <param name="Got">The value this program computed just now.</param>
/// <param name="Unit">Unit of both, "1" for none.</param>
/// <param name="Tolerance">How they are compared.</param>
/// <param name="Bound">Bound of the comparison; zero for one-sided ones.</param>
/// <param name="Note">Why the bound is what it is, or what a difference means; may be empty.</param>
public sealed record ValidationRow(
    string Room,
    string Check,
    Source Source,
    double Expected,
    double Got,
    string Unit,
    Tolerance Tolerance,
    double Bound,
    string Note = "")
{
    /// <summary>
    /// True for a row that the model is known to miss: it stays in the table as a miss, with its size, and is told apart from a row that
    /// fails by accident. A row marked so that passes is a fault of the table.
    /// </summary>
    public bool KnownMiss { get; init; }

    /// <summary>True when the row is as it is said to be: it passes, or it is known to miss and does.</summary>
    public bool AsStated => Passes != KnownMiss;

    /// <summary>True when the value computed lies within the tolerance. A value that is not finite never passes.</summary>
    public bool Passes => double.IsFinite(Got) && Tolerance switch
    {
        Tolerance.Absolute => Math.Abs(Got - Expected) <= Bound,
        Tolerance.Relative => Math.Abs(Got - Expected) <= Bound * Math.Abs(Expected),
        Tolerance.AtLeast => Got >= Expected,
        Tolerance.AtMost => Got <= Expected,
        _ => throw new InvalidOperationException($"Not a tolerance: {Tolerance}."),
    };
}
