namespace Cavaxis.Reports.Solids;

/// <summary>Bodies and lines in the patient's coordinates, mm.</summary>
/// <param name="Name">Title.</param>
/// <param name="Caution">Words that travel with the file.</param>
/// <param name="Parts">Bodies, at least one.</param>
/// <param name="Paths">Lines.</param>
public sealed record SolidModel(string Name, string Caution, IReadOnlyList<SolidPart> Parts, IReadOnlyList<SolidPath> Paths);
