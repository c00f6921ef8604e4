namespace Cavaxis.Imaging.Tomography;

/// <summary>
/// The wall in a fan of rays. First a closed line around the centre of least cost, by dynamic programming over angle and distance: what lies
/// inside should look like the lumen, the edge should be steep, and neighbours should lie at like distances. Then each ray by itself: the
/// place that parts it best into inside and outside at the level half-way between both (least squares of a step), which noise does not shift.
/// </summary>
internal static class WallFinder
{
    private const double SteepnessMm = 3;
    private const double Bending = 0.35;
    private const int MostStep = 3;
    private const int First = 3;
    private const double BesideMm = 2;
    private const int Rounds = 3;

    /// <summary>Contrast below this share of the tolerance is no wall.</summary>
    private const double LeastWall = 0.8;

    /// <summary>Finds it.</summary>
    /// <param name="fan">The rays.</param>
    /// <param name="arcMm">Where the fan lies along the centreline, mm.</param>
    /// <param name="insideHu">What the lumen looks like here, HU.</param>
    /// <param name="toleranceHu">What differs by more does not look like it, HU.</param>
    /// <param name="metalHu">From here on a reading is metal and tells nothing, HU.</param>
    /// <returns>The section.</returns>
    public static LumenSection Find(RayFan fan, double arcMm, double insideHu, double toleranceHu, double metalHu)
    {
        int[] coarse = Closed(Costs(fan, insideHu, toleranceHu, metalHu));
        double[] radii = [.. coarse.Select(static n => n * RayFan.StepMm)];
        double[] contrasts = new double[RayFan.Rays];
        int open = 0;
        for (int round = 0; round < Rounds; round++)
        {
            // What lies outside is read beyond the line found so far: a line that lies too far in would take blood for the outside.
            int[] near = round == 0 ? coarse : [.. Enumerable.Range(0, RayFan.Rays).Select(ray => (int)Math.Round(About(radii, ray) / RayFan.StepMm))];
            double[] inside = [.. Enumerable.Range(0, RayFan.Rays).Select(ray => Within(fan.Ray(ray), near[ray], insideHu, metalHu))];
            double[] outside = [.. Enumerable.Range(0, RayFan.Rays).Select(ray => Beyond(fan.Ray(ray), near[ray]))];
            for (int ray = 0; ray < RayFan.Rays; ray++)
            {
                double level = About(outside, ray, 1);
                double blood = About(inside, ray, 3);
                contrasts[ray] = Math.Abs(blood - level);
                bool seen = contrasts[ray] > LeastWall * toleranceHu && near[ray] < RayFan.Readings - 4;
                radii[ray] = seen ? Step(fan.Ray(ray), near[ray], blood, level) : double.NaN;
            }

            open = radii.Count(double.IsNaN);
            Bridge(radii, coarse, open);
        }

        return new LumenSection(arcMm, fan.Centre, fan.Across, fan.Upright, radii, insideHu, Spread.Median(contrasts), open / (double)RayFan.Rays);
    }

    // Median of a ray and its neighbours to both sides.
    private static double About(double[] around, int ray, int beside = 2) => Spread.Median(
        Enumerable.Range(ray - beside, (2 * beside) + 1).Select(n => around[(n + RayFan.Rays) % RayFan.Rays]));

    private static double[][] Costs(RayFan fan, double insideHu, double toleranceHu, double metalHu)
    {
        int beside = (int)(BesideMm / RayFan.StepMm);
        double[][] costs = new double[RayFan.Rays][];
        for (int ray = 0; ray < RayFan.Rays; ray++)
        {
            ReadOnlySpan<float> readings = fan.Ray(ray);
            double[] cost = new double[RayFan.Readings];
            double within = 0;
            for (int n = 1; n < RayFan.Readings; n++)
            {
                double away = (readings[n] - insideHu) / toleranceHu;
                within += readings[n] >= metalHu ? 0 : RayFan.StepMm * (Math.Min(away * away, 4) - 1);
                double inner = Mean(readings, n - beside, n, metalHu, insideHu);
                double outer = Mean(readings, n + 1, n + beside + 1, metalHu, insideHu);
                cost[n] = within - (SteepnessMm * Math.Min(Math.Abs(inner - outer) / (2 * toleranceHu), 2));
            }

            costs[ray] = cost;
        }

        return costs;
    }

    private static double Mean(ReadOnlySpan<float> readings, int from, int to, double metalHu, double insideHu)
    {
        double sum = 0;
        int count = 0;
        for (int n = Math.Max(0, from); n < Math.Min(to, readings.Length); n++)
        {
            sum += readings[n] >= metalHu ? insideHu : readings[n];
            count++;
        }

        return count == 0 ? insideHu : sum / count;
    }

