namespace Cavaxis.Planning.Ranking;

/// <summary>Which of several options no other option beats in everything that carries weight.</summary>
public static class ParetoFront
{
    /// <summary>Marks the options on the front.</summary>
    /// <param name="points">Points of each option in each criterion; more is better; all of one length.</param>
    /// <param name="weights">Weight of each criterion; criteria of weight zero do not count.</param>
    /// <returns>For each option whether it is on the front.</returns>
    public static IReadOnlyList<bool> Mark(IReadOnlyList<IReadOnlyList<double>> points, IReadOnlyList<double> weights)
    {
        ArgumentNullException.ThrowIfNull(points);
        ArgumentNullException.ThrowIfNull(weights);
        bool[] front = new bool[points.Count];
        for (int i = 0; i < points.Count; i++)
        {
            front[i] = true;
            for (int j = 0; j < points.Count && front[i]; j++)
            {
                front[i] = j == i || !Dominates(points[j], points[i], weights);
            }
        }

        return front;
    }

    private static bool Dominates(IReadOnlyList<double> a, IReadOnlyList<double> b, IReadOnlyList<double> weights)
    {
        bool better = false;
        for (int i = 0; i < weights.Count; i++)
        {
            if (weights[i] <= 0)
            {
                continue;
            }

            if (a[i] < b[i])
            {
                return false;
            }

            better |= a[i] > b[i];
        }

        return better;
    }
}
