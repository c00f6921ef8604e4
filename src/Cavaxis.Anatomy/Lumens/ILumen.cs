using Cavaxis.Anatomy.Space;

namespace Cavaxis.Anatomy.Lumens;

/// <summary>The inside of a vessel or of joined vessels, as a signed distance from its wall.</summary>
public interface ILumen
{
    /// <summary>Distance from the wall, and the way out.</summary>
    /// <param name="point">Place in the patient's coordinates, mm.</param>
    /// <returns>Distance and gradient; finite for every finite point.</returns>
    LumenPoint At(Vector3D point);
}
