namespace Cavaxis.Imaging.Tests.Tomography;

/// <summary>Twenty-eight scans, four of each kind. None of the limits of the tracer was set on them.</summary>
internal static class BentSettings
{
    public const int Count = 28;

    public static BentSetting Of(int n)
    {
        Random random = new(52_000 + n);
        double Between(double low, double high) => low + ((high - low) * random.NextDouble());
        BentKind kind = (BentKind)(n % 7);
        double noise = Between(8, 40);
        bool faint = kind == BentKind.Effusion;
        return new BentSetting
        {
            Seed = n + 1,
            Kind = kind,
            NoiseHu = faint ? Math.Min(noise, 22) : noise,
            SvcHu = faint ? Between(110, 150) : Between(170, 380),
            IvcHu = faint ? Between(105, 130) : Between(130, 200),
            SvcLean = (Between(-0.12, 0.1), Between(-0.25, 0)),
            IvcLean = (Between(-0.08, 0.15), Between(0, 0.25)),
            SvcSwingMm = Between(0, 3),
            IvcSwingMm = Between(0, 3.5),
            SvcRadiusMm = Between(6, 9.5),
            IvcRadiusMm = Between(8, 12),
            IvcFlat = Between(1, 1.6),
            AtriumMm = Between(21, 25),
            AtriumHalfMm = Between(27, 36),
            VoxelMm = n % 2 == 0 ? 0.98 : 1.37,
            SliceMm = n % 3 == 0 ? 2.5 : 1.6,
        };
    }
}
