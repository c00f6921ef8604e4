using Cavaxis.Anatomy.Sampling;
using Cavaxis.Anatomy.Space;

namespace Cavaxis.Imaging.Echo;

/// <summary>
/// Echoes of surfaces: each is covered with points closer than half a wavelength whose echoes add up with their phase, so that a
/// surface square to the beam is a mirror and one that looks past the aperture is dark but for its roughness. By Kirchhoff's
/// approximation a mirror of reflection R throws back R dA/λ at each bit of surface.
/// </summary>
internal sealed class SurfaceField
{
    private const double LeadMm = 0.5;
    private const double SlicesKept = 1.3;
    private const uint Mark = 0x5f4ce;
    private const double UnitsPerWord = 1.0 / 4294967296.0;
    private readonly EchoGrid grid;
    private readonly BeamLayout layout;
    private readonly ScanPlane plane;
    private readonly ulong seed;
    private readonly double spacing;
    private readonly double mirror;
    private readonly double widest;
    private readonly (double Left, double Right, double Top, double Bottom) bounds;

    /// <summary>The surfaces that a plane may see.</summary>
    public SurfaceField(EchoGrid grid, BeamLayout layout, ScanPlane plane, ulong seed)
    {
        (this.grid, this.layout, this.plane, this.seed) = (grid, layout, plane, seed);
        Probe probe = layout.Probe;
        spacing = 0.4 * probe.WavelengthMm;
        mirror = 1 / (probe.WavelengthMm * Math.Sqrt(MaterialTable.TissueBackscatter(probe.FrequencyMHz)));
        widest = SlicesKept * Math.Max(probe.SliceWidthMm(probe.DepthMm), probe.SliceWidthMm(1));
        bounds = layout.Bounds();
    }

    /// <summary>Adds a tube.</summary>
    /// <param name="curve">Its middle line.</param>
    /// <param name="from">Where it begins along the line, mm.</param>
    /// <param name="to">Where it ends.</param>
    /// <param name="radius">Radius at a length along the line, mm.</param>
    /// <param name="finish">How it answers.</param>
    /// <param name="number">Number of the surface in its scene.</param>
    /// <param name="offset">Where its middle lies beside the line; null for on it.</param>
    /// <param name="isOpen">Whether there is a hole at a length and an angle; null for none.</param>
    public void AddTube(
        SpaceCurve curve, double from, double to, Func<double, double> radius, SurfaceFinish finish, uint number,
        Func<double, (double A, double B)>? offset = null, Func<double, double, bool>? isOpen = null)
    {
        int rings = (int)Math.Ceiling((to - from) / spacing);
        for (int i = 0; i < rings; i++)
        {
            double arc = from + ((i + 0.5) * (to - from) / rings);
            (Vector3D normal, Vector3D binormal) = curve.Frame(arc);
            (double a, double b) = offset?.Invoke(arc) ?? (0, 0);
            Vector3D middle = curve.At(arc) + (a * normal) + (b * binormal);
            double r = radius(arc);
            double thick = Thickness(middle, r);
            if (thick <= 0)
            {
                continue;
            }

            double out0 = (middle - plane.Origin).Dot(plane.Across);
            double outNormal = r * normal.Dot(plane.Across);
            double outBinormal = r * binormal.Dot(plane.Across);
            int around = Math.Max(6, (int)Math.Ceiling(2 * Math.PI * r / spacing));
            double area = 2 * Math.PI * r / around * ((to - from) / rings);
            for (int k = 0; k < around; k++)
            {
                double angle = 2 * Math.PI * (k + 0.5) / around;
                (double sin, double cos) = Math.SinCos(angle);
                if (Math.Abs(out0 + (cos * outNormal) + (sin * outBinormal)) <= thick && isOpen?.Invoke(arc, angle) != true)
                {
                    Vector3D outward = (cos * normal) + (sin * binormal);
                    AddBit(middle + (r * outward), outward, area, finish, (uint)i, (uint)k, number);
                }
            }
        }
    }

