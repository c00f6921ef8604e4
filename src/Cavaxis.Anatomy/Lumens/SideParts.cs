using Cavaxis.Anatomy.Axis;
using Cavaxis.Anatomy.Landmarks;
using Cavaxis.Anatomy.Space;
using static Cavaxis.Anatomy.Lumens.Directions;

namespace Cavaxis.Anatomy.Lumens;

/// <summary>What opens from the great veins: body and appendage of the atrium, right ventricle, hepatic vein, azygos, renal veins.</summary>
internal sealed class SideParts
{
    private const double SpacingMm = 5;

    /// <summary>Mean of long and short axis of the annulus over the long one: 33 of 36 mm (209 healthy adults, ACC 2019).</summary>
    private const double AnnulusRoundness = 33.0 / 36;

    private readonly LumenShape shape;
    private readonly TrunkCourse course;

    /// <summary>Lays them.</summary>
    /// <param name="shape">The anatomy.</param>
    /// <param name="course">The great veins.</param>
    public SideParts(LumenShape shape, TrunkCourse course)
    {
        (this.shape, this.course) = (shape, course);
        Vector3D level = Turned(Front, Directions.Left, AtrialPath.TricuspidAzimuthDeg);
        Chord chord = course.Chord;
        ValveDirection = (level - (level.Dot(chord.Down) * chord.Down)).Unit;
        double fraction = shape[AxisDimension.TricuspidFraction];
        ValveCentre = chord.StraightAt(fraction) + (shape[AxisDimension.TricuspidDistance] * ValveDirection);
        Body = AtrialBody();
        Ventricle = RightVentricle(chord.StraightAt(fraction));
        Appendage = AtrialAppendage();
        HepaticVein = Hepatic();
        Azygos = AzygosArch();
        RightRenal = Renal(Right);
        LeftRenal = Renal(Directions.Left);
    }

    /// <summary>Body of the atrium in front of the line of the cavae.</summary>
    public SweptTube Body { get; }

    /// <summary>From the middle of the atrium through the annulus to the apex; lengths from the annulus, negative before it.</summary>
    public SweptTube Ventricle { get; }

    /// <summary>Appendage.</summary>
    public SweptTube Appendage { get; }

    /// <summary>Right hepatic vein, from the middle of the IVC.</summary>
    public SweptTube HepaticVein { get; }

    /// <summary>Azygos, from the middle of the SVC.</summary>
    public SweptTube Azygos { get; }

    /// <summary>Right renal vein.</summary>
    public SweptTube RightRenal { get; }

    /// <summary>Left renal vein.</summary>
    public SweptTube LeftRenal { get; }

    /// <summary>Middle of the tricuspid annulus, mm.</summary>
    public Vector3D ValveCentre { get; }

    /// <summary>From the line of the cavae to the valve; square to that line.</summary>
    public Vector3D ValveDirection { get; }

    private double Span => shape[AxisDimension.AtrialSpan];

    private double BodyRadius => shape[LumenDimension.AtrialRadius] * Span;

    /// <summary>The body lies in front of the line so far that its back wall is near that of the cavae.</summary>
    private double BodyOffset => Math.Max(0.3 * BodyRadius, BodyRadius - (0.19 * (shape[AxisDimension.SvcDiameter] + shape[AxisDimension.IvcDiameter])));

    private SweptTube AtrialBody()
    {
        Vector3D from = course.Chord.StraightAt(0.28) + (BodyOffset * ValveDirection);
        CurveBuilder way = new CurveBuilder(from, course.Chord.Down, SpacingMm).Straight(0.5 * Span);
        return new SweptTube(way.Knots, _ => BodyRadius);
    }

