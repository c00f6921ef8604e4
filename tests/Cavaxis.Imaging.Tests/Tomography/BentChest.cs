using Cavaxis.Anatomy.Space;
using Cavaxis.Imaging.Volumes;

namespace Cavaxis.Imaging.Tests.Tomography;

/// <summary>
/// The second family of made-up chests: two swinging veins, the lower one flat, run into an egg that lies before and to the left of them; grainy noise
/// with rings; contrast that streams. Made after the tracer's limits were set, on another geometry, another noise and other contrast than <see cref="CavalPhantom"/>.
/// </summary>
internal sealed class BentChest
{
    private const double BlurMm = 0.75;
    private readonly BentSetting set;
    private readonly BentVein svc;
    private readonly BentVein ivc;
    private readonly Vector3D egg = new(4, -4, 0);

    public BentChest(BentSetting setting)
    {
        set = setting;
        svc = new BentVein(new Vector3D(0, 0, 0.62 * set.AtriumHalfMm), 1, set.SvcLean, set.SvcSwingMm, 0.4 + set.Seed, set.SvcRadiusMm, 1);
        ivc = new BentVein(new Vector3D(0, 0, -0.62 * set.AtriumHalfMm), -1, set.IvcLean, set.IvcSwingMm, 1.1 + set.Seed, set.IvcRadiusMm, set.IvcFlat);
        ScajLevel = Rim(svc, 1);
        IcajLevel = Rim(ivc, -1);
        (UpperLevel, LowerLevel) = (svc.Level(ScajLevel, 52, 1), ivc.Level(IcajLevel, 62, -1));
    }

    public double ScajLevel { get; }

    public double IcajLevel { get; }

    public double UpperLevel { get; }

    public double LowerLevel { get; }

    public Vector3D Scaj => svc.At(ScajLevel);

    public Vector3D Icaj => ivc.At(IcajLevel);

    public Vector3D UpperSeed => svc.At(UpperLevel);

    public Vector3D LowerSeed => ivc.At(LowerLevel);

    public BentVein Svc => svc;

    public BentVein Ivc => ivc;

    /// <summary>Direction of a vein by least squares through its middle from 3 to 35 mm beyond the mouth, towards the feet.</summary>
    public static Vector3D Direction(BentVein vein, double mouth, double towards)
    {
        Vector3D[] at = [.. Enumerable.Range(0, 33).Select(n => vein.At(vein.Level(mouth, 3 + n, towards)))];
        Vector3D slope = Vector3D.Zero;
        for (int n = 0; n < at.Length; n++)
        {
            slope += (n - 16) * at[n];
        }

        return (-towards * slope).Unit;
    }

    /// <summary>The scan.</summary>
    public ScanVolume Scan()
    {
        int wide = (int)(124 / set.VoxelMm);
        double top = UpperSeed.Z + 15;
        int slices = (int)((top - LowerSeed.Z + 15) / set.SliceMm);
        Vector3D middle = 0.5 * (UpperSeed + LowerSeed);
        Vector3D origin = new(middle.X - 62, middle.Y - 62, LowerSeed.Z - 15);
        short[] values = new short[wide * wide * slices];
        Parallel.For(0, slices, k =>
        {
            double[] grain = GrainyNoise.Slice(wide, set.Seed, k, set.NoiseHu, set.VoxelMm);
            for (int n = 0; n < grain.Length; n++)
            {
                Vector3D at = origin + new Vector3D(n % wide * set.VoxelMm, n / wide * set.VoxelMm, k * set.SliceMm);
                values[(k * wide * wide) + n] = (short)Math.Clamp(Math.Round(Hu(at) + grain[n]), -1024, 3071);
            }
        });
        return new ScanVolume(wide, wide, slices, values, origin, new(set.VoxelMm, 0, 0), new(0, set.VoxelMm, 0), new(0, 0, set.SliceMm));
    }

    private double Hu(Vector3D at)
    {
        (double outsideSvc, double across, double upright, double level) = at.Z > 0.2 * set.AtriumHalfMm ? svc.From(at) : (99, 0, 0, 0);
        (double outsideIvc, double acrossIvc, double uprightIvc, double levelIvc) = at.Z < -0.2 * set.AtriumHalfMm ? ivc.From(at) : (99, 0, 0, 0);
        double lumen = Math.Min(Egg(at), Math.Min(outsideSvc, outsideIvc));
        double share = Math.Clamp((at.Z / set.AtriumHalfMm * 0.5) + 0.5, 0, 1);
        double blood = set.IvcHu + (share * (set.SvcHu - set.IvcHu));
        blood += Stream(outsideSvc < 2, across, upright, level, outsideIvc < 2, acrossIvc, uprightIvc, levelIvc);
        double hu = Mixed(blood, Around(at), lumen);
        return set.Kind == BentKind.LeadAndLime ? Lead(at, hu) : hu;
    }

