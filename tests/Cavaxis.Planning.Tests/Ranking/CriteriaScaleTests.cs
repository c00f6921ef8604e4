using Cavaxis.Planning.Case;
using Cavaxis.Planning.Ranking;
using Cavaxis.Planning.Rules;
using Cavaxis.Quantities.Faults;
using CsCheck;

namespace Cavaxis.Planning.Tests.Ranking;

public class CriteriaScaleTests
{
    private static readonly IReadOnlyList<CriterionRule> Rules = RuleBookReader.BuiltIn.Criteria;
    private static readonly Dictionary<CriterionName, double> Unchanged = [];

    [Fact]
    public void The_worst_value_earns_nothing_the_best_one_point_and_the_middle_a_half()
    {
        CriteriaScale scale = new(Rules, SupportGoal.GasExchange, Unchanged);
        for (int i = 0; i < Rules.Count; i++)
        {
            Assert.Equal(0, scale.Points(i, Rules[i].Worst), 12);
            Assert.Equal(1, scale.Points(i, Rules[i].Best), 12);
            Assert.Equal(0.5, scale.Points(i, (Rules[i].Worst + Rules[i].Best) / 2), 12);
        }
    }

    [Fact]
    public void Points_never_leave_0_to_1_and_follow_the_better_value() => Gen.Select(
        Gen.Int[0, Rules.Count - 1], Gen.Double[-500, 500], Gen.Double[0, 100]).Sample((index, value, step) =>
        {
            CriteriaScale scale = new(Rules, null, Unchanged);
            double better = value + (step * Math.Sign(Rules[index].Best - Rules[index].Worst));
            double points = scale.Points(index, value);
            return points is >= 0 and <= 1 && scale.Points(index, better) >= points;
        });

    [Fact]
    public void The_score_is_the_weighted_mean_of_the_points()
    {
        CriteriaScale scale = new(Rules, SupportGoal.Circulation, Unchanged);
        double[] values = [.. Rules.Select((r, i) => double.Lerp(r.Worst, r.Best, i / 20.0))];
        double expected = Rules.Select((r, i) => r.CirculationWeight * i / 20.0).Sum() / Rules.Sum(r => r.CirculationWeight);
        Assert.Equal(expected, scale.Score(values), 12);
    }

    [Theory]
    [InlineData(SupportGoal.GasExchange, true)]
    [InlineData(SupportGoal.Circulation, false)]
    [InlineData(SupportGoal.Both, false)]
    [InlineData(SupportGoal.Arrest, false)]
    [InlineData(null, false)]
    public void Gas_exchange_has_its_own_weights_and_every_other_goal_those_of_circulation(SupportGoal? goal, bool gas)
    {
        CriteriaScale scale = new(Rules, goal, Unchanged);
        Assert.Equal(Rules.Select(r => gas ? r.GasExchangeWeight : r.CirculationWeight), scale.Weights);
    }

    [Fact]
    public void A_changed_weight_takes_the_place_of_the_rule_books()
    {
        CriteriaScale scale = new(Rules, null, new Dictionary<CriterionName, double> { [CriterionName.Punctures] = 7.5 });
        Assert.Equal(7.5, scale.Weights[Rules.ToList().FindIndex(r => r.Name == CriterionName.Punctures)]);
    }

    [Theory]
    [InlineData(-1)]
    [InlineData(101)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void A_weight_that_is_no_weight_is_refused(double weight)
    {
        InputFaultException fault = Assert.Throws<InputFaultException>(
            () => new CriteriaScale(Rules, null, new Dictionary<CriterionName, double> { [CriterionName.Fit] = weight }));
        Assert.Equal(FaultCode.OutOfRange, Assert.Single(fault.Faults).Code);
    }

    [Fact]
    public void Weights_that_are_all_zero_are_refused()
    {
        Dictionary<CriterionName, double> zero = Rules.ToDictionary(r => r.Name, _ => 0.0);
        Assert.Throws<InputFaultException>(() => new CriteriaScale(Rules, null, zero));
    }
}