    private SweptTube RightVentricle(Vector3D onLine)
    {
        double before = Math.Max(5, shape[AxisDimension.TricuspidDistance] - BodyOffset);
        double annulus = AnnulusRoundness * shape[AxisDimension.TricuspidDiameter] / 2;
        double length = shape[LumenDimension.VentricleLength] * shape[AxisDimension.TricuspidDiameter];
        double middle = shape[LumenDimension.VentricleRadius] * shape[AxisDimension.TricuspidDiameter];
        Vector3D apex = Turned(Turned(ValveDirection, Down, shape[LumenDimension.VentricleDip]), Directions.Left, 10);
        CurveBuilder way = new CurveBuilder(onLine + ((shape[AxisDimension.TricuspidDistance] - before) * ValveDirection), ValveDirection, SpacingMm)
            .Straight(before).Bend(0.5 * length, apex).Straight(0.5 * length);
        return new SweptTube(
            [.. way.Knots.Select(knot => knot with { ArcMm = knot.ArcMm - before })],
            new RadiusProfile((-before, 0.9 * Math.Min(annulus, BodyRadius)), (0, annulus), (0.4 * length, middle), (length, 0.35 * middle)).At);
    }

    private SweptTube AtrialAppendage()
    {
        double radius = shape[LumenDimension.AppendageDiameter] * Span / 2;
        double inside = 0.8 * BodyRadius;
        double outside = shape[LumenDimension.AppendageLength] * Span;
        Vector3D from = course.Chord.StraightAt(0.25) + (BodyOffset * ValveDirection);
        CurveBuilder way = new CurveBuilder(from, Turned(Turned(Front, Directions.Left, 25), Up, 35), SpacingMm)
            .Straight(inside).Bend(outside, Turned(Turned(Front, Directions.Left, 60), Up, 45));
        return new SweptTube(way.Knots, new RadiusProfile((0, radius), (inside, radius), (inside + outside, 0.6 * radius)).At);
    }

    private SweptTube Hepatic()
    {
        double angle = shape[LumenDimension.HepaticVeinAngle];
        double radius = shape[LumenDimension.HepaticVeinDiameter] * shape[AxisDimension.IvcDiameter] / 2;
        double middle = course.Axis[CavalLandmark.HepaticVein] + (radius / Math.Sin(angle * Math.PI / 180));
        (double sin, double cos) = Math.SinCos(shape[LumenDimension.HepaticVeinAzimuth] * Math.PI / 180);
        Vector3D outward = (cos * Right) + (sin * Back);
        Vector3D vein = Turned(course.Trunk.DirectionAt(middle), outward, angle);
        double length = 0.9 * Span;
        CurveBuilder way = new CurveBuilder(course.Trunk.PointAt(middle), vein, SpacingMm).Straight(0.5 * length).Bend(0.5 * length, Turned(vein, Down, 15));
        return new SweptTube(way.Knots, new RadiusProfile((0, radius), (0.5 * length, radius), (length, 0.55 * radius)).At);
    }

    private SweptTube AzygosArch()
    {
        double mouth = shape[LumenDimension.AzygosHeight] * course.Axis[CavalLandmark.BrachiocephalicConfluence];
        double svc = course.Trunk.RadiusAt(mouth);
        double radius = shape[LumenDimension.AzygosDiameter] * svc;
        Vector3D back = Turned(Back, Up, 15);
        CurveBuilder way = new CurveBuilder(course.Trunk.PointAt(mouth), back, SpacingMm)
            .Straight(svc + (0.5 * radius)).Bend(0.45 * Span, Turned(Down, Directions.Left, 10)).Straight(0.9 * Span);
        return new SweptTube(way.Knots, _ => radius);
    }

    private SweptTube Renal(Vector3D side)
    {
        double radius = 0.22 * shape[AxisDimension.IvcDiameter];
        CurveBuilder way = new CurveBuilder(course.Trunk.PointAt(course.Axis[CavalLandmark.RenalVein]), Turned(side, Back, 20), SpacingMm)
            .Straight((0.5 * shape[AxisDimension.IvcDiameter]) + (0.45 * Span));
        return new SweptTube(way.Knots, _ => radius);
    }
}
