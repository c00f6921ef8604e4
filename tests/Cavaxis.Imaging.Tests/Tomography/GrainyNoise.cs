namespace Cavaxis.Imaging.Tests.Tomography;

/// <summary>Noise that is alike over neighbouring voxels of a slice, with rings about the middle and a slice-wise offset.</summary>
internal static class GrainyNoise
{
    /// <summary>A slice of it.</summary>
    public static double[] Slice(int wide, int seed, int slice, double sdHu, double voxelMm)
    {
        Random random = new((seed * 7919) + slice);
        double[] white = [.. Enumerable.Range(0, wide * wide).Select(_ => Normal(random))];
        double[] grain = new double[white.Length];
        double offset = 0.1 * sdHu * Normal(random);
        double phase = random.NextDouble() * 6;
        for (int n = 0; n < grain.Length; n++)
        {
            int x = n % wide;
            int y = n / wide;
            double sum = 0;
            for (int j = -1; j <= 1; j++)
            {
                for (int i = -1; i <= 1; i++)
                {
                    sum += (2 - Math.Abs(i)) * (2 - Math.Abs(j)) * white[(((y + j + wide) % wide) * wide) + ((x + i + wide) % wide)];
                }
            }

            // The sum of squares of the weights is 36: six times the standard deviation of white noise.
            double ring = Math.Sqrt(Math.Pow(x - (wide / 2.0), 2) + Math.Pow(y - (wide / 2.0), 2)) * voxelMm;
            grain[n] = (sdHu * sum / 6) + offset + (0.3 * sdHu * Math.Sin((ring / 0.8) + phase) * Math.Exp(-ring / 40));
        }

        return grain;
    }

    private static double Normal(Random random) => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
}
