using Cavaxis.Anatomy.Space;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Imaging.Tomography;

/// <summary>
/// The cheapest way between two places through a field of costs, finer than its cubes: from the goal straight down the slope of the travel
/// cost (Cohen and Kimmel 1997) back to the start.
/// </summary>
public static class MinimalPath
{
    private const double StepShare = 0.4;

    /// <summary>The way.</summary>
    /// <param name="cost">What a millimetre costs where.</param>
    /// <param name="from">Start, mm; inside of the grid.</param>
    /// <param name="to">Goal, mm; inside of the grid.</param>
    /// <returns>The line from start to goal, and what it costs.</returns>
    /// <exception cref="InputFaultException">Start and goal are one place.</exception>
    public static (SpaceCurve Way, double Cost) Between(TravelCost cost, Vector3D from, Vector3D to)
    {
        ArgumentNullException.ThrowIfNull(cost);
        _ = Require.InRange((to - from).Length, cost.StepMm, 1e5, "path.lengthMm", "Give two places that lie apart.");
        TravelTime time = new(cost, from, to);
        List<Vector3D> way = [to];
        Vector3D at = to;
        double step = StepShare * cost.StepMm;
        int most = 40 * (cost.CountX + cost.CountY + cost.CountZ);
        for (int n = 0; n < most && (at - from).Length > 1.5 * cost.StepMm; n++)
        {
            Vector3D slope = Slope(cost, time, at);
            double length = slope.Length;
            Vector3D next = at - (step / length * slope);
            if (!(length > 0) || (way.Count > 4 && (next - way[^3]).Length < 0.3 * step))
            {
                next = Lowest(cost, time, at);
            }

            at = next;
            way.Add(at);
        }

        way.Add(from);
        way.Reverse();
        (int x, int y, int z) = cost.CubeOf(to);
        return (new SpaceCurve(way), time[x, y, z]);
    }

    // Upwind differences at the eight cubes about a place, mixed: these are exact at kinks where central ones are not.
    private static Vector3D Slope(TravelCost cost, TravelTime time, Vector3D at)
    {
        Vector3D cube = (at - cost.Origin) / cost.StepMm;
        int x = Math.Clamp((int)Math.Floor(cube.X), 0, cost.CountX - 2);
        int y = Math.Clamp((int)Math.Floor(cube.Y), 0, cost.CountY - 2);
        int z = Math.Clamp((int)Math.Floor(cube.Z), 0, cost.CountZ - 2);
        Vector3D sum = Vector3D.Zero;
        for (int corner = 0; corner < 8; corner++)
        {
            int i = x + (corner & 1);
            int j = y + ((corner >> 1) & 1);
            int k = z + (corner >> 2);
            double share = (1 - Math.Abs(Math.Clamp(cube.X, x, x + 1) - i)) * (1 - Math.Abs(Math.Clamp(cube.Y, y, y + 1) - j)) * (1 - Math.Abs(Math.Clamp(cube.Z, z, z + 1) - k));
            double here = time[i, j, k];
            if (double.IsFinite(here))
            {
                sum += share * new Vector3D(
                    Upwind(here, i > 0 ? time[i - 1, j, k] : double.PositiveInfinity, i < cost.CountX - 1 ? time[i + 1, j, k] : double.PositiveInfinity),
                    Upwind(here, j > 0 ? time[i, j - 1, k] : double.PositiveInfinity, j < cost.CountY - 1 ? time[i, j + 1, k] : double.PositiveInfinity),
                    Upwind(here, k > 0 ? time[i, j, k - 1] : double.PositiveInfinity, k < cost.CountZ - 1 ? time[i, j, k + 1] : double.PositiveInfinity));
            }
        }

        return sum;
    }

    private static double Upwind(double here, double before, double after) =>
        before >= here && after >= here ? 0 : before <= after ? here - before : after - here;

    private static Vector3D Lowest(TravelCost cost, TravelTime time, Vector3D at)
    {
        (int x, int y, int z) = cost.CubeOf(at);
        (int X, int Y, int Z) best = (x, y, z);
        double least = time[x, y, z];
        for (int k = Math.Max(0, z - 1); k <= Math.Min(cost.CountZ - 1, z + 1); k++)
        {
            for (int j = Math.Max(0, y - 1); j <= Math.Min(cost.CountY - 1, y + 1); j++)
            {
                for (int i = Math.Max(0, x - 1); i <= Math.Min(cost.CountX - 1, x + 1); i++)
                {
                    if (time[i, j, k] < least)
                    {
                        (least, best) = (time[i, j, k], (i, j, k));
                    }
                }
            }
        }

        return cost.Origin + (cost.StepMm * new Vector3D(best.X, best.Y, best.Z));
    }
}
