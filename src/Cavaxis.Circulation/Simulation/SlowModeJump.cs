using Cavaxis.Circulation.Equations;
using Cavaxis.Circulation.Lanes;

namespace Cavaxis.Circulation.Simulation;

/// <summary>
/// Aitken's extrapolation of the slowest mode: where successive changes shrink by a steady factor, the end of the geometric series is
/// taken at once. Applied apart to blood, oxygen and carbon dioxide. Changes of the volumes sum to zero, so the jump keeps
/// the total. It only shortens the way: whether a state is settled is judged on plain breaths afterwards.
/// </summary>
/// <typeparam name="T">One patient or a row of them.</typeparam>
internal static class SlowModeJump<T>
    where T : unmanaged, ILane<T>
{
    private const double LeastFactor = 0.2;

    // Where one mode rules, one change points like the next; several modes together are left to die down first.
    private const double LeastLikeness = 0.95;
    private const double MostFactor = 0.996;
    private const double MostRelativeChange = 0.25;

    private static readonly int[][] Groups =
    [
        [.. Enumerable.Range(0, StateIndex.Oxygen)],
        [.. Enumerable.Range(StateIndex.Oxygen, GasNode.Count), StateIndex.AlveolarOxygen],
        [.. Enumerable.Range(StateIndex.CarbonDioxide, GasNode.Count), StateIndex.AlveolarCarbonDioxide],
    ];

    /// <summary>Jumps.</summary>
    /// <param name="first">State at the start.</param>
    /// <param name="second">State some breaths later.</param>
    /// <param name="third">State as many breaths later again; moved in place.</param>
    /// <param name="barred">True for each patient that is not to jump.</param>
    public static void Apply(ReadOnlySpan<T> first, ReadOnlySpan<T> second, Span<T> third, ReadOnlySpan<bool> barred)
    {
        Span<double> row = stackalloc double[T.Count];
        Span<double> factor = stackalloc double[T.Count];
        foreach (int[] group in Groups)
        {
            for (int lane = 0; lane < T.Count; lane++)
            {
                factor[lane] = barred[lane] ? 0 : Factor(first, second, third, group, lane);
            }

            foreach (int i in group)
            {
                for (int lane = 0; lane < T.Count; lane++)
                {
                    row[lane] = third[i][lane] + (factor[lane] * (third[i][lane] - second[i][lane]));
                }

                third[i] = T.Load(row);
            }
        }
    }

    private static double Factor(ReadOnlySpan<T> first, ReadOnlySpan<T> second, ReadOnlySpan<T> third, int[] group, int lane)
    {
        double dot = 0;
        double square = 0;
        double nextSquare = 0;
        foreach (int i in group)
        {
            double before = second[i][lane] - first[i][lane];
            double after = third[i][lane] - second[i][lane];
            dot += before * after;
            nextSquare += after * after;
            square += before * before;
        }

        double shrink = square > 0 ? dot / square : 0;
        if (!(shrink >= LeastFactor) || dot < LeastLikeness * Math.Sqrt(square * nextSquare))
        {
            return 0;
        }

        shrink = Math.Min(shrink, MostFactor);
        double factor = shrink / (1 - shrink);
        foreach (int i in group)
        {
            double change = Math.Abs(third[i][lane] - second[i][lane]);
            double room = MostRelativeChange * Math.Abs(third[i][lane]);
            bool counts = i < StateIndex.VolumeCount || i >= StateIndex.Oxygen;
            factor = counts && change * factor > room ? room / change : factor;
        }

        return factor;
    }
}
