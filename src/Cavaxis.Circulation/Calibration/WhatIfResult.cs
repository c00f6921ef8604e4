using Cavaxis.Circulation.Signals;

namespace Cavaxis.Circulation.Calibration;

/// <summary>The effect of a change on every quantity, as bands over the members of an ensemble.</summary>
/// <param name="Quantities">One row for each quantity in their order; empty where fewer than two members settled.</param>
/// <param name="Members">Members asked.</param>
/// <param name="NotSettledBefore">Members that did not settle before the change; left out.</param>
/// <param name="NotSettledAfter">Members that settled before the change but not after it; left out.</param>
/// <param name="OutOfRange">Members whose changed numbers left the range of the model; left out.</param>
/// <param name="Reasons">Why members were left out, each reason once.</param>
public sealed record WhatIfResult(
    IReadOnlyList<QuantityChange> Quantities,
    int Members,
    int NotSettledBefore,
    int NotSettledAfter,
    int OutOfRange,
    IReadOnlyList<string> Reasons)
{
    /// <summary>Members that the bands stand on.</summary>
    public int Used => Members - NotSettledBefore - NotSettledAfter - OutOfRange;

    /// <summary>True where there are bands.</summary>
    public bool Found => Quantities.Count > 0;

    /// <summary>The row of a quantity.</summary>
    /// <param name="quantity">Which.</param>
    /// <returns>Its row.</returns>
    /// <exception cref="InvalidOperationException">Too few members settled.</exception>
    public QuantityChange this[CirculationQuantity quantity] =>
        Found ? Quantities[(int)quantity] : throw new InvalidOperationException("Fewer than two members settled: there is no result.");
}
