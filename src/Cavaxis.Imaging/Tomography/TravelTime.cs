using Cavaxis.Anatomy.Space;

namespace Cavaxis.Imaging.Tomography;

/// <summary>
/// Cost of the cheapest way from a place to every cube of a grid: |∇T| = cost, T = 0 at the place, solved by fast marching (Sethian 1996)
/// with second-order upwind differences where two known cubes lie in line, first-order ones elsewhere. Cubes within two steps of the place
/// take the cost along a straight line, so that the point source does not spoil the order.
/// </summary>
internal sealed class TravelTime
{
    private const double StraightCubes = 2.5;

    private readonly TravelCost cost;
    private readonly double[] time;
    private readonly bool[] known;
    private readonly int[] strides;
    private readonly PriorityQueue<int, double> front = new();

    /// <summary>Marches from a place until another is reached.</summary>
    /// <param name="cost">The field.</param>
    /// <param name="from">Where T is zero, mm.</param>
    /// <param name="to">Where to stop, mm.</param>
    public TravelTime(TravelCost cost, Vector3D from, Vector3D to)
    {
        this.cost = cost;
        time = new double[cost.PerMm.Length];
        known = new bool[time.Length];
        strides = [1, cost.CountX, cost.CountX * cost.CountY];
        Array.Fill(time, double.PositiveInfinity);
        Start(from);
        March(Index(cost.CubeOf(to)));
    }

    /// <summary>Cost up to the middle of a cube; infinite where it was not reached.</summary>
    /// <param name="x">Cube along x.</param>
    /// <param name="y">Cube along y.</param>
    /// <param name="z">Cube along z.</param>
    public double this[int x, int y, int z] => time[Index((x, y, z))];

    private int Index((int X, int Y, int Z) cube) => (((cube.Z * cost.CountY) + cube.Y) * cost.CountX) + cube.X;

    private void Start(Vector3D from)
    {
        (int x, int y, int z) = cost.CubeOf(from);
        double source = cost.PerMm[Index((x, y, z))];
        int reach = (int)StraightCubes;
        for (int k = Math.Max(0, z - reach); k <= Math.Min(cost.CountZ - 1, z + reach); k++)
        {
            for (int j = Math.Max(0, y - reach); j <= Math.Min(cost.CountY - 1, y + reach); j++)
            {
                for (int i = Math.Max(0, x - reach); i <= Math.Min(cost.CountX - 1, x + reach); i++)
                {
                    Vector3D cube = cost.Origin + (cost.StepMm * new Vector3D(i, j, k));
                    double distance = (cube - from).Length;
                    if (distance <= StraightCubes * cost.StepMm)
                    {
                        int at = Index((i, j, k));
                        time[at] = distance * 0.5 * (source + cost.PerMm[at]);
                        front.Enqueue(at, time[at]);
                    }
                }
            }
        }
    }

    private void March(int target)
    {
        // A little beyond the goal, so that its surroundings are known where the way back begins.
        double stop = double.PositiveInfinity;
        while (front.TryDequeue(out int at, out double reached) && reached <= stop)
        {
            if (known[at])
            {
                continue;
            }

            known[at] = true;
            if (at == target)
            {
                stop = reached + (3 * cost.StepMm * cost.PerMm[at]);
            }

            Widen(at);
        }
    }

    private void Widen(int at)
    {
        int x = at % cost.CountX;
        int y = at / cost.CountX % cost.CountY;
        int z = at / strides[2];
        Visit(x > 0, at - 1);
        Visit(x < cost.CountX - 1, at + 1);
        Visit(y > 0, at - strides[1]);
        Visit(y < cost.CountY - 1, at + strides[1]);
        Visit(z > 0, at - strides[2]);
        Visit(z < cost.CountZ - 1, at + strides[2]);
    }

    private void Visit(bool inside, int at)
    {
        if (inside && !known[at])
        {
            double trial = Solve(at);
            if (trial < time[at])
            {
                time[at] = trial;
                front.Enqueue(at, trial);
            }
        }
    }

    // Σ (a T − b)² = cost², one term an axis; the largest root, with axes left out that would look downstream.
    private double Solve(int at)
    {
        Span<double> weight = stackalloc double[3];
        Span<double> base1 = stackalloc double[3];
        Span<double> nearest = stackalloc double[3];
        int terms = 0;
        for (int axis = 0; axis < 3; axis++)
        {
            int count = axis == 0 ? cost.CountX : axis == 1 ? cost.CountY : cost.CountZ;
            int place = at / strides[axis] % count;
            double best = double.PositiveInfinity;
            double second = double.PositiveInfinity;
            for (int side = -1; side <= 1; side += 2)
            {
                int one = place + side;
                if (one >= 0 && one < count && known[at + (side * strides[axis])] && time[at + (side * strides[axis])] < best)
                {
                    best = time[at + (side * strides[axis])];
                    int two = place + (2 * side);
                    int far = at + (2 * side * strides[axis]);
                    second = two >= 0 && two < count && known[far] && time[far] <= best ? time[far] : double.PositiveInfinity;
                }
            }

            if (double.IsFinite(best))
            {
                bool twice = double.IsFinite(second);
                weight[terms] = twice ? 1.5 : 1;
                base1[terms] = twice ? ((4 * best) - second) / 3 : best;
                nearest[terms] = best;
                terms++;
            }
        }

        double speed = cost.PerMm[at] * cost.StepMm;
        return Root(weight[..terms], base1[..terms], nearest[..terms], speed);
    }

    private static double Root(Span<double> weight, Span<double> from, Span<double> nearest, double speed)
    {
        // Axes in the order of their nearest times; the farthest is dropped while it lies downstream of the answer.
        for (int used = weight.Length; used >= 1; used--)
        {
            if (used < weight.Length || weight.Length > 1)
            {
                Order(weight, from, nearest);
            }

            double a = 0;
            double b = 0;
            double c = -speed * speed;
            for (int n = 0; n < used; n++)
            {
                double w = weight[n] * weight[n];
                a += w;
                b += w * from[n];
                c += w * from[n] * from[n];
            }

            double inside = (b * b) - (a * c);
            if (inside >= 0)
            {
                double root = (b + Math.Sqrt(inside)) / a;
                if (root >= nearest[used - 1])
                {
                    return root;
                }
            }
        }

        return nearest[0] + speed;
    }

    private static void Order(Span<double> weight, Span<double> from, Span<double> nearest)
    {
        for (int i = 1; i < nearest.Length; i++)
        {
            for (int j = i; j > 0 && nearest[j] < nearest[j - 1]; j--)
            {
                (nearest[j], nearest[j - 1]) = (nearest[j - 1], nearest[j]);
                (from[j], from[j - 1]) = (from[j - 1], from[j]);
                (weight[j], weight[j - 1]) = (weight[j - 1], weight[j]);
            }
        }
    }
}
