namespace Cavaxis.Imaging.Tests.Tomography;

/// <summary>Twenty scans: noise from 8 to 45 HU, bends from none to 40 degrees, streaks, partial contrast, leads, thick and oblique slices.</summary>
internal static class PhantomSettings
{
    private static readonly double[] Noise = [8, 15, 25, 35, 45];

    public static PhantomSetting Of(int n)
    {
        Random random = new(700 + n);
        double Between(double low, double high) => low + ((high - low) * random.NextDouble());
        return new PhantomSetting
        {
            Seed = n + 1,
            NoiseHu = Noise[n % 5],
            StreakHu = n % 4 == 1 ? 15 : 0,
            Lead = n % 4 == 2,
            Layering = n % 3 == 1 ? 0.3 : 0,
            SvcHu = n % 4 == 3 ? 180 : 280,
            IvcHu = n % 4 == 3 ? 140 : Between(150, 220),
            SvcFrontalDeg = Between(-10, 3),
            SvcSagittalDeg = Between(-20, 2),
            IvcFrontalDeg = Between(-3, 12),
            IvcSagittalDeg = Between(0, 20),
            SvcRadiusMm = Between(6.5, 10),
            IvcRadiusMm = Between(8.5, 12),
            AtriumMm = Between(20, 23),
            AtriumLengthMm = Between(28, 36),
            VoxelMm = n % 3 == 0 ? 0.9 : 1.25,
            SliceMm = n % 5 == 4 ? 3 : n % 2 == 0 ? 2 : 1.5,
            ObliqueDeg = n % 7 == 3 ? 18 : 0,
        };
    }
}
