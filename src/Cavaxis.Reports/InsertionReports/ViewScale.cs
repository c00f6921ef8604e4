using Cavaxis.Anatomy.Space;
using Cavaxis.Reports.Drawings;

namespace Cavaxis.Reports.InsertionReports;

/// <summary>Places points of the patient in one view of the sheet, to scale.</summary>
/// <param name="Plane">The plane.</param>
/// <param name="MiddleMm">Sheet position of the patient's middle, mm.</param>
/// <param name="TopMm">Sheet position of <paramref name="HeadMm"/>, mm.</param>
/// <param name="HeadMm">Highest coordinate towards the head, mm.</param>
/// <param name="Scale">Millimetres of sheet for one of the patient.</param>
internal sealed record ViewScale(ViewPlane Plane, double MiddleMm, double TopMm, double HeadMm, double Scale)
{
    /// <summary>Where a point lies on the sheet.</summary>
    /// <param name="point">Place in the patient, mm.</param>
    public Point At(Vector3D point) => new(MiddleMm + (Scale * Plane.Across(point)), TopMm + (Scale * (HeadMm - point.Z)));
}
