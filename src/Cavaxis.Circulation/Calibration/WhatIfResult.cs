using Cavaxis.Circulation.Signals;

namespace Cavaxis.Circulation.Calibration;

/// <summary>The effect of a change on every quantity, as bands over the members of an ensemble.</summary>
/// <param name="Quantities">One row for each quantity in their order; empty where fewer than half of the members, or fewer than two, are left.</param>
/// <param name="Members">Members asked.</param>
/// <param name="NotSettledBefore">Members that did not settle before the change; left out.</param>
/// <param name="NotSettledAfter">Members that settled before the change but not after it; left out.</param>
/// <param name="OutOfRange">Members whose changed numbers left the range of the model; left out.</param>
/// <param name="LeftOut">Why members were left out, one group for each reason, the largest first.</param>
public sealed record WhatIfResult(
    IReadOnlyList<QuantityChange> Quantities,
    int Members,
    int NotSettledBefore,
    int NotSettledAfter,
    int OutOfRange,
    IReadOnlyList<LeftOut> LeftOut)
{
    /// <summary>Members that the bands stand on.</summary>
    public int Used => Members - NotSettledBefore - NotSettledAfter - OutOfRange;

    /// <summary>
    /// True where enough members are left for bands: half of them, and two. Those that do not come to rest are not lost by chance, so that
    /// bands over a minority would speak for the wrong patients.
    /// </summary>
    public bool Suffices => Used >= 2 && 2 * Used >= Members;

    /// <summary>True where there are bands.</summary>
    public bool Found => Quantities.Count > 0;

    /// <summary>The row of a quantity.</summary>
    /// <param name="quantity">Which.</param>
    /// <returns>Its row.</returns>
    /// <exception cref="InvalidOperationException">Fewer than half of the members are left.</exception>
    public QuantityChange this[CirculationQuantity quantity] =>
        Found ? Quantities[(int)quantity] : throw new InvalidOperationException("Fewer than half of the members are left: there is no result.");
}
