using Cavaxis.Anatomy.Axis;
using Cavaxis.Anatomy.Landmarks;
using Cavaxis.Anatomy.Space;
using static Cavaxis.Anatomy.Lumens.Directions;

namespace Cavaxis.Anatomy.Lumens;

/// <summary>
/// The course of the great veins: from the skin of the right neck through SVC, atrium and IVC to the skin of the right groin as one line,
/// and the two left ways that join it. Lengths are those of <see cref="CavalAxis"/>; the origin is the middle of the superior junction.
/// </summary>
internal sealed class TrunkCourse
{
    private const double SpacingMm = 6;
    private const int AtrialPieces = 14;

    /// <summary>Needle to vein: the tract leaves the vein by about this angle towards the front (common practice, no source).</summary>
    private const double TractDeg = 38;

    private readonly LumenShape shape;
    private readonly CavalAxis axis;
    private readonly double leastRadiusMm;
    private readonly List<CurveKnot> trunk = [];

    /// <summary>Lays the lines.</summary>
    /// <param name="shape">The anatomy.</param>
    /// <param name="leastRadiusMm">No vein and no tract is narrower: a dilated vein takes the device.</param>
    public TrunkCourse(LumenShape shape, double leastRadiusMm)
    {
        (this.shape, this.leastRadiusMm) = (shape, leastRadiusMm);
        axis = CavalAxis.Of(dimension => shape[dimension]);
        Chord chord = new(shape, axis.Atrium);
        Chord = chord;
        CurveBuilder up = Neck(new CurveBuilder(Vector3D.Zero, -chord.DirectionAt(0), SpacingMm));
        foreach (CurveKnot knot in up.Knots.Skip(1).Reverse())
        {
            trunk.Add(new CurveKnot(-knot.ArcMm, knot.Point, -knot.Tangent));
        }

        for (int i = 0; i <= AtrialPieces; i++)
        {
            double fraction = i / (double)AtrialPieces;
            trunk.Add(new CurveKnot(axis.Atrium.ArcMm(fraction), chord.PointAt(fraction), chord.DirectionAt(fraction)));
        }

        double icaj = axis[CavalLandmark.Icaj];
        CurveBuilder down = Groin(new CurveBuilder(chord.PointAt(1), chord.DirectionAt(1), SpacingMm), icaj);
        trunk.AddRange(down.Knots.Skip(1).Select(knot => knot with { ArcMm = icaj + knot.ArcMm }));
        Trunk = new SweptTube(trunk, TrunkRadii().At);
        LeftNeck = LeftWay(CavalLandmark.BrachiocephalicConfluence, NeckFromLeft);
        LeftGroin = LeftWay(CavalLandmark.IliacConfluence, GroinFromLeft);
    }

    /// <summary>The line through the atrium.</summary>
    public Chord Chord { get; }

    /// <summary>Landmarks as lengths.</summary>
    public CavalAxis Axis => axis;

    /// <summary>Right neck to right groin; lengths are those of the axis.</summary>
    public SweptTube Trunk { get; }

    /// <summary>Confluence of the brachiocephalic veins to the skin of the left neck; lengths from the confluence.</summary>
    public SweptTube LeftNeck { get; }

    /// <summary>Confluence of the iliac veins to the skin of the left groin; lengths from the confluence.</summary>
    public SweptTube LeftGroin { get; }

    private double SvcLength => -axis[CavalLandmark.BrachiocephalicConfluence];

    private double Radius(AxisDimension diameter) => Math.Max(leastRadiusMm, shape[diameter] / 2);

    private double IliacRadius(AxisDimension femoral) => Math.Max(leastRadiusMm, shape[LumenDimension.IliacDiameter] * shape[femoral] / 2);

    private double TractRadius(AxisDimension vein) => Math.Max(leastRadiusMm, 0.6 * shape[vein] / 2);

    private CurveBuilder Neck(CurveBuilder way)
    {
        double rest = -axis[CavalLandmark.RightNeckSkin] - SvcLength;
        double brachiocephalic = Math.Min(0.25 * rest, 0.35 * SvcLength);
        way.Straight(0.5 * SvcLength).Bend(0.5 * SvcLength, (way.Direction + Up).Unit);
        way.Bend(brachiocephalic, Turned(way.Direction, Right, shape[LumenDimension.RightBrachiocephalicTurn]));
        return Skin(way, rest - brachiocephalic, Turned(Up, Right, 5));
    }

    /// <summary>The last vein and the tract from it to the skin.</summary>
    private static CurveBuilder Skin(CurveBuilder way, double lengthMm, Vector3D vein)
    {
        double tract = Math.Min(35, 0.4 * lengthMm);
        way.Bend(0.6 * (lengthMm - tract), vein).Straight(0.4 * (lengthMm - tract));
        return way.Bend(0.4 * tract, Turned(vein, Front, TractDeg)).Straight(0.6 * tract);
    }

