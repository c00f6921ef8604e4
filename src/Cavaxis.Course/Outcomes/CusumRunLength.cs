using Cavaxis.Quantities.Faults;

namespace Cavaxis.Course.Outcomes;

/// <summary>
/// Mean number of cases until a chart signals when cases of a given mix come in random order: L(s) = 1 + Σ P·L(max(0, s + w)) below the limit and 0 at it
/// (Page 1954), solved on a grid with straight lines between its points.
/// </summary>
public static class CusumRunLength
{
    private const int Cells = 400;
    private const int MostRisks = 20;

    /// <summary>The mean run length from 0.</summary>
    /// <param name="risks">Expected risks of the mix; each as likely as another.</param>
    /// <param name="setting">The chart.</param>
    /// <param name="trueOddsRatio">Change of the odds that holds in truth, 0.1 to 10: 1 for none, then the answer is the time to a signal by chance.</param>
    /// <returns>Cases until a signal on average; infinite when none is possible.</returns>
    /// <exception cref="InputFaultException">There is no risk, or a number is out of range.</exception>
    public static double Mean(IReadOnlyList<double> risks, CusumSetting setting, double trueOddsRatio)
    {
        ArgumentNullException.ThrowIfNull(risks);
        ArgumentNullException.ThrowIfNull(setting);
        Require.InRange(trueOddsRatio, 0.1, 10, nameof(trueOddsRatio), "Give the change of the odds, 1 for none.");
        Require.InRange(risks.Count, 1, int.MaxValue, nameof(risks), "Give the expected risks of the cases.");
        (double Weight, double Probability)[] steps = [.. Thinned(risks).SelectMany(r => Steps(r.Risk, r.Share, setting, trueOddsRatio))];
        return steps.Max(static s => s.Weight) <= 0 ? double.PositiveInfinity : Solve(steps, setting.Limit);
    }

    /// <summary>The mean run length of a sum of given steps.</summary>
    /// <param name="steps">Step and its probability; the probabilities add up to 1.</param>
    /// <param name="limit">Limit at which the sum signals.</param>
    internal static double Solve((double Weight, double Probability)[] steps, double limit)
    {
        // Row i: L(s_i) − Σ P·L(max(0, s_i + w)) = 1. A sum at the limit has signalled, so L there is 0 and between the last point and the limit nothing is interpolated to it.
        double width = limit / Cells;
        double[][] rows = new double[Cells][];
        double[] right = new double[Cells];
        for (int i = 0; i < Cells; i++)
        {
            rows[i] = new double[Cells];
            rows[i][i] = 1;
            right[i] = 1;
            foreach ((double weight, double probability) in steps)
            {
                double to = Math.Max(0, (i * width) + weight);
                if (to >= limit * (1 - 1e-12))
                {
                    continue;
                }

                double at = to / width;
                int below = Math.Min((int)(at + 1e-9), Cells - 1);
                double share = Math.Max(0, at - below);
                if (below == Cells - 1)
                {
                    rows[i][below] -= probability;
                }
                else
                {
                    rows[i][below] -= probability * (1 - share);
                    rows[i][below + 1] -= probability * share;
                }
            }
        }

        return Eliminate(rows, right);
    }

    // Diagonally dominant, so no exchange of rows is needed.
    private static double Eliminate(double[][] rows, double[] right)
    {
        for (int k = Cells - 1; k > 0; k--)
        {
            double[] pivot = rows[k];
            for (int i = 0; i < k; i++)
            {
                double factor = rows[i][k] / pivot[k];
                if (factor == 0)
                {
                    continue;
                }

                double[] row = rows[i];
                for (int j = 0; j < k; j++)
                {
                    row[j] -= factor * pivot[j];
                }

                right[i] -= factor * right[k];
            }
        }

        return right[0] / rows[0][0];
    }

    private static IEnumerable<(double Weight, double Probability)> Steps(double risk, double share, CusumSetting setting, double trueOddsRatio)
    {
        double odds = trueOddsRatio * risk / (1 - risk);
        double happens = odds / (1 + odds);
        yield return (setting.Weight(risk, true), share * happens);
        yield return (setting.Weight(risk, false), share * (1 - happens));
    }

    /// <summary>A long list of risks stands for at most twenty groups of equal size, each by its mean.</summary>
    private static IEnumerable<(double Risk, double Share)> Thinned(IReadOnlyList<double> risks)
    {
        double[] sorted = [.. risks.Order()];
        int groups = Math.Min(MostRisks, sorted.Length);
        for (int g = 0; g < groups; g++)
        {
            int from = (int)((long)g * sorted.Length / groups);
            int to = (int)((long)(g + 1) * sorted.Length / groups);
            yield return (sorted[from..to].Average(), (to - from) / (double)sorted.Length);
        }
    }
}
