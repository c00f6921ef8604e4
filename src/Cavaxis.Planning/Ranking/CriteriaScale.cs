using Cavaxis.Planning.Case;
using Cavaxis.Planning.Rules;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Planning.Ranking;

/// <summary>Turns the values of all criteria into points and a score, with weights that anyone can see and change.</summary>
public sealed class CriteriaScale
{
    private readonly IReadOnlyList<CriterionRule> rules;
    private readonly double[] weights;
    private readonly double sum;

    /// <summary>The scale for a goal.</summary>
    /// <param name="rules">Criteria of the rule book.</param>
    /// <param name="goal">Goal of the case; none counts as circulation.</param>
    /// <param name="changed">Weights that replace those of the rule book.</param>
    /// <exception cref="InputFaultException">A changed weight is negative or not finite, or all weights are zero.</exception>
    public CriteriaScale(
        IReadOnlyList<CriterionRule> rules, SupportGoal? goal, IReadOnlyDictionary<CriterionName, double> changed)
    {
        ArgumentNullException.ThrowIfNull(rules);
        ArgumentNullException.ThrowIfNull(changed);
        this.rules = rules;
        weights = [.. rules.Select(rule => changed.TryGetValue(rule.Name, out double weight)
            ? Require.InRange(weight, 0, 100, $"weights.{rule.Name}", "Give a weight from 0 (does not count) to 100.")
            : goal == SupportGoal.GasExchange ? rule.GasExchangeWeight : rule.CirculationWeight)];
        sum = weights.Sum();
        if (sum <= 0)
        {
            throw new InputFaultException(new InputFault(
                FaultCode.OutOfRange, "weights", "all 0", "at least one weight above 0", "Give one criterion a weight."));
        }
    }

    /// <summary>Weight of each criterion, in the rule book's order.</summary>
    public IReadOnlyList<double> Weights => weights;

    /// <summary>Points of one criterion: a straight line from worst (0) to best (1), held at both ends.</summary>
    /// <param name="index">Place of the criterion in the rule book.</param>
    /// <param name="value">Its value.</param>
    /// <returns>0 to 1.</returns>
    public double Points(int index, double value)
    {
        CriterionRule rule = rules[index];

        // Adding zero turns a negative zero into a plain one, which would otherwise be printed.
        return Math.Clamp((value - rule.Worst) / (rule.Best - rule.Worst), 0, 1) + 0.0;
    }

    /// <summary>Weighted mean of the points.</summary>
    /// <param name="values">Value of each criterion, in the rule book's order.</param>
    /// <returns>0 to 1.</returns>
    public double Score(ReadOnlySpan<double> values)
    {
        double total = 0;
        for (int i = 0; i < weights.Length; i++)
        {
            total += weights[i] * Points(i, values[i]);
        }

        return total / sum;
    }
}
