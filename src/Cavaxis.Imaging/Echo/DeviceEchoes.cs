namespace Cavaxis.Imaging.Echo;

/// <summary>The surfaces of vessel and device, one after the other.</summary>
internal static class DeviceEchoes
{
    private const double Rough = 1.2;

    /// <summary>Adds all surfaces of a scene.</summary>
    public static void Add(SurfaceField field, EchoScene scene)
    {
        Surroundings around = scene.Surroundings;
        if (around.Axis is SpaceCurve axis)
        {
            SurfaceFinish intima = new(MaterialTable.IntimaReflection, 1);
            field.AddTube(axis, 0, axis.LengthMm, _ => around.RadiusMm, intima, 1);
            field.AddTube(axis, 0, axis.LengthMm, _ => around.RadiusMm + around.WallMm, intima with { Reflection = MaterialTable.IntimaReflection / 2 }, 2);
        }

        if (scene.Device is not DeviceAssembly device)
        {
            return;
        }

        SpaceCurve curve = SceneSpace.Lengthened(device);
        if (device.HasCannula)
        {
            AddCannula(field, device, curve);
        }

        if (device.HasIntroducer)
        {
            SurfaceFinish polymer = new(MaterialTable.PolymerReflection, Rough / 2);
            field.AddTube(curve, 0, device.TipMm + device.IntroducerBeyondTipMm, arc => device.IntroducerRadiusMm(device.TipMm - arc), polymer, 6);
        }

        if (device.HasWire)
        {
            field.AddTube(curve, 0, device.WireEndMm, _ => device.WireRadiusMm, Wire(device), 7, arc => device.WireOffsetMm(device.TipMm - arc));
        }
    }

    /// <summary>Way between the echoes that a wire throws to and fro in itself, as depth, mm: its diameter, gone through at the speed of steel.</summary>
    public static double WireRingMm(DeviceAssembly device) => device.WireDiameterMm * Probe.SpeedMPerS / MaterialTable.SteelSpeedMPerS;

    /// <summary>Way between the echoes thrown to and fro across the lumen, as depth, mm: its inner diameter.</summary>
    public static double LumenRingMm(DeviceAssembly device, double fromTipMm) => 2 * device.InnerRadiusMm(fromTipMm);

    /// <summary>Part of the pressure that a cannula's wall throws back inwards: polymer and winding, added as powers.</summary>
    public static double WallReflection(DeviceAssembly device)
    {
        double wound = MaterialTable.SteelReflection * (device.Winding?.Cover ?? 0);
        return Math.Sqrt((MaterialTable.PolymerReflection * MaterialTable.PolymerReflection) + (wound * wound));
    }

    // Into the steel and out again leaves 1 − R² of the pressure; each way to and fro inside keeps R², and a part for the round shape.
    private static SurfaceFinish Wire(DeviceAssembly device)
    {
        const double KeptByShape = 0.85;
        double inside = MaterialTable.SteelReflection * MaterialTable.SteelReflection;
        return new SurfaceFinish(MaterialTable.SteelReflection, Rough, WireRingMm(device), 1 - inside, inside * KeptByShape, 16);
    }

    private static void AddCannula(SurfaceField field, DeviceAssembly device, SpaceCurve curve)
    {
        double tip = device.TipMm;
        bool IsOpen(double arc, double angle, double radius) => device.IsHole(tip - arc, angle, radius);
        double back = WallReflection(device);
        SurfaceFinish outer = new(
            MaterialTable.PolymerReflection, Rough, device.WallMm * Probe.SpeedMPerS / MaterialTable.PolymerSpeedMPerS, MaterialTable.PolymerReflection * back, MaterialTable.PolymerReflection * back, 3);
        SurfaceFinish inner = device.HasIntroducer
            ? new SurfaceFinish(MaterialTable.PolymerReflection, Rough)
            : new SurfaceFinish(MaterialTable.PolymerReflection, Rough, LumenRingMm(device, device.BodyMm), back * back, back * back, 4, RingsWhereFar: true);
        field.AddTube(curve, 0, tip, arc => device.OuterRadiusMm(tip - arc), outer, 3, isOpen: (arc, angle) => IsOpen(arc, angle, device.OuterRadiusMm(tip - arc)));
        field.AddTube(curve, 0, tip, arc => device.InnerRadiusMm(tip - arc), inner, 4, isOpen: (arc, angle) => IsOpen(arc, angle, device.InnerRadiusMm(tip - arc)));
        field.AddRing(curve, tip, device.InnerRadiusMm(0), device.OuterRadiusMm(0), outer with { Rings = 0 }, 5);
        if (device.Winding is CoilWinding winding && tip > winding.PlainTipMm)
        {
            double Middle(double arc) => (device.OuterRadiusMm(tip - arc) + device.InnerRadiusMm(tip - arc)) / 2;
            field.AddWinding(curve, 0, tip - winding.PlainTipMm, Middle, winding, (arc, angle) => IsOpen(arc, angle, Middle(arc)), 8);
        }
    }
}
