using Cavaxis.Anatomy.Lumens;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Mechanics.Walls;

/// <summary>What a rod lies in.</summary>
public sealed record Wall
{
    /// <summary>Makes a wall.</summary>
    /// <param name="lumen">Signed distance.</param>
    /// <param name="friction">Coulomb's coefficient, 0 to 2; the friction of a wire on a vein is not known and is to be swept.</param>
    /// <exception cref="InputFaultException">Friction out of range.</exception>
    public Wall(ILumen lumen, double friction)
    {
        ArgumentNullException.ThrowIfNull(lumen);
        Friction = Require.InRange(friction, 0, 2, "wall.friction", "Give Coulomb's coefficient.");
        Lumen = lumen;
    }

    /// <summary>Signed distance.</summary>
    public ILumen Lumen { get; }

    /// <summary>Coulomb's coefficient.</summary>
    public double Friction { get; }
}
