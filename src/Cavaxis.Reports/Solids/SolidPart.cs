using Cavaxis.Anatomy.Meshes;
using Cavaxis.Reports.Drawings;

namespace Cavaxis.Reports.Solids;

/// <summary>A body of a model in three dimensions.</summary>
/// <param name="Name">What it is, for people.</param>
/// <param name="Surface">Its surface, mm.</param>
/// <param name="Colour">Colour.</param>
/// <param name="Opacity">0 to 1.</param>
public sealed record SolidPart(string Name, SurfaceMesh Surface, Colour Colour, double Opacity = 1);
