using Cavaxis.Anatomy.Space;

namespace Cavaxis.Imaging.Echo;

/// <summary>Tells what fills each place of a scene.</summary>
internal sealed class SceneSpace
{
    private readonly Surroundings surroundings;
    private readonly DeviceAssembly? device;
    private readonly CurveGrid? vessel;
    private readonly CurveGrid? line;
    private readonly double reach;
    private readonly double windingLoss;

    /// <summary>The space of a scene.</summary>
    /// <param name="scene">The scene.</param>
    public SceneSpace(EchoScene scene)
    {
        (surroundings, device) = (scene.Surroundings, scene.Device);
        vessel = surroundings.Axis is SpaceCurve axis ? new CurveGrid(axis, surroundings.RadiusMm + surroundings.WallMm) : null;
        if (device is not null)
        {
            reach = device.HasCannula ? device.OuterRadiusMm(DeviceAssembly.TaperMm) + 0.5 : device.WireRadiusMm + 0.2;
            line = new CurveGrid(Lengthened(device), reach);
            windingLoss = (device.Winding?.LossDb ?? 0) / device.WallMm;
        }
    }

    /// <summary>Loss of the pressure on one way at a place, dB/mm: that of the material, and in a wound wall that of the winding spread over its thickness.</summary>
    /// <param name="p">The place.</param>
    /// <param name="frequencyMHz">MHz.</param>
    public double LossDbPerMm(Vector3D p, double frequencyMHz)
    {
        Material material = At(p);
        return MaterialTable.LossDbPerMm(material, frequencyMHz) + (material == Material.WoundPolymer ? windingLoss : 0);
    }

    /// <summary>What fills a place.</summary>
    /// <param name="p">The place.</param>
    public Material At(Vector3D p)
    {
        if (line?.Find(p) is CurvePlace beside && beside.Distance <= reach && OfDevice(beside) is Material own)
        {
            return own;
        }

        if (vessel?.Find(p) is CurvePlace inside)
        {
            double distance = inside.Distance;
            if (distance < surroundings.RadiusMm)
            {
                return surroundings.Fluid;
            }

            if (distance < surroundings.RadiusMm + surroundings.WallMm)
            {
                return Material.VesselWall;
            }
        }

        return surroundings.Outside;
    }

    /// <summary>A device's curve carried on as far as its wire and introducer reach.</summary>
    /// <param name="device">The device.</param>
    public static SpaceCurve Lengthened(DeviceAssembly device)
    {
        double end = Math.Max(device.TipMm + device.IntroducerBeyondTipMm, device.HasWire ? device.WireEndMm : 0) + 2;
        SpaceCurve curve = device.Curve;
        if (end <= curve.LengthMm)
        {
            return curve;
        }

        List<Vector3D> points = [.. Enumerable.Range(0, curve.Count).Select(curve.Sample)];
        for (double at = curve.LengthMm + SpaceCurve.StepMm; at <= end + SpaceCurve.StepMm; at += SpaceCurve.StepMm)
        {
            points.Add(curve.At(at));
        }

        return SpaceCurve.Sampled(points);
    }

    private Material? OfDevice(CurvePlace beside)
    {
        DeviceAssembly d = device!;
        double fromTip = d.TipMm - beside.Arc;
        double distance = beside.Distance;
        if (d.HasWire && beside.Arc <= d.WireEndMm)
        {
            (double a, double b) = d.WireOffsetMm(fromTip);
            double da = beside.A - a;
            double db = beside.B - b;
            if ((da * da) + (db * db) < d.WireRadiusMm * d.WireRadiusMm)
            {
                return Material.Steel;
            }
        }

        if (d.HasIntroducer && fromTip >= -d.IntroducerBeyondTipMm && distance < d.IntroducerRadiusMm(fromTip))
        {
            return distance < d.WireRadiusMm + DeviceAssembly.PlayMm ? surroundings.Fluid : Material.Introducer;
        }

        if (!d.HasCannula || fromTip < 0 || distance > d.OuterRadiusMm(fromTip))
        {
            return null;
        }

        double inner = d.InnerRadiusMm(fromTip);
        if (distance < inner || d.IsHole(fromTip, Math.Atan2(beside.B, beside.A), (inner + d.OuterRadiusMm(fromTip)) / 2))
        {
            return surroundings.Fluid;
        }

        return d.Winding is CoilWinding w && fromTip >= w.PlainTipMm ? Material.WoundPolymer : Material.Polymer;
    }
}
