using System.Globalization;
using Cavaxis.Anatomy.Meshes;
using Cavaxis.Planning.Insertion;
using Cavaxis.Planning.Plans;
using Cavaxis.Reports.Drawings;
using Cavaxis.Reports.Solids;

namespace Cavaxis.Reports.InsertionReports;

/// <summary>An insertion study in three dimensions: the middle anatomy, wire and cannula in it, and the wire of every sampled anatomy as a line.</summary>
public static class InsertionSolids
{
    /// <summary>Edge of the lattice that the wall is cut from, mm: no vein of the model is so narrow that it falls through.</summary>
    public const double SpacingMm = 4;

    /// <summary>Thinner than this nothing can be seen or printed, mm.</summary>
    private const double LeastRadiusMm = 0.75;

    private const double LumenOpacity = 0.35;
    private const int Sides = 12;

    /// <summary>The model of all cannulae that were studied, in one anatomy.</summary>
    /// <param name="result">The study, with its paths.</param>
    /// <returns>The model.</returns>
    /// <exception cref="ArgumentException">The study holds no venous cannula.</exception>
    public static SolidModel Of(InsertionResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        CannulaInsertion[] drawn = [.. result.Cannulae.Where(static c => c.Paths is not null)];
        if (drawn.Length == 0)
        {
            throw new ArgumentException("There is no venous cannula to draw.", nameof(result));
        }

        // The widest cannula has widened its tract most; the others lie in the same lumen.
        InsertionPaths widest = drawn.Select(static c => c.Paths!).MaxBy(static p => p.CannulaRadiusMm)!;
        List<SolidPart> parts = [new("Lumen of veins and right heart, middle anatomy", LumenSurface.Of(widest.Lumen, SpacingMm), Colour.Lumen, LumenOpacity)];
        List<SolidPath> paths = [];
        foreach (CannulaInsertion cannula in drawn)
        {
            InsertionPaths way = cannula.Paths!;
            string name = $"{PlainWords.Role(cannula.Role)}, {PlainWords.Vessel(cannula.Route, cannula.Side)}";
            if (way.MiddleCannula.Count > 1)
            {
                parts.Add(new SolidPart($"Cannula at the end: {name}", PathSurface.Of(way.MiddleCannula, Math.Max(LeastRadiusMm, way.CannulaRadiusMm), Sides), Colour.Drainage));
            }

            if (way.MiddleWire.Count > 1)
            {
                parts.Add(new SolidPart($"Wire before the cannula: {name}", PathSurface.Of(way.MiddleWire, LeastRadiusMm, Sides), Colour.Ink));
            }

            for (int i = 0; i < way.Wires.Count; i++)
            {
                if (way.Wires[i].Count > 1)
                {
                    paths.Add(new SolidPath(
                        string.Create(CultureInfo.InvariantCulture, $"Wire in anatomy {i + 1}, ends in {PlainWords.FromName(way.Ends[i].ToString())}: {name}"),
                        way.Wires[i],
                        way.Ends[i] == way.Wanted ? Colour.Muted : Colour.Refused));
                }
            }
        }

        string title = result.Invented ? $"{result.CaseTitle} (invented case)" : result.CaseTitle;
        return new SolidModel(string.Create(CultureInfo.InvariantCulture, $"{title}, plan {result.PlanRank}, {result.PlanName}"), result.Caution, parts, paths);
    }
}
