using Cavaxis.Arteries.Network;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Arteries.Boundaries;

/// <summary>
/// A body inside the lumen of one segment, such as a cannula that takes up part of it or a balloon that swells: the wall encloses body and blood,
/// the blood flows in what is left. Friction is that of a ring around a body in the middle of the lumen, times a factor.
/// </summary>
public sealed class LumenBody
{
    /// <summary>A body.</summary>
    /// <param name="from">Its proximal end.</param>
    /// <param name="length">Its length along the segment, m.</param>
    /// <param name="area">Area of its cross-section at a time (s), m²; must not allocate.</param>
    /// <param name="changes">True where the area changes over time.</param>
    /// <param name="frictionFactor">Friction relative to the body in the middle: about 0.4 for a thin body that lies against the wall, 1 in the middle.</param>
    /// <exception cref="InputFaultException">A number outside its range.</exception>
    public LumenBody(NetworkPlace from, double length, Func<double, double> area, bool changes, double frictionFactor = 1)
    {
        ArgumentNullException.ThrowIfNull(from);
        From = from;
        Length = Require.InRange(length, 1e-4, 10, "body.length (m)", "Check the unit.");
        AreaAt = area;
        Changes = changes;
        FrictionFactor = Require.InRange(frictionFactor, 0, 100, "body.frictionFactor (1)", "1 for a body in the middle of the lumen.");
    }

    /// <summary>Its proximal end.</summary>
    public NetworkPlace From { get; }

    /// <summary>Length along the segment, m.</summary>
    public double Length { get; }

    /// <summary>Area of its cross-section at a time, m².</summary>
    public Func<double, double> AreaAt { get; }

    /// <summary>True where the area changes over time.</summary>
    public bool Changes { get; }

    /// <summary>Friction relative to a body in the middle of the lumen.</summary>
    public double FrictionFactor { get; }

    /// <summary>
    /// Friction of the ring between a round body in the middle and the wall, relative to a free lumen of the same area of blood: laminar flow in an annulus
    /// (textbook solution, exact), κ² = body/(body + blood): (1 − κ²)/(1 + κ² + (1 − κ²)/ln κ).
    /// </summary>
    /// <param name="bodyArea">Area of the body, m².</param>
    /// <param name="bloodArea">Area of the blood, m².</param>
    /// <returns>Factor of at least 1.</returns>
    public static double RingFriction(double bodyArea, double bloodArea)
    {
        double square = bodyArea / (bodyArea + bloodArea);
        return square < 1e-12 ? 1 : (1 - square) / (1 + square + (2 * (1 - square) / Math.Log(square)));
    }
}
