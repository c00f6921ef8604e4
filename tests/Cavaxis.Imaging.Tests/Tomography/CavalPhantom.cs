using Cavaxis.Anatomy.Space;
using Cavaxis.Imaging.Volumes;

namespace Cavaxis.Imaging.Tests.Tomography;

/// <summary>
/// Two straight tubes that run into an ellipsoid, among soft tissue, lung, liver, spine and a bright neighbour; its lengths, diameters and
/// angles are known from its making. A junction is the mean place of the rim where the wall of a tube meets the ellipsoid.
/// </summary>
internal sealed class CavalPhantom
{
    private const double Degree = Math.PI / 180;
    private readonly PhantomSetting set;
    private readonly Vector3D svcStart;
    private readonly Vector3D ivcStart;
    private readonly Vector3D leadOff = new(3.5, -2, 0);

    public CavalPhantom(PhantomSetting setting)
    {
        set = setting;
        SvcDown = Down(set.SvcFrontalDeg, set.SvcSagittalDeg);
        IvcDown = Down(set.IvcFrontalDeg, set.IvcSagittalDeg);
        svcStart = new Vector3D(0, 0, 0.75 * set.AtriumLengthMm);
        ivcStart = new Vector3D(0, 0, -0.75 * set.AtriumLengthMm);
        Scaj = svcStart - (Rim(svcStart, -SvcDown, set.SvcRadiusMm) * SvcDown);
        Icaj = ivcStart + (Rim(ivcStart, IvcDown, set.IvcRadiusMm) * IvcDown);
        UpperSeed = Scaj - (55 * SvcDown);
        LowerSeed = Icaj + (65 * IvcDown);
    }

    public Vector3D SvcDown { get; }

    public Vector3D IvcDown { get; }

    public Vector3D Scaj { get; }

    public Vector3D Icaj { get; }

    public Vector3D UpperSeed { get; }

    public Vector3D LowerSeed { get; }

    public double SpanMm => (Icaj - Scaj).Length;

    /// <summary>The scan.</summary>
    public ScanVolume Scan()
    {
        (double sin, double cos) = Math.SinCos(set.ObliqueDeg * Degree);
        Vector3D along = new(cos, sin, 0);
        Vector3D down = new(-sin * cos, cos * cos, sin);
        Vector3D through = along.Cross(down);
        double half = 62;
        int columns = (int)(2 * half / set.VoxelMm);
        double top = UpperSeed.Z + 16;
        double bottom = LowerSeed.Z - 16;
        int slices = (int)((top - bottom + (set.ObliqueDeg == 0 ? 0 : 40)) / set.SliceMm);
        Vector3D middle = new((UpperSeed.X + LowerSeed.X) / 2, (UpperSeed.Y + LowerSeed.Y) / 2, (top + bottom) / 2);
        Vector3D origin = middle - (set.VoxelMm * (columns - 1) / 2 * (along + down)) - (set.SliceMm * (slices - 1) / 2 * through);
        short[] values = new short[columns * columns * slices];
        Parallel.For(0, slices, k =>
        {
            Random random = new((set.Seed * 1000) + k);
            for (int j = 0; j < columns; j++)
            {
                double streak = set.StreakHu * Normal(random);
                for (int i = 0; i < columns; i++)
                {
                    Vector3D at = origin + (i * set.VoxelMm * along) + (j * set.VoxelMm * down) + (k * set.SliceMm * through);
                    streak = (0.97 * streak) + (0.243 * set.StreakHu * Normal(random));
                    double hu = Hu(at) + streak + (set.NoiseHu * Normal(random));
                    values[(((k * columns) + j) * columns) + i] = (short)Math.Clamp(Math.Round(hu), -1024, 3071);
                }
            }
        });
        return new ScanVolume(columns, columns, slices, values, origin, set.VoxelMm * along, set.VoxelMm * down, set.SliceMm * through);
    }

    private double Hu(Vector3D at)
    {
        double lumen = Math.Min(Ellipsoid(at), Math.Min(Tube(at, svcStart, -SvcDown, set.SvcRadiusMm), Tube(at, ivcStart, IvcDown, set.IvcRadiusMm)));
        double level = Math.Clamp((at.Z + set.AtriumLengthMm) / (2 * set.AtriumLengthMm), 0, 1);
        double blood = set.IvcHu + (level * (set.SvcHu - set.IvcHu));
        blood += set.Layering * (blood - 45) * Math.Clamp(at.Y / 20, -0.5, 0.5);
        double tissue = at.Z < Icaj.Z ? 75 : 45;
        double lung = at.Z > -20 ? at.X + 34 : 40;
        double around = Mixed(-800, tissue, lung);
        if (set.Neighbour)
        {
            around = Mixed(set.SvcHu - 30, around, Math.Sqrt(Square(at.X - 36) + Square(at.Y + 4)) - 12);
            around = Mixed(420, around, Math.Sqrt(Square(at.X - 18) + Square(at.Y - 48)) - 16);
        }

        double hu = Mixed(blood, around, lumen);
        if (set.Lead && at.Z > -10)
        {
            Vector3D off = at - (svcStart + leadOff);
            double along = off.Dot(-SvcDown);
            double wire = along > 0 ? Math.Sqrt(Math.Max(0, off.SquaredLength - (along * along))) : Math.Sqrt(Square(off.X) + Square(off.Y));
            hu = Mixed(3000, hu, wire - 0.9);
            hu += 60 * Math.Sin(5 * Math.Atan2(off.Y, off.X)) * Math.Exp(-wire / 12) * Math.Clamp(wire - 1, 0, 1);
        }

        return hu;
    }

    private double Mixed(double inside, double outside, double distance)
    {
        double share = 1 / (1 + Math.Exp(1.702 * distance / set.BlurMm));
        return outside + (share * (inside - outside));
    }

    private double Ellipsoid(Vector3D p)
    {
        (double a, double c) = (set.AtriumMm, set.AtriumLengthMm);
        double k0 = new Vector3D(p.X / a, p.Y / a, p.Z / c).Length;
        double k1 = new Vector3D(p.X / (a * a), p.Y / (a * a), p.Z / (c * c)).Length;
        return k1 < 1e-9 ? -a : k0 * (k0 - 1) / k1;
    }

    private static double Tube(Vector3D p, Vector3D start, Vector3D way, double radius)
    {
        Vector3D off = p - start;
        double along = off.Dot(way);
        return along < -6 ? 100 : Math.Sqrt(Math.Max(0, off.SquaredLength - (along * along))) - radius;
    }

    private double Rim(Vector3D start, Vector3D way, double radius)
    {
        Vector3D e1 = way.Cross(new Vector3D(0, 1, 0)).Unit;
        Vector3D e2 = way.Cross(e1);
        double sum = 0;
        for (int n = 0; n < 90; n++)
        {
            (double sin, double cos) = Math.SinCos(4 * n * Degree);
            double s = 60;
            while (s > -30 && Ellipsoid(start + (s * way) + (radius * ((cos * e1) + (sin * e2)))) > 0)
            {
                s -= 0.05;
            }

            sum += s;
        }

        return sum / 90;
    }

    private static Vector3D Down(double frontalDeg, double sagittalDeg) => new Vector3D(-Math.Tan(frontalDeg * Degree), Math.Tan(sagittalDeg * Degree), -1).Unit;

    private static double Square(double x) => x * x;

    private static double Normal(Random random) => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
}