    private CurveBuilder Groin(CurveBuilder way, double icaj)
    {
        double renal = axis[CavalLandmark.RenalVein] - icaj;
        double confluence = axis[CavalLandmark.IliacConfluence] - icaj;
        way.Bend(0.7 * renal, Down).Straight(confluence - (0.7 * renal));
        return Pelvis(way, axis[CavalLandmark.RightGroinSkin] - icaj - confluence, Right, LumenDimension.RightCavoIliacAngle);
    }

    private CurveBuilder Pelvis(CurveBuilder way, double lengthMm, Vector3D side, LumenDimension angle)
    {
        Vector3D common = Turned(Turned(Down, side, 180 - shape[angle]), Back, 10);
        Vector3D external = Turned(Turned(Down, side, 15), Front, shape[LumenDimension.PelvicSlope]);
        way.Bend(0.12 * lengthMm, common).Straight(0.18 * lengthMm).Bend(0.2 * lengthMm, external).Straight(0.15 * lengthMm);
        return Skin(way, 0.35 * lengthMm, Turned(Down, Front, 12));
    }

    private CurveBuilder NeckFromLeft(CurveBuilder way)
    {
        double rest = -axis[CavalLandmark.LeftNeckSkin] - SvcLength;
        double brachiocephalic = Math.Min(0.5 * rest, 0.85 * SvcLength);
        Vector3D across = Turned(Turned(Up, Left, 180 - shape[LumenDimension.LeftBrachiocephalicAngle]), Front, 10);
        double turn = Math.Min(0.3 * brachiocephalic, 15);
        way.Bend(turn, across).Straight(brachiocephalic - turn);
        Vector3D jugular = Turned(across, Up, 180 - shape[LumenDimension.LeftJugularAngle]);
        return Skin(way, rest - brachiocephalic, jugular);
    }

    private CurveBuilder GroinFromLeft(CurveBuilder way) => Pelvis(
        way, axis[CavalLandmark.LeftGroinSkin] - axis[CavalLandmark.IliacConfluence], Directions.Left, LumenDimension.LeftCavoIliacAngle);

    private SweptTube LeftWay(CavalLandmark from, Func<CurveBuilder, CurveBuilder> lay)
    {
        bool neck = from == CavalLandmark.BrachiocephalicConfluence;
        double arc = axis[from];
        CurveBuilder way = lay(new CurveBuilder(Trunk.PointAt(arc), neck ? -Trunk.DirectionAt(arc) : Trunk.DirectionAt(arc), SpacingMm));
        AxisDimension vein = neck ? AxisDimension.LeftJugularVeinDiameter : AxisDimension.LeftFemoralVeinDiameter;
        double near = neck ? Math.Max(Radius(vein), 0.8 * Radius(AxisDimension.SvcDiameter)) : IliacRadius(vein);
        double end = way.LengthMm;
        return new SweptTube(way.Knots, new RadiusProfile((0, near), (0.5 * end, near), (0.75 * end, Radius(vein)), (end - 15, Radius(vein)), (end, TractRadius(vein))).At);
    }

    private RadiusProfile TrunkRadii()
    {
        double skin = axis[CavalLandmark.RightNeckSkin];
        double confluence = axis[CavalLandmark.BrachiocephalicConfluence];
        double iliac = axis[CavalLandmark.IliacConfluence];
        double groin = axis[CavalLandmark.RightGroinSkin];
        double jugular = Radius(AxisDimension.RightJugularVeinDiameter);
        double svc = Radius(AxisDimension.SvcDiameter);
        double ivc = Radius(AxisDimension.IvcDiameter);
        double femoral = Radius(AxisDimension.RightFemoralVeinDiameter);
        double neck = confluence - skin;
        double leg = groin - iliac;
        return new RadiusProfile(
            (skin, TractRadius(AxisDimension.RightJugularVeinDiameter)),
            (skin + (0.3 * neck), jugular),
            (skin + (0.65 * neck), jugular),
            (confluence, Math.Max(svc, 0.5 * (svc + jugular))),
            (0.7 * confluence, svc),
            (0, svc),
            (axis[CavalLandmark.Icaj], ivc),
            (iliac - 10, ivc),
            (iliac + (0.15 * leg), IliacRadius(AxisDimension.RightFemoralVeinDiameter)),
            (iliac + (0.5 * leg), IliacRadius(AxisDimension.RightFemoralVeinDiameter)),
            (iliac + (0.7 * leg), femoral),
            (groin - 20, femoral),
            (groin, TractRadius(AxisDimension.RightFemoralVeinDiameter)));
    }
}
