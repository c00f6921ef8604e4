using Cavaxis.Quantities.Faults;

namespace Cavaxis.Arteries.Network;

/// <summary>
/// A straight piece of artery between two nodes. Radius and wall change linearly from the proximal to the distal end. Positive flow
/// runs from proximal to distal.
/// </summary>
public sealed record ArterialSegment
{
    /// <summary>A segment with its own wall at each end.</summary>
    /// <param name="name">Name, unique in a network.</param>
    /// <param name="proximalNode">Node at its proximal end.</param>
    /// <param name="distalNode">Node at its distal end.</param>
    /// <param name="length">Length, m.</param>
    /// <param name="proximalRadius">Radius at the reference pressure at the proximal end, m.</param>
    /// <param name="distalRadius">The same at the distal end, m.</param>
    /// <param name="proximalWall">Wall thickness at the proximal end, m.</param>
    /// <param name="distalWall">Wall thickness at the distal end, m.</param>
    /// <param name="youngModulus">Young's modulus of the wall, Pa.</param>
    /// <param name="referencePressure">Pressure at which the radii hold, Pa.</param>
    /// <param name="wallViscosity">Voigt viscosity φ of the wall, Pa·s; zero for an elastic wall.</param>
    /// <exception cref="InputFaultException">A number outside its range, or an empty name.</exception>
    public ArterialSegment(
        string name,
        string proximalNode,
        string distalNode,
        double length,
        double proximalRadius,
        double distalRadius,
        double proximalWall,
        double distalWall,
        double youngModulus,
        double referencePressure,
        double wallViscosity = 0)
    {
        Name = Named(name, "segment.name");
        ProximalNode = Named(proximalNode, $"{name}.proximalNode");
        DistalNode = Named(distalNode, $"{name}.distalNode");
        Length = Require.InRange(length, 1e-4, 100, $"{name}.length (m)", "Arteries are millimetres to decimetres long.");
        ProximalRadius = Require.InRange(proximalRadius, 5e-5, 0.1, $"{name}.proximalRadius (m)", "Check the unit.");
        DistalRadius = Require.InRange(distalRadius, 5e-5, 0.1, $"{name}.distalRadius (m)", "Check the unit.");
        ProximalWall = Require.InRange(proximalWall, 1e-6, 0.05, $"{name}.proximalWall (m)", "Check the unit.");
        DistalWall = Require.InRange(distalWall, 1e-6, 0.05, $"{name}.distalWall (m)", "Check the unit.");
        YoungModulus = Require.InRange(youngModulus, 1e3, 1e10, $"{name}.youngModulus (Pa)", "Arteries are 1e5 to 2e6.");
        ReferencePressure = Require.InRange(referencePressure, -1e5, 1e5, $"{name}.referencePressure (Pa)", "Check the unit.");
        WallViscosity = Require.InRange(wallViscosity, 0, 1e6, $"{name}.wallViscosity (Pa·s)", "Zero is an elastic wall.");
    }

    /// <summary>Name.</summary>
    public string Name { get; }

    /// <summary>Node at the proximal end.</summary>
    public string ProximalNode { get; }

    /// <summary>Node at the distal end.</summary>
    public string DistalNode { get; }

    /// <summary>Length, m.</summary>
    public double Length { get; }

    /// <summary>Radius at the reference pressure at the proximal end, m.</summary>
    public double ProximalRadius { get; }

    /// <summary>Radius at the reference pressure at the distal end, m.</summary>
    public double DistalRadius { get; }

    /// <summary>Wall thickness at the proximal end, m.</summary>
    public double ProximalWall { get; }

    /// <summary>Wall thickness at the distal end, m.</summary>
    public double DistalWall { get; }

    /// <summary>Young's modulus, Pa.</summary>
    public double YoungModulus { get; }

    /// <summary>Reference pressure, Pa.</summary>
    public double ReferencePressure { get; }

    /// <summary>Voigt viscosity of the wall, Pa·s.</summary>
    public double WallViscosity { get; }

    /// <summary>Radius at the reference pressure, m.</summary>
    /// <param name="fraction">Place along the segment, 0 proximal to 1 distal.</param>
    /// <returns>Radius.</returns>
    public double Radius(double fraction) => ProximalRadius + ((DistalRadius - ProximalRadius) * fraction);

    /// <summary>Wall thickness, m.</summary>
    /// <param name="fraction">Place along the segment, 0 proximal to 1 distal.</param>
    /// <returns>Thickness.</returns>
    public double Wall(double fraction) => ProximalWall + ((DistalWall - ProximalWall) * fraction);

    /// <summary>Stiffness K of the tube law, Pa/m.</summary>
    /// <param name="fraction">Place along the segment, 0 proximal to 1 distal.</param>
    /// <returns>K.</returns>
    public double Stiffness(double fraction) => TubeLaw.Stiffness(Radius(fraction), Wall(fraction), YoungModulus);

    private static string Named(string name, string field) => string.IsNullOrWhiteSpace(name)
        ? throw new InputFaultException(new InputFault(FaultCode.WrongLength, field, "(nothing)", "a name", "Name it."))
        : name;
}
