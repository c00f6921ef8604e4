using Cavaxis.Anatomy.Axis;
using Cavaxis.Anatomy.Body;
using Cavaxis.Anatomy.Landmarks;
using Cavaxis.Anatomy.Lumens;
using Cavaxis.Anatomy.Population;
using Cavaxis.Anatomy.Space;
using Cavaxis.Quantities;

namespace Cavaxis.Validation;

/// <summary>
/// The lumen in three dimensions of a middle man and a middle woman, measured as one would measure a scan, against published dimensions.
/// "built on" marks a row whose source also gave the model its number: it shows that the shape has it. The others did not enter.
/// </summary>
public sealed class AnatomyLumenChecks : IReferenceChecks
{
    private const string Room = "Anatomy";
    private const double VoxelMm = 2.5;

    /// <summary>Half of the side of a box about the valve that holds atrium and ventricle, mm.</summary>
    private const double ReachMm = 100;

    private static readonly Source AreaLength = new("Ferrara et al., 596 healthy adults and pooled series, echo, area-length", Certainty.Seen);
    private static readonly Source Disks = new("Ferrara et al., 596 healthy adults and pooled series, echo, disks", Certainty.Seen);
    private static readonly Source Ventricle = new("Chamber quantification guideline 2015, echo in three dimensions: 61 and 53 mL/m2 (SD 13 and 10.5)", Certainty.FromMemory);
    private static readonly Source Textbook = new("about 60 mm left, 25 mm right: radiology and anatomy references", Certainty.SeenSecondHand);
    private static readonly Source Iliac = new("CT series (repository.usmf.md 31387)", Certainty.Seen);
    private static readonly Source Isthmus = new("201 adults, CT, mid-diastole: 24 mm, SD 4.3, 12 to 43 (Radiology 2008;247:658)", Certainty.Seen);

    /// <inheritdoc/>
    public IEnumerable<ValidationRow> Rows()
    {
        (CavalLumen Lumen, double Atrium, double Ventricle) man = Measured(new BodyHabitus(45, Sex.Male, 175, 80));
        (CavalLumen Lumen, double Atrium, double Ventricle) woman = Measured(new BodyHabitus(45, Sex.Female, 163, 65));
        const string Radius = "The radius of the atrium was chosen for 25 mL/m2; the bound is one SD between adults.";
        yield return Row("built on: volume of the right atrium, man", AreaLength, 25.7, man.Atrium, "mL/m2", Tolerance.Absolute, 7.0, Radius);
        yield return Row("volume of the right atrium, woman", AreaLength, 21.2, woman.Atrium, "mL/m2", Tolerance.Absolute, 5.8, "The bound is one SD between adults.");
        yield return Row("volume of the right atrium, man", Disks, 21.6, man.Atrium, "mL/m2", Tolerance.Absolute, 2 * 5.6, "Disks read lower than area-length; the bound is two SD.");
        yield return Row("volume of the right atrium, woman", Disks, 18.2, woman.Atrium, "mL/m2", Tolerance.Absolute, 2 * 5.4, "Disks read lower than area-length; the bound is two SD.");
        const string Cone = "Too small: the model's ventricle is a cone without outflow tract. It is there to catch a wire at its mouth, whose size is that of the annulus.";
        yield return Row("volume of the right ventricle, man", Ventricle, 61, man.Ventricle, "mL/m2", Tolerance.Absolute, 13, Cone) with { KnownMiss = true };
        yield return Row("volume of the right ventricle, woman", Ventricle, 53, woman.Ventricle, "mL/m2", Tolerance.Absolute, 10.5, Cone) with { KnownMiss = true };
        foreach (ValidationRow row in Lengths(man.Lumen).Concat(Angles(man.Lumen)))
        {
            yield return row;
        }
    }

    private static ValidationRow Row(string check, Source source, double expected, double got, string unit, Tolerance tolerance, double bound, string note = "") =>
        new(Room, $"Lumen: {check}", source, expected, got, unit, tolerance, bound, note);