    /// <summary>Adds a flat ring square to a line, such as the end of a cannula.</summary>
    public void AddRing(SpaceCurve curve, double arc, double inner, double outer, SurfaceFinish finish, uint number)
    {
        (Vector3D normal, Vector3D binormal) = curve.Frame(arc);
        Vector3D tangent = curve.Tangent(arc);
        int steps = Math.Max(2, (int)Math.Ceiling((outer - inner) / spacing));
        for (int i = 0; i < steps; i++)
        {
            double r = inner + ((i + 0.5) * (outer - inner) / steps);
            int around = Math.Max(6, (int)Math.Ceiling(2 * Math.PI * r / spacing));
            for (int k = 0; k < around; k++)
            {
                (double sin, double cos) = Math.SinCos(2 * Math.PI * (k + 0.5) / around);
                AddBit(curve.At(arc) + (r * cos * normal) + (r * sin * binormal), tangent, 2 * Math.PI * r / around * ((outer - inner) / steps), finish, (uint)i, (uint)k, number);
            }
        }
    }

    /// <summary>Adds a wire wound about a line.</summary>
    public void AddWinding(SpaceCurve curve, double from, double to, Func<double, double> radius, CoilWinding winding, Func<double, double, bool> isOpen, uint number)
    {
        SurfaceFinish steel = new(MaterialTable.SteelReflection, 1.5);
        for (double arc = from; arc < to;)
        {
            double r = radius(arc);
            double way = Math.Sqrt(1 + Math.Pow(2 * Math.PI * r / winding.PitchMm, 2));
            if (Thickness(curve.At(arc), r) <= 0)
            {
                arc += winding.PitchMm / 4;
                continue;
            }

            double angle = 2 * Math.PI * Math.IEEERemainder(arc / winding.PitchMm, 1);
            if (!isOpen(arc, angle))
            {
                (Vector3D normal, Vector3D binormal) = curve.Frame(arc);
                Vector3D outward = (Math.Cos(angle) * normal) + (Math.Sin(angle) * binormal);
                // A round wire mirrors about its half: the rest of it looks past the beam.
                AddBit(curve.At(arc) + (r * outward), outward, spacing * winding.WireMm / 2, steel, (uint)(arc * 64), 0, number);
            }

            arc += spacing / way;
        }
    }

    // Half thickness of what the plane takes in about a ring, mm; 0 where none of the ring is in it.
    private double Thickness(Vector3D middle, double r)
    {
        (double x, double e, double z) = plane.Within(middle);
        if (Math.Abs(e) > r + widest || x < bounds.Left - r || x > bounds.Right + r || z < bounds.Top - r || z > bounds.Bottom + r)
        {
            return 0;
        }

        double thick = SlicesKept * Math.Max(layout.Probe.SliceWidthMm(z - r), layout.Probe.SliceWidthMm(z + r));
        return Math.Abs(e) > r + thick ? 0 : thick;
    }

    private void AddBit(Vector3D p, Vector3D outward, double area, SurfaceFinish finish, uint i, uint k, uint number)
    {
        (double x, double e, double z) = plane.Within(p);
        double amplitude = mirror * finish.Reflection * area;
        (uint w0, _, _, _) = Philox.Bits(i, k, number, Mark, seed);
        grid.Add(x, e, z, amplitude, finish.Rough * Math.Sqrt(area), w0 * UnitsPerWord, leadMm: LeadMm);
        if (finish.Rings == 0)
        {
            return;
        }

        double below = z + layout.Probe.RadiusMm;
        double facing = layout.IsFlat ? outward.Dot(plane.Depth) : (outward.Dot(plane.Depth) * below) + (outward.Dot(plane.Right) * x);
        if (facing > 0 == finish.RingsWhereFar)
        {
            double ring = amplitude * finish.RingFirst;
            for (int n = 1; n <= finish.Rings; n++)
            {
                grid.Add(x, e, z, ring, delayMm: n * finish.RingMm, leadMm: LeadMm);
                ring *= finish.RingDecay;
            }
        }
    }
}
