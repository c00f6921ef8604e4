using Cavaxis.Anatomy.Axis;
using Cavaxis.Anatomy.Landmarks;
using Cavaxis.Anatomy.Space;

namespace Cavaxis.Anatomy.Lumens;

/// <summary>
/// The inside of one patient's great veins and right heart in three dimensions: the veins from neck to groins, the body and appendage of the
/// right atrium, the right ventricle, and the branches that catch a wire. Sections are round, nothing collapses and nothing beats; the
/// eustachian valve, the fossa ovalis and the coronary sinus are not in it. Model and sources: docs/models/lumen.md.
/// </summary>
public sealed class CavalLumen : ILumen
{
    private readonly TrunkCourse course;
    private readonly SideParts parts;
    private readonly SmoothUnion all;

    /// <summary>Builds it.</summary>
    /// <param name="shape">The anatomy.</param>
    /// <param name="leastRadiusMm">No great vein and no tract is narrower: a dilated vein takes the device, mm.</param>
    /// <exception cref="ArgumentOutOfRangeException">The least radius is negative.</exception>
    public CavalLumen(LumenShape shape, double leastRadiusMm = 0)
    {
        ArgumentNullException.ThrowIfNull(shape);
        ArgumentOutOfRangeException.ThrowIfNegative(leastRadiusMm);
        Shape = shape;
        course = new TrunkCourse(shape, leastRadiusMm);
        parts = new SideParts(shape, course);
        all = new SmoothUnion(
            [course.Trunk, parts.Body, parts.Ventricle, parts.Appendage, parts.HepaticVein, parts.Azygos, parts.RightRenal, parts.LeftRenal, course.LeftNeck, course.LeftGroin],
            0.2 * shape[AxisDimension.IvcDiameter]);
    }

    /// <summary>The numbers it is built from.</summary>
    public LumenShape Shape { get; }

    /// <summary>Landmarks as lengths along the trunk, mm from the SCAJ.</summary>
    public CavalAxis Axis => course.Axis;

    /// <summary>The joined parts.</summary>
    public SmoothUnion Joined => all;

    /// <summary>From the skin of the right neck to that of the right groin; lengths are those of <see cref="Axis"/>.</summary>
    public SweptTube Trunk => course.Trunk;

    /// <summary>Middle of the tricuspid annulus, mm.</summary>
    public Vector3D ValveCentreMm => parts.ValveCentre;

    /// <summary>From the line of the cavae to the valve.</summary>
    public Vector3D ValveDirection => parts.ValveDirection;

    /// <inheritdoc/>
    public LumenPoint At(Vector3D point) => all.At(point);

    /// <summary>Place of a landmark; of the tricuspid centre the place on the line beside it.</summary>
    /// <param name="landmark">The landmark.</param>
    /// <returns>mm.</returns>
    public Vector3D PointOf(CavalLandmark landmark) => landmark switch
    {
        CavalLandmark.LeftNeckSkin => course.LeftNeck.PointAt(course.LeftNeck.EndMm),
        CavalLandmark.LeftGroinSkin => course.LeftGroin.PointAt(course.LeftGroin.EndMm),
        _ => course.Trunk.PointAt(course.Axis[landmark]),
    };

    /// <summary>Where a vein is entered through the skin.</summary>
    /// <param name="site">Which.</param>
    /// <returns>Point, direction and tract.</returns>
    public SkinTract EntryAt(SkinSite site)
    {
        (SweptTube tube, bool atEnd) = site switch
        {
            SkinSite.RightNeck => (course.Trunk, false),
            SkinSite.LeftNeck => (course.LeftNeck, true),
            SkinSite.RightGroin => (course.Trunk, true),
            _ => (course.LeftGroin, true),
        };
        double arc = atEnd ? tube.EndMm : tube.StartMm;
        Vector3D outward = atEnd ? tube.DirectionAt(arc) : -tube.DirectionAt(arc);
        double straight = 0;
        while (straight < 30 && (atEnd ? tube.DirectionAt(arc - straight - 1) : -tube.DirectionAt(arc + straight + 1)).Dot(outward) > 0.9995)
        {
            straight++;
        }

        return new SkinTract(tube.PointAt(arc), -outward, straight);
    }

    /// <summary>The place in which a point lies.</summary>
    /// <param name="point">mm.</param>
    /// <returns>Its name; <see cref="LumenSite.Outside"/> beyond the wall of every part by more than the blend.</returns>
    public LumenSite SiteOf(Vector3D point)
    {
        if (all.At(point).DistanceMm > 0)
        {
            return LumenSite.Outside;
        }

        TubePoint trunk = course.Trunk.Nearest(point);
        TubePoint ventricle = parts.Ventricle.Nearest(point);
        (LumenSite Site, double DistanceMm)[] others =
        [
            (LumenSite.RightAtrium, parts.Body.At(point).DistanceMm),
            (ventricle.ArcMm > 0 ? LumenSite.RightVentricle : LumenSite.RightAtrium, ventricle.DistanceMm),
            (LumenSite.Appendage, parts.Appendage.At(point).DistanceMm),
            (LumenSite.HepaticVein, parts.HepaticVein.At(point).DistanceMm),
            (LumenSite.Azygos, parts.Azygos.At(point).DistanceMm),
            (LumenSite.RenalVein, Math.Min(parts.RightRenal.At(point).DistanceMm, parts.LeftRenal.At(point).DistanceMm)),
            (LumenSite.NeckVein, course.LeftNeck.At(point).DistanceMm),
            (LumenSite.IliofemoralVein, course.LeftGroin.At(point).DistanceMm),
        ];
        if (trunk.DistanceMm <= 0)
        {
            return OnTrunk(trunk.ArcMm);
        }

        (LumenSite site, double distance) = others.MinBy(static o => o.DistanceMm);

        // In the body of the atrium the roots of appendage and valve belong to the atrium.
        return site == LumenSite.Appendage && others[0].DistanceMm <= 0 ? LumenSite.RightAtrium
            : distance <= trunk.DistanceMm ? site : OnTrunk(trunk.ArcMm);
    }

    private LumenSite OnTrunk(double arcMm)
    {
        CavalAxis axis = course.Axis;
        double confluence = axis[CavalLandmark.BrachiocephalicConfluence];
        return arcMm < confluence ? LumenSite.NeckVein
            : arcMm < confluence / 2 ? LumenSite.UpperSvc
            : arcMm < 0 ? LumenSite.LowerSvc
            : arcMm <= axis[CavalLandmark.Icaj] ? LumenSite.RightAtrium
            : arcMm <= axis[CavalLandmark.HepaticVein] ? LumenSite.SuprahepaticIvc
            : arcMm <= axis[CavalLandmark.RenalVein] ? LumenSite.InfrahepaticIvc
            : arcMm <= axis[CavalLandmark.IliacConfluence] ? LumenSite.InfrarenalIvc
            : LumenSite.IliofemoralVein;
    }
}