    private static IEnumerable<ValidationRow> Lengths(CavalLumen lumen)
    {
        double confluence = lumen.Axis[CavalLandmark.BrachiocephalicConfluence];
        yield return Row(
            "left brachiocephalic vein, from the confluence to where it turns up into the neck", Textbook, 60, Straight(LeftNeck(lumen), 20, 5), "mm", Tolerance.Relative, 0.15,
            "Until the line leaves its direction by five degrees.");
        yield return Row(
            "right brachiocephalic vein, from the confluence to where it turns back towards the neck", Textbook, 25, ToFarthestLean(lumen.Trunk, confluence), "mm", Tolerance.Relative, 0.2);
        Vector3D down = lumen.Trunk.DirectionAt(lumen.Axis[CavalLandmark.Icaj]);
        Vector3D edge = lumen.PointOf(CavalLandmark.Icaj) + (lumen.Shape[AxisDimension.IvcDiameter] / 2 * Square(lumen.ValveDirection, down));
        Vector3D annulus = lumen.ValveCentreMm + (lumen.Shape[AxisDimension.TricuspidDiameter] / 2 * Square(down, lumen.ValveDirection));
        yield return Row("edge of the IVC to the edge of the tricuspid annulus (isthmus)", Isthmus, 24, (annulus - edge).Length, "mm", Tolerance.Absolute, 2 * 4.3, "Straight line; the bound is two SD between adults.");
    }

    private static IEnumerable<ValidationRow> Angles(CavalLumen lumen)
    {
        SweptTube right = lumen.Trunk;
        SweptTube left = lumen.Joined.Parts[^1];
        double confluence = lumen.Axis[CavalLandmark.IliacConfluence];
        Vector3D cava = right.DirectionAt(confluence - 15);
        Vector3D common = right.DirectionAt(confluence + (0.2 * (right.EndMm - confluence)));
        Vector3D other = left.DirectionAt(0.2 * left.EndMm);
        yield return Row("built on: right cavo-iliac angle not below the range", Iliac, 137.7, 180 - Degrees(cava, common), "deg", Tolerance.AtLeast, 0);
        yield return Row("built on: right cavo-iliac angle not above the range", Iliac, 169.2, 180 - Degrees(cava, common), "deg", Tolerance.AtMost, 0);
        yield return Row("built on: left cavo-iliac angle not below the range", Iliac, 124.1, 180 - Degrees(cava, other), "deg", Tolerance.AtLeast, 0);
        yield return Row("built on: left cavo-iliac angle not above the range", Iliac, 163.1, 180 - Degrees(cava, other), "deg", Tolerance.AtMost, 0);
        yield return Row("inter-iliac angle not below the range", Iliac, 51.0, Degrees(common, other), "deg", Tolerance.AtLeast, 0);
        yield return Row("inter-iliac angle not above the range", Iliac, 84.2, Degrees(common, other), "deg", Tolerance.AtMost, 0);
    }

    private static SweptTube LeftNeck(CavalLumen lumen) => lumen.Joined.Parts[^2];

    /// <summary>Length from the start of a tube up to which it keeps the direction that it has at a place.</summary>
    private static double Straight(SweptTube tube, double atMm, double degrees)
    {
        double arc = tube.StartMm + atMm;
        Vector3D direction = tube.DirectionAt(arc);
        while (arc < tube.EndMm && Degrees(direction, tube.DirectionAt(arc)) < degrees)
        {
            arc += 0.25;
        }

        return arc - tube.StartMm;
    }

    /// <summary>Length from the confluence towards the neck at which the line leans most to the right.</summary>
    private static double ToFarthestLean(SweptTube trunk, double confluence) => Enumerable.Range(0, (int)(4 * (confluence - trunk.StartMm)))
        .Select(static i => i / 4.0).MaxBy(along => trunk.DirectionAt(confluence - along).X);

    /// <summary>The part of a direction that is square to another, of length one.</summary>
    private static Vector3D Square(Vector3D direction, Vector3D to) => (direction - (direction.Dot(to) * to)).Unit;

    private static double Degrees(Vector3D a, Vector3D b) => Math.Atan2(a.Cross(b).Length, a.Dot(b)) * 180 / Math.PI;

    /// <summary>Volumes by counting voxels, by body surface.</summary>
    private static (CavalLumen Lumen, double AtriumMlPerM2, double VentricleMlPerM2) Measured(BodyHabitus body)
    {
        CavalLumen lumen = new(LumenShape.OfMedians(PopulationModel.For(body)));
        (int atrium, int ventricle) = (0, 0);
        int half = (int)(ReachMm / VoxelMm);
        for (int x = -half; x <= half; x++)
        {
            for (int y = -half; y <= half; y++)
            {
                for (int z = -half; z <= half; z++)
                {
                    Vector3D at = lumen.ValveCentreMm + (VoxelMm * new Vector3D(x, y, z));
                    if (lumen.At(at).DistanceMm < 0)
                    {
                        LumenSite site = lumen.SiteOf(at);
                        atrium += site == LumenSite.RightAtrium ? 1 : 0;
                        ventricle += site == LumenSite.RightVentricle ? 1 : 0;
                    }
                }
            }
        }

        double each = VoxelMm * VoxelMm * VoxelMm / 1000 / BodySurfaceArea.M2(body);
        return (lumen, atrium * each, ventricle * each);
    }
}
