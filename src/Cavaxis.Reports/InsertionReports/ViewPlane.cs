using Cavaxis.Anatomy.Space;

namespace Cavaxis.Reports.InsertionReports;

/// <summary>A plane of the patient on which everything is projected along parallel lines.</summary>
/// <param name="Name">Name for people.</param>
/// <param name="LeftWord">What lies at the left of the sheet.</param>
/// <param name="RightWord">What lies at the right of the sheet.</param>
/// <param name="Across">Coordinate that grows to the right of the sheet, mm.</param>
internal sealed record ViewPlane(string Name, string LeftWord, string RightWord, Func<Vector3D, double> Across)
{
    /// <summary>Seen from the front: the patient's right is at the left.</summary>
    public static ViewPlane Frontal { get; } = new("from the front", "right", "left", static p => p.X);

    /// <summary>Seen from the patient's left: the front is at the left.</summary>
    public static ViewPlane Sagittal { get; } = new("from the left side", "front", "back", static p => p.Y);
}
