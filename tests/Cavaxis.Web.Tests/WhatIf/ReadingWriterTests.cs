using Cavaxis.Circulation.Calibration;
using Cavaxis.Circulation.Parameters;
using Cavaxis.Circulation.Signals;
using Cavaxis.Web.Pages.WhatIf;

namespace Cavaxis.Web.Tests.WhatIf;

/// <summary>Every sentence comes from the differences, and no cause is named that they do not hold.</summary>
public class ReadingWriterTests
{
    /// <summary>Each cause of each rule, by the place of rule and cause.</summary>
    public static TheoryData<string, bool, int> Causes
    {
        get
        {
            TheoryData<string, bool, int> data = [];
            foreach (ReadingRule rule in ReadingRules.All)
            {
                for (int i = 0; i < rule.Rises.Count; i++)
                {
                    data.Add(rule.Quantity.ToString(), true, i);
                }

                for (int i = 0; i < rule.Falls.Count; i++)
                {
                    data.Add(rule.Quantity.ToString(), false, i);
                }
            }

            return data;
        }
    }

    [Fact]
    public void Less_blood_down_the_cavae_at_the_same_pump_flow_is_read_as_the_cause_of_recirculation()
    {
        string text = Only(
            CirculationQuantity.RecirculationPercent,
            Facts(SupportSense.Venous, (CirculationQuantity.RecirculationPercent, 12, 21), (CirculationQuantity.SystemicFlowLPerMin, 7.1, 5.2), (CirculationQuantity.PumpFlowLPerMin, 4.6, 4.6)));

        Assert.StartsWith("Recirculation rises from 12 to 21 %", text, StringComparison.Ordinal);
        Assert.Contains("because less blood comes down the cavae (7.1 to 5.2 L/min) while the pump keeps its flow (4.60 L/min as before)", text, StringComparison.Ordinal);
    }

    [Fact]
    public void More_pump_flow_over_the_same_venous_return_is_another_cause_of_the_same_rise()
    {
        string text = Only(
            CirculationQuantity.RecirculationPercent,
            Facts(SupportSense.Venous, (CirculationQuantity.RecirculationPercent, 12, 21), (CirculationQuantity.SystemicFlowLPerMin, 7.1, 7.1), (CirculationQuantity.PumpFlowLPerMin, 4.6, 6)));

        Assert.Contains("because the pump takes more (4.60 to 6.00 L/min)", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_a_chain_that_holds_no_cause_is_named()
    {
        string text = Only(CirculationQuantity.RecirculationPercent, Facts(SupportSense.Venous, (CirculationQuantity.RecirculationPercent, 12, 21)));

        Assert.DoesNotContain("because", text, StringComparison.Ordinal);
        Assert.Contains("none of the chains", text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_difference_whose_interval_holds_zero_is_told_as_probable() =>
        Assert.Contains(
            "probably rises",
            Only(CirculationQuantity.WedgePressureMmHg, Facts(SupportSense.Arterial, [], 10, (CirculationQuantity.WedgePressureMmHg, 18, 21))),
            StringComparison.Ordinal);

    [Fact]
    public void What_is_not_told_apart_at_the_bedside_makes_no_sentence() =>
        Assert.Empty(ReadingWriter.Write(Facts(SupportSense.Venous, (CirculationQuantity.RecirculationPercent, 12, 12.4))));

    [Fact]
    public void Recirculation_is_not_read_where_nothing_returns_to_a_vein() =>
        Assert.Empty(ReadingWriter.Write(Facts(SupportSense.Arterial, (CirculationQuantity.RecirculationPercent, 0, 5))));

    [Theory]
    [InlineData(-4, false)]
    [InlineData(0.2, false)]
    [InlineData(3, true)]
    public void Of_several_changes_one_is_named_only_where_it_does_the_same_alone(double alone, bool named)
    {
        ReadingFacts facts = Facts(
            SupportSense.Arterial,
            [ParameterChange.To(CirculationParameter.BalloonVolumeMl, 40), ParameterChange.To(CirculationParameter.PeepCmH2O, 5)], 0.1,
            (CirculationQuantity.AorticValveOpenPercent, 20, 28)) with
        {
            Alone = new Dictionary<(CirculationParameter, CirculationQuantity), double>
            {
                [(CirculationParameter.BalloonVolumeMl, CirculationQuantity.AorticValveOpenPercent)] = alone,
            },
        };

        Assert.Equal(named, Only(CirculationQuantity.AorticValveOpenPercent, facts).Contains("balloon", StringComparison.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Causes))]
    public void Each_cause_is_written_where_its_conditions_hold_and_only_there(string quantity, bool rises, int index)
    {
        ReadingRule rule = ReadingRules.All.First(r => r.Quantity.ToString() == quantity);
        ReadingCause cause = (rises ? rule.Rises : rule.Falls)[index];
        ReadingRule alone = rule with { Rises = rises ? [cause] : [], Falls = rises ? [] : [cause] };
        SupportSense sense = rule.Applies(SupportSense.Arterial) ? SupportSense.Arterial : SupportSense.Venous;
        ReadingFacts still = Facts(sense, (rule.Quantity, 20, rises ? 30 : 10));

        ReadingSentence without = Assert.Single(ReadingWriter.Write(still with { Support = SupportSense.Both }, [alone with { Applies = static _ => true }]));
        Assert.False(without.HasCause);

        ReadingSentence with = Assert.Single(ReadingWriter.Write(ConditionFacts.Holding(rule, cause, rises), [alone with { Applies = static _ => true }]));
        Assert.True(with.HasCause, cause.Because);
        Assert.Contains(rises ? "rises" : "falls", with.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("{", with.Text, StringComparison.Ordinal);
        Assert.NotNull(Cavaxis.Web.Questions.Question.Of(with.Question));
    }

    private static string Only(CirculationQuantity quantity, ReadingFacts facts) =>
        Assert.Single(ReadingWriter.Write(facts), s => s.Quantity == quantity).Text;

    private static ReadingFacts Facts(SupportSense sense, params (CirculationQuantity Quantity, double Before, double After)[] moved) => Facts(sense, [], 0.1, moved);

    private static ReadingFacts Facts(
        SupportSense sense, IReadOnlyList<ParameterChange> changes, double half, params (CirculationQuantity Quantity, double Before, double After)[] moved) =>
        ConditionFacts.Of(sense, changes, half, moved);
}
