using Cavaxis.Anatomy.Sampling;
using Cavaxis.Anatomy.Space;

namespace Cavaxis.Imaging.Echo;

/// <summary>
/// Scatterers of soft matter, one in every cell of a lattice that is fixed in space: its place in the cell and its sign follow from cell and
/// seed alone, so that a plane that moves sees the same matter. About sixteen of them lie in the volume that pulse and beam take in.
/// </summary>
internal static class ScattererField
{

    private const double InAVolume = 16;
    private const double SlicesKept = 1;
    private const uint Mark = 0x5ca77e12;
    private const double UnitsPerWord = 1.0 / 4294967296.0;

    /// <summary>Edge of a cell, mm.</summary>
    public static double CellMm(Probe probe)
    {
        double volume = probe.AxialWidthMm * probe.LateralWidthMm(probe.FocusMm) * probe.SliceWidthMm(probe.FocusMm);
        return Math.Clamp(Math.Cbrt(volume / InAVolume), 0.12, 0.6);
    }

    /// <summary>Adds the echoes of all scatterers in reach of the plane.</summary>
    public static void Add(EchoGrid grid, BeamLayout layout, ScanPlane plane, EchoScene scene, SceneSpace space)
    {
        double cell = CellMm(layout.Probe);
        double loudness = Math.Pow(cell, 1.5);
        (double left, double right, double top, double bottom) = layout.Bounds();
        double thick = SlicesKept * Math.Max(layout.Probe.SliceWidthMm(layout.Probe.DepthMm), layout.Probe.SliceWidthMm(1));
        double slope = layout.IsFlat ? 0 : Math.Tan(Math.Min(layout.Probe.AngleDeg / 2, 89) * Math.PI / 180);
        Vector3D[] corners = [.. from x in new[] { left, right } from z in new[] { top, bottom } from e in new[] { -thick, thick } select plane.Place(x, z, e)];
        (int lowX, int highX) = Range(corners.Select(static c => c.X), cell);
        (int lowY, int highY) = Range(corners.Select(static c => c.Y), cell);
        (int lowZ, int highZ) = Range(corners.Select(static c => c.Z), cell);
        UnevenTissue uneven = new(
            scene.Seed, scene.Surroundings.TissueVariationDb, cell * new Vector3D(lowX - 1, lowY - 1, lowZ - 1), cell * new Vector3D(highX + 2, highY + 2, highZ + 2));
        for (int i = lowX; i <= highX; i++)
        {
            for (int j = lowY; j <= highY; j++)
            {
                (double x, double e, double z) = plane.Within(cell * new Vector3D(i, j, 0));
                double from = lowZ;
                double to = highZ;
                Cut(ref from, ref to, x, plane.Right.Z * cell, left - cell, right + cell);
                Cut(ref from, ref to, z, plane.Depth.Z * cell, top - cell, bottom + cell);
                if (to < from)
                {
                    continue;
                }

                // The slice is thickest at one of the ends, since its thickness is a convex function of depth.
                double here = SlicesKept * Math.Max(
                    layout.Probe.SliceWidthMm(z + (from * plane.Depth.Z * cell)), layout.Probe.SliceWidthMm(z + (to * plane.Depth.Z * cell)));
                Cut(ref from, ref to, e, plane.Across.Z * cell, -here - cell, here + cell);
                for (int k = (int)Math.Ceiling(from); k <= to; k++)
                {
                    if (!layout.IsFlat && Math.Abs(x + (k * plane.Right.Z * cell)) > (slope * (z + (k * plane.Depth.Z * cell) + layout.Probe.RadiusMm)) + (3 * cell))
                    {
                        continue;
                    }

                    (uint w0, uint w1, uint w2, uint w3) = Philox.Bits((uint)i, (uint)j, (uint)k, Mark, scene.Seed);
                    Vector3D p = cell * new Vector3D(i + (w0 * UnitsPerWord), j + (w1 * UnitsPerWord), k + (w2 * UnitsPerWord));
                    Material material = space.At(p);
                    double scatter = MaterialTable.Scatter(material);
                    if (scatter == 0)
                    {
                        continue;
                    }

                    scatter *= material == Material.Tissue ? uneven.At(p) : 1;
                    (double px, double pe, double pz) = plane.Within(p);
                    grid.Add(px, pe, pz, (w3 & 1) == 0 ? loudness * scatter : -loudness * scatter);
                }
            }
        }
    }

    private static (int Low, int High) Range(IEnumerable<double> along, double cell)
    {
        double[] all = [.. along];
        return ((int)Math.Floor(all.Min() / cell) - 1, (int)Math.Ceiling(all.Max() / cell) + 1);
    }

    // Leaves of the row of cells the part in which start + k × step lies between the bounds.
    private static void Cut(ref double from, ref double to, double start, double step, double low, double high)
    {
        if (Math.Abs(step) < 1e-12)
        {
            if (start < low || start > high)
            {
                to = from - 1;
            }

            return;
        }

        double a = (low - start) / step;
        double b = (high - start) / step;
        from = Math.Max(from, Math.Min(a, b));
        to = Math.Min(to, Math.Max(a, b));
    }
}
