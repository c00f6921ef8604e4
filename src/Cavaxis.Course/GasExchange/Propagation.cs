using Cavaxis.Anatomy.Sampling;
using Cavaxis.Quantities;

namespace Cavaxis.Course.GasExchange;

/// <summary>
/// Carries the errors of readings through a formula by sampling. Each reading is drawn from a normal law whose two halves reach its own
/// interval, so that skewed readings stay skewed. The same readings give the same answer: the draws belong to the seed.
/// </summary>
internal static class Propagation
{
    /// <summary>Seed of the draws, recorded here because the result depends on it.</summary>
    public const ulong Seed = 20261128;

    /// <summary>Draws; the error of an interval's end is then about 3 % of a standard deviation.</summary>
    public const int Draws = 4000;

    private const double MostLost = 0.1;
    private const int MostInputs = 8;

    private static readonly double[] Normals = Drawn();

    /// <summary>A formula of readings with its error.</summary>
    /// <param name="inputs">The readings, taken as independent.</param>
    /// <param name="formula">Gives a number that is not finite where the readings make no sense together.</param>
    /// <returns>Formula of the best values with the interval of the draws; null when it has no answer there or more than a tenth of the draws have none.</returns>
    public static Estimate? Through(ReadOnlySpan<Estimate> inputs, Func<double[], double> formula)
    {
        ArgumentOutOfRangeException.ThrowIfGreaterThan(inputs.Length, MostInputs, nameof(inputs));
        double[] at = new double[inputs.Length];
        for (int i = 0; i < at.Length; i++)
        {
            at[i] = inputs[i].Value;
        }

        double best = formula(at);
        if (!double.IsFinite(best))
        {
            return null;
        }

        List<double> found = new(Draws);
        for (int draw = 0; draw < Draws; draw++)
        {
            for (int i = 0; i < at.Length; i++)
            {
                double z = Normals[(draw * MostInputs) + i];
                double half = z < 0 ? inputs[i].Value - inputs[i].Low : inputs[i].High - inputs[i].Value;
                at[i] = inputs[i].Value + (z * Math.Max(0, half) / Estimate.NormalQuantile95);
            }

            double value = formula(at);
            if (double.IsFinite(value))
            {
                found.Add(value);
            }
        }

        if (found.Count < (1 - MostLost) * Draws)
        {
            return null;
        }

        Estimate drawn = Estimate.FromSamples(found.ToArray(), Origin.Calculated);
        return Estimate.WithInterval(best, drawn.Sd, Math.Min(best, drawn.Low), Math.Max(best, drawn.High), Origin.Calculated);
    }

    /// <summary>The draws, once for all: normal numbers by Box and Muller 1958, one counter of the generator each.</summary>
    private static double[] Drawn()
    {
        double[] normals = new double[Draws * MostInputs];
        for (int i = 0; i < normals.Length; i++)
        {
            (uint a, uint b, _, _) = Philox.Bits((uint)(i / MostInputs), (uint)(i % MostInputs), 0, 0, Seed);
            normals[i] = Math.Sqrt(-2 * Math.Log((a + 0.5) / 4294967296.0)) * Math.Cos(2 * Math.PI * ((b + 0.5) / 4294967296.0));
        }

        return normals;
    }
}
