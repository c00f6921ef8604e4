using Cavaxis.Anatomy.Space;
using Cavaxis.Reports.Drawings;

namespace Cavaxis.Reports.Solids;

/// <summary>A line without thickness in a model in three dimensions.</summary>
/// <param name="Name">What it is, for people.</param>
/// <param name="PointsMm">Its points, at least two, mm.</param>
/// <param name="Colour">Colour.</param>
public sealed record SolidPath(string Name, IReadOnlyList<Vector3D> PointsMm, Colour Colour);