    // Twice around: the second turn starts where the first one ended up, which closes the line.
    private static int[] Closed(double[][] costs)
    {
        int turns = 2 * RayFan.Rays;
        double[] now = new double[RayFan.Readings];
        sbyte[][] came = new sbyte[turns][];
        for (int turn = 0; turn < turns; turn++)
        {
            double[] next = new double[RayFan.Readings];
            came[turn] = new sbyte[RayFan.Readings];
            for (int n = First; n < RayFan.Readings; n++)
            {
                (double best, int from) = (double.PositiveInfinity, 0);
                for (int step = -MostStep; step <= MostStep; step++)
                {
                    int before = n + step;
                    if (before >= First && before < RayFan.Readings && now[before] + (Bending * step * step) < best)
                    {
                        (best, from) = (now[before] + (Bending * step * step), step);
                    }
                }

                next[n] = best + costs[turn % RayFan.Rays][n];
                came[turn][n] = (sbyte)from;
            }

            now = next;
        }

        int at = First;
        for (int n = First; n < RayFan.Readings; n++)
        {
            at = now[n] < now[at] ? n : at;
        }

        int[] line = new int[RayFan.Rays];
        for (int turn = turns - 1; turn >= 0; turn--)
        {
            // The middle of the two turns is free of both ends.
            if (turn >= RayFan.Rays / 2 && turn < RayFan.Rays * 3 / 2)
            {
                line[turn % RayFan.Rays] = at;
            }

            at += came[turn][at];
        }

        return line;
    }

    private static double Beyond(ReadOnlySpan<float> readings, int edge)
    {
        int from = Math.Min(edge + (int)(1.5 / RayFan.StepMm), readings.Length - 1);
        int to = Math.Min(edge + (int)(4 / RayFan.StepMm), readings.Length - 1);
        List<double> beyond = [];
        for (int n = from; n <= to; n++)
        {
            beyond.Add(readings[n]);
        }

        return Spread.Median(beyond);
    }

    // Contrast sinks and streams: blood beside the wall need not look like that in the middle.
    private static double Within(ReadOnlySpan<float> readings, int edge, double insideHu, double metalHu)
    {
        List<double> within = [];
        for (int n = Math.Max(1, edge - (int)(5 / RayFan.StepMm)); n <= edge - (int)(1.5 / RayFan.StepMm); n++)
        {
            if (readings[n] < metalHu)
            {
                within.Add(readings[n]);
            }
        }

        return within.Count < 3 ? insideHu : Spread.Median(within);
    }

    private static double Step(ReadOnlySpan<float> readings, int edge, double insideHu, double outsideHu)
    {
        double level = 0.5 * (insideHu + outsideHu);
        double half = Math.Abs(insideHu - outsideHu) / 2;
        double sign = Math.Sign(insideHu - outsideHu);
        int reach = (int)(3 / RayFan.StepMm);
        int from = Math.Max(1, edge - reach);
        int to = Math.Min(readings.Length - 2, edge + reach);
        (double sum, double best, int at) = (0, double.NegativeInfinity, edge);
        for (int n = from; n <= to; n++)
        {
            // Clipped at both levels: what lies beyond them (bone, lung, metal) must not outvote the rest of the ray.
            sum += Math.Clamp(sign * (readings[n] - level), -half, half);
            if (sum > best)
            {
                (best, at) = (sum, n);
            }
        }

        double a = sign * (readings[at] - level);
        double b = sign * (readings[at + 1] - level);
        double share = a > 0 && b < 0 ? a / (a - b) : 0.5;
        return (at + share) * RayFan.StepMm;
    }

    // Rays without a wall take the distance between their nearest neighbours that have one.
    private static void Bridge(double[] radii, int[] coarse, int open)
    {
        for (int ray = 0; open == radii.Length && ray < radii.Length; ray++)
        {
            radii[ray] = coarse[ray] * RayFan.StepMm;
        }

        double[] seen = [.. radii];
        for (int ray = 0; ray < radii.Length; ray++)
        {
            if (double.IsNaN(seen[ray]))
            {
                int back = 1;
                int on = 1;
                while (double.IsNaN(seen[(ray + radii.Length - back) % radii.Length]))
                {
                    back++;
                }

                while (double.IsNaN(seen[(ray + on) % radii.Length]))
                {
                    on++;
                }

                double between = ((on * seen[(ray + radii.Length - back) % radii.Length]) + (back * seen[(ray + on) % radii.Length])) / (on + back);

                // A wide gap is an opening, not a wall: the line found there is the better guess.
                radii[ray] = on + back > radii.Length / 4 ? coarse[ray] * RayFan.StepMm : between;
            }
        }
    }
}
