using Cavaxis.Anatomy.Landmarks;

namespace Cavaxis.Imaging.Tomography;

/// <summary>The veins from one seed to the other as a scan shows them.</summary>
/// <param name="Line">The centreline from the upper to the lower seed; through the atrium the way of least bending between the junctions.</param>
/// <param name="Sections">The wall at even lengths along it.</param>
/// <param name="Landmarks">Every landmark that can lie on it, found or not.</param>
/// <param name="DiameterSdMm">Error of one diameter as a standard deviation, mm.</param>
/// <param name="Directions">Directions of the caval veins; null without both junctions or with too short a vein beside one.</param>
public sealed record TracedAxis(
    SpaceCurve Line, IReadOnlyList<LumenSection> Sections, IReadOnlyList<AxisLandmark> Landmarks, double DiameterSdMm, CavalDirections? Directions)
{
    /// <summary>A landmark.</summary>
    /// <param name="landmark">Which one.</param>
    /// <returns>It, found or not.</returns>
    public AxisLandmark this[CavalLandmark landmark] =>
        Landmarks.FirstOrDefault(l => l.Landmark == landmark) ?? AxisLandmark.Missing(landmark, "not on this line");

    /// <summary>Length along the line between two landmarks, mm; not a number where one is missing.</summary>
    /// <param name="from">One.</param>
    /// <param name="to">The other.</param>
    public double LengthMm(CavalLandmark from, CavalLandmark to) => this[to].ArcMm - this[from].ArcMm;

    /// <summary>Mean diameter over a stretch, mm; not a number where no section lies in it.</summary>
    /// <param name="fromMm">From this length along the line, mm.</param>
    /// <param name="toMm">To this one, mm.</param>
    public double MeanDiameterMm(double fromMm, double toMm)
    {
        double[] within = [.. Sections.Where(s => s.ArcMm >= fromMm && s.ArcMm <= toMm).Select(static s => s.DiameterMm)];
        return within.Length == 0 ? double.NaN : within.Average();
    }
}
