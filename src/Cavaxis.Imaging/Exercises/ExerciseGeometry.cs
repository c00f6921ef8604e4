using System.Globalization;
using Cavaxis.Anatomy.Space;
using Cavaxis.Devices.Cannulae;
using Cavaxis.Imaging.Echo;

namespace Cavaxis.Imaging.Exercises;

/// <summary>Where the tip and what can be taken for it lie in a picture, from the geometry of device, plane and beam alone.</summary>
internal static class ExerciseGeometry
{
    private const double HandMm = 1;
    private const double StepMm = 0.5;
    private const int Echoes = 2;

    /// <summary>The answer to an exercise.</summary>
    public static ExerciseTruth Truth(DeviceAssembly device, Probe probe, PictureGrid grid)
    {
        SpaceCurve curve = SceneSpace.Lengthened(device);
        Vector3D tip = curve.At(device.TipMm);
        (double right, double across, double depth) = grid.Plane.Within(tip);
        (double x, double y) = grid.Pixel(right, depth);
        Vector3D way = curve.Tangent(device.TipMm);
        double alongX = way.Dot(grid.Plane.Right);
        double alongY = way.Dot(grid.Plane.Depth);
        double length = Math.Max(Math.Sqrt((alongX * alongX) + (alongY * alongY)), 1e-6);
        (alongX, alongY) = (alongX / length, alongY / length);
        double lateral = alongX * probe.LateralWidthMm(Math.Max(depth, 2));
        double axial = alongY * probe.AxialWidthMm;
        // Any point of the tip's opening is the tip: across, its half width counts as found.
        double tolerance = Math.Sqrt((lateral * lateral) + (axial * axial)) + device.InnerRadiusMm(0) + HandMm;
        return new ExerciseTruth(IsInView(device, probe, grid.Plane), x, y, across, alongX, alongY, tolerance, [.. Lookalikes(device, probe, grid, curve)]);
    }

    /// <summary>Whether the tip is in the slice (some of its ring within the half-amplitude thickness) and in the picture.</summary>
    public static bool IsInView(DeviceAssembly device, Probe probe, ScanPlane plane) => Slack(device, probe, plane, device.TipMm) <= 0;

    /// <summary>Whether no one would argue about it: well inside, or well outside, and some of the cannula is seen.</summary>
    public static bool IsPlain(DeviceAssembly device, Probe probe, ScanPlane plane)
    {
        double slack = Slack(device, probe, plane, device.TipMm);
        double seen = Enumerable.Range(0, (int)(device.TipMm / 2)).Count(i => Slack(device, probe, plane, i * 2) <= 0) * 2;
        return seen >= 15 && (slack <= -2.5 || slack >= 4);
    }

    /// <summary>
    /// How far the cannula's middle at a length along it is outside of what the picture shows, mm; at or below 0 it is seen. Beside the
    /// slice: distance from the plane less the radius and half the slice's thickness. Beside the picture: at least a centimetre.
    /// </summary>
    public static double Slack(DeviceAssembly device, Probe probe, ScanPlane plane, double arcMm)
    {
        (double right, double across, double depth) = plane.Within(SceneSpace.Lengthened(device).At(arcMm));
        double out0 = Math.Abs(across) - device.OuterRadiusMm(device.TipMm - arcMm) - (probe.SliceWidthMm(depth) / 2);
        return EchoView.Reaches(probe, right, depth) ? out0 : Math.Max(out0, 10);
    }

    private static IEnumerable<Lookalike> Lookalikes(DeviceAssembly device, Probe probe, PictureGrid grid, SpaceCurve curve)
    {
        ScanPlane plane = grid.Plane;
        double tip = device.TipMm;
        foreach (HoleGroup group in device.Cannula.Lumens[0].HoleGroups.Where(static g => g.Facing != HoleFacing.End))
        {
            if (IsSeen(group.FromTipMm))
            {
                yield return At(LookalikeKind.HoleGroup, string.Create(CultureInfo.InvariantCulture, $"the hole group \"{group.Name}\""), group.FromTipMm);
            }
        }

        if (device.Winding is CoilWinding winding && IsSeen(winding.PlainTipMm))
        {
            yield return At(LookalikeKind.WindingEnd, "the end of the winding in the wall", winding.PlainTipMm);
        }

        if (device.HasIntroducer && IsSeen(-device.IntroducerBeyondTipMm))
        {
            yield return At(LookalikeKind.IntroducerEnd, "the end of the introducer", -device.IntroducerBeyondTipMm);
        }

        if (device.HasWire && IsSeen(-device.WireBeyondTipMm))
        {
            yield return At(LookalikeKind.WireEnd, "the end of the wire", -device.WireBeyondTipMm);
        }

        if (IsInView(device, probe, plane))
        {
            (double right, _, double depth) = plane.Within(curve.At(tip));
            double inner = 2 * device.InnerRadiusMm(0);
            for (int n = 1; n <= Echoes && !device.HasIntroducer; n++)
            {
                (double x, double y) = grid.Pixel(right, depth + (inner / 2) + (n * inner));
                yield return new Lookalike(LookalikeKind.Reverberation, "an echo thrown to and fro between the walls", x, y, 0);
            }

            (double below, double down) = Below(probe, right, depth, device.OuterRadiusMm(0) + 12);
            (double sx, double sy) = grid.Pixel(below, down);
            yield return new Lookalike(LookalikeKind.ShadowEdge, "the edge of the shadow", sx, sy, 0);
        }

        if (LastSeen(device, probe, plane) is (double arc, bool cut))
        {
            yield return cut
                ? At(LookalikeKind.CutEnd, "where the plane cuts the cannula", tip - arc)
                : At(LookalikeKind.PictureEdge, "where the cannula leaves the picture", tip - arc);
        }

        bool IsSeen(double fromTip)
        {
            (double right, double across, double depth) = plane.Within(curve.At(tip - fromTip));
            return EchoView.Reaches(probe, right, depth) && Math.Abs(across) <= device.OuterRadiusMm(Math.Max(fromTip, 0)) + (probe.SliceWidthMm(depth) / 2);
        }

        Lookalike At(LookalikeKind kind, string name, double fromTip)
        {
            (double x, double y, _) = grid.Pixel(curve.At(tip - fromTip));
            return new Lookalike(kind, name, x, y, fromTip);
        }
    }

    // The last length short of the tip at which the cannula stops being seen, and whether the slice (true) or the picture's edge ends it.
    private static (double Arc, bool Cut)? LastSeen(DeviceAssembly device, Probe probe, ScanPlane plane)
    {
        for (double arc = device.TipMm - StepMm; arc >= 0; arc -= StepMm)
        {
            if (Slack(device, probe, plane, arc) <= 0)
            {
                if (arc >= device.TipMm - (2 * StepMm))
                {
                    return null;
                }

                (double right, _, double depth) = plane.Within(device.Curve.At(arc + StepMm));
                return (arc, EchoView.Reaches(probe, right, depth));
            }
        }

        return null;
    }

    private static (double Right, double Depth) Below(Probe probe, double right, double depth, double byMm)
    {
        if (probe.Kind == ProbeKind.Linear)
        {
            return (right, depth + byMm);
        }

        double down = depth + probe.RadiusMm;
        double along = Math.Sqrt((right * right) + (down * down));
        return (right * (along + byMm) / along, (down * (along + byMm) / along) - probe.RadiusMm);
    }
}
