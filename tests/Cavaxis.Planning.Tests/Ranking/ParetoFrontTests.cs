using Cavaxis.Planning.Ranking;
using CsCheck;

namespace Cavaxis.Planning.Tests.Ranking;

public class ParetoFrontTests
{
    /// <summary>Coarse points, so that ties are common.</summary>
    private static readonly Gen<double[][]> Tables =
        from criteria in Gen.Int[1, 4]
        from rows in Gen.Int[0, 4].Select(v => v / 4.0).Array[criteria].Array[1, 12]
        select rows;

    [Fact]
    public void An_option_is_on_the_front_exactly_when_no_other_beats_it() => Tables.Sample(table =>
    {
        double[] weights = [.. table[0].Select((_, i) => i == 1 ? 0.0 : 1.0 + i)];
        IReadOnlyList<bool> front = ParetoFront.Mark(table, weights);
        for (int i = 0; i < table.Length; i++)
        {
            bool beaten = table.Any(other =>
                Counted(weights).All(c => other[c] >= table[i][c]) && Counted(weights).Any(c => other[c] > table[i][c]));
            if (front[i] == beaten)
            {
                return false;
            }
        }

        return front.Any(on => on);
    });

    [Fact]
    public void The_option_with_the_best_weighted_score_is_on_the_front() => Tables.Sample(table =>
    {
        double[] weights = [.. table[0].Select((_, i) => 1.0 + i)];
        IReadOnlyList<bool> front = ParetoFront.Mark(table, weights);
        double best = table.Max(Score);
        return table.Select((row, i) => (row, i)).Where(x => Score(x.row) == best).All(x => front[x.i]);

        double Score(double[] row) => row.Select((p, c) => p * weights[c]).Sum();
    });

    [Fact]
    public void Adding_a_beaten_option_changes_nothing_for_the_others() => Tables.Sample(table =>
    {
        double[] weights = [.. table[0].Select(_ => 1.0)];
        IReadOnlyList<bool> before = ParetoFront.Mark(table, weights);
        double[] worse = [.. table[0].Select(p => p - 1)];
        IReadOnlyList<bool> after = ParetoFront.Mark([.. table, worse], weights);
        return !after[^1] && before.SequenceEqual(after.Take(table.Length));
    });

    [Fact]
    public void Equal_options_stand_on_the_front_together() =>
        Assert.Equal([true, true], ParetoFront.Mark([[0.5, 0.2], [0.5, 0.2]], [1.0, 1.0]));

    [Fact]
    public void Nothing_has_an_empty_front() => Assert.Empty(ParetoFront.Mark([], [1.0]));

    private static IEnumerable<int> Counted(double[] weights) => Enumerable.Range(0, weights.Length).Where(c => weights[c] > 0);
}
