namespace Cavaxis.Imaging.Tomography;

/// <summary>The three planes along the patient's axes.</summary>
public enum ViewPlane
{
    /// <summary>Seen from the feet: the patient's right is on the left, the front is up.</summary>
    Axial,

    /// <summary>Seen from the front: the patient's right is on the left, the head is up.</summary>
    Coronal,

    /// <summary>Seen from the patient's left: the front is on the left, the head is up.</summary>
    Sagittal,
}