    private double Stream(bool inSvc, double across, double upright, double level, bool inIvc, double acrossIvc, double uprightIvc, double levelIvc)
    {
        double gone = Math.Max(0, UpperLevel - level);
        return set.Kind switch
        {
            BentKind.Jet when inSvc => 0.45 * (set.SvcHu - 45) * Math.Tanh(3 * across) * Math.Exp(-gone / 45),
            BentKind.Winding when inSvc => 0.4 * (set.SvcHu - 45) * Math.Cos(Math.Atan2(upright, across) - (gone / 9)) * Math.Min(1, (across * across) + (upright * upright)) * Math.Exp(-gone / 60),
            BentKind.UnmixedBelow when inIvc => -0.55 * (set.IvcHu - 45) * 0.5 * (1 + Math.Tanh(2.5 * (acrossIvc + (0.4 * uprightIvc)))) * Math.Clamp((IcajLevel - 10 - levelIvc) / 40, 0, 1),
            _ => 0,
        };
    }

    private double Around(Vector3D at)
    {
        bool belly = at.Z < IcajLevel - 12;
        double hu = Mixed(set.Kind == BentKind.Effusion ? 14 : -820, belly ? 85 : 48, (belly ? 60 : 0) + at.X + 31);
        double aorta = Math.Sqrt(Square(at.X - 30 - (5 * Math.Sin(at.Z / 40))) + Square(at.Y + 8)) - 14;
        hu = Mixed(set.SvcHu - 60, hu, aorta);
        if (set.Kind == BentKind.LeadAndLime && Math.Abs(aorta) < 1.3 && Math.Sin((3 * Math.Atan2(at.Y + 8, at.X - 30)) + (at.Z / 7)) > 0.75)
        {
            hu = 750;
        }

        hu = Mixed(380, hu, Math.Sqrt(Square(at.X - 14) + Square(at.Y - 50)) - 17);
        if (set.Kind == BentKind.Branches)
        {
            Vector3D from = at - Icaj - new Vector3D(0, 0, -20);
            double along = Math.Max(0, -0.8 * from.X + (0.6 * from.Z));
            hu = Mixed(set.IvcHu, hu, along <= 0 ? 99 : (from - new Vector3D(-0.8 * along, 0, 0.6 * along)).Length - 5);
            hu = Mixed(set.SvcHu - 30, hu, Math.Sqrt(Square(at.Z - ScajLevel - 22) + Square(at.Y - svc.At(at.Z).Y - set.SvcRadiusMm - 11.5)) - 9);
        }

        return hu;
    }

    private double Lead(Vector3D at, double hu)
    {
        Vector3D wire = at.Z > 0 ? svc.At(at.Z) + new Vector3D(0.6 * set.SvcRadiusMm * Math.Cos(at.Z / 25), 0.6 * set.SvcRadiusMm * Math.Sin(at.Z / 25), 0) : egg;
        Vector3D off = at - wire;
        if (at.Z < 0)
        {
            return hu;
        }

        double beside = Math.Sqrt(Square(off.X) + Square(off.Y));
        double star = 90 * Math.Sign(Math.Sin(7 * Math.Atan2(off.Y, off.X))) * Math.Exp(-beside / 9) * Math.Clamp(beside - 1.2, 0, 1);
        return Mixed(2800, hu + star, beside - 1);
    }

    private double Egg(Vector3D at)
    {
        Vector3D off = at - egg;
        double t = off.Z / set.AtriumHalfMm;
        double a = set.AtriumMm * (1 + (0.12 * t));
        double across = Math.Sqrt(Square(off.X / a) + Square(off.Y / (0.92 * a)));
        double norm = Math.Pow(Math.Pow(across, 2.3) + Math.Pow(Math.Abs(t), 2.3), 1 / 2.3);
        return (norm - 1) * set.AtriumMm;
    }

    // Mean level at which the wall of a vein meets the egg, all around; coming from the vein.
    private double Rim(BentVein vein, double towards)
    {
        double sum = 0;
        for (int n = 0; n < 72; n++)
        {
            double z = towards * (set.AtriumHalfMm + 25);
            while (towards * z > -10 && Egg(vein.Wall(z, n * Math.PI / 36)) > 0)
            {
                z -= towards * 0.05;
            }

            sum += z;
        }

        return sum / 72;
    }

    private static double Mixed(double inside, double outside, double distance) => outside + ((inside - outside) / (1 + Math.Exp(1.702 * Math.Clamp(distance, -20, 20) / BlurMm)));

    private static double Square(double x) => x * x;
}
