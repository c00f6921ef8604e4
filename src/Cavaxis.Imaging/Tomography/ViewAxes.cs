using Cavaxis.Anatomy.Space;

namespace Cavaxis.Imaging.Tomography;

/// <summary>Which way the pictures of the three planes run in the patient (x to the left, y to the back, z to the head).</summary>
/// <param name="Across">To the right in the picture, unit vector.</param>
/// <param name="Down">Downwards in the picture, unit vector.</param>
public readonly record struct ViewAxes(Vector3D Across, Vector3D Down)
{
    /// <summary>Out of the picture: square to both.</summary>
    public Vector3D Through => Across.Cross(Down);

    /// <summary>Those of a plane.</summary>
    /// <param name="plane">Which plane.</param>
    public static ViewAxes Of(ViewPlane plane) => plane switch
    {
        ViewPlane.Axial => new ViewAxes(new Vector3D(1, 0, 0), new Vector3D(0, 1, 0)),
        ViewPlane.Coronal => new ViewAxes(new Vector3D(1, 0, 0), new Vector3D(0, 0, -1)),
        _ => new ViewAxes(new Vector3D(0, 1, 0), new Vector3D(0, 0, -1)),
    };
}
