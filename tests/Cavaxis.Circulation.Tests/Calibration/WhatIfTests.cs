using Cavaxis.Circulation.Calibration;
using Cavaxis.Circulation.Parameters;
using Cavaxis.Circulation.Signals;
using Cavaxis.Quantities.Faults;
using static Cavaxis.Circulation.Parameters.CirculationParameter;

namespace Cavaxis.Circulation.Tests.Calibration;

public class WhatIfTests(FittedPatients patients) : IClassFixture<FittedPatients>
{
    [Fact]
    public void No_change_changes_nothing()
    {
        WhatIfResult result = WhatIf.Compute(patients.Full, []);
        Assert.True(result.Found);
        Assert.Equal(8, result.Members);
        Assert.All(result.Quantities.Where(static q => q.Difference is not null), static q => Assert.InRange(0, q.Difference!.Low, q.Difference.High));
        Assert.NotNull(result[CirculationQuantity.PulmonaryResistanceWoodUnits].Difference);
        Assert.Equal(Enum.GetValues<CirculationQuantity>().Length, result.Quantities.Count);
    }

    [Fact]
    public void More_venovenous_flow_raises_arterial_saturation_and_less_lowers_it()
    {
        WhatIfResult more = WhatIf.Compute(patients.MonitorOnly, [ParameterChange.By(TargetFlowLPerMin, 1.25)]);
        WhatIfResult less = WhatIf.Compute(patients.MonitorOnly, [ParameterChange.By(TargetFlowLPerMin, 0.6)]);
        Assert.True(more[CirculationQuantity.RightArmSaturationPercent].Difference!.Value > 0);
        Assert.True(less[CirculationQuantity.RightArmSaturationPercent].Difference!.High < 0);
        Assert.True(more[CirculationQuantity.PumpFlowLPerMin].Difference!.Low > 0.5);
    }

    [Fact]
    public void A_band_of_differences_is_narrower_than_the_bands_it_comes_from()
    {
        WhatIfResult result = WhatIf.Compute(patients.MonitorOnly, [ParameterChange.By(TargetFlowLPerMin, 0.9)]);
        QuantityChange saturation = result[CirculationQuantity.RightArmSaturationPercent];
        Assert.True(saturation.Difference!.Sd < saturation.Before!.Sd);
    }

    [Fact]
    public void Members_that_leave_the_range_of_the_model_are_counted_and_no_number_is_made_up()
    {
        WhatIfResult result = WhatIf.Compute(patients.Full, [ParameterChange.By(TargetFlowLPerMin, 50)]);
        Assert.Equal(8, result.OutOfRange);
        Assert.Equal(0, result.Used);
        Assert.False(result.Found);
        LeftOut group = Assert.Single(result.LeftOut);
        Assert.Equal((LeftOutStage.OutOfRange, 8, "targetFlowLPerMin"), (group.Stage, group.Members, group.What));
        Assert.StartsWith("8 members: ", group.Sentence, StringComparison.Ordinal);
        Assert.Throws<InvalidOperationException>(() => result[CirculationQuantity.PumpFlowLPerMin]);
    }

    [Fact]
    public void Members_that_do_not_settle_after_the_change_are_counted()
    {
        // No ventilation, no sweep: carbon dioxide rises for ever.
        WhatIfResult result = WhatIf.Compute(
            [.. patients.Full.Ensemble.Take(2)], [ParameterChange.To(AlveolarVentilationLPerMin, 0), ParameterChange.To(SweepLPerMin, 0)]);
        Assert.Equal(2, result.NotSettledAfter);
        Assert.False(result.Found);
        Assert.Equal(2, result.LeftOut.Sum(static l => l.Members));
        Assert.All(result.LeftOut, static l => Assert.True(l.Stage == LeftOutStage.NotSettledAfter && l.Sentence.Contains("no rest after the changes", StringComparison.Ordinal)));
    }

    [Fact]
    public void Members_lost_for_one_reason_are_one_group_and_the_largest_comes_first()
    {
        CirculationParameters rest = patients.Truth;
        CirculationParameters none = rest.With([(AlveolarVentilationLPerMin, 0), (SweepLPerMin, 0)]);
        CirculationParameters much = rest.With(TargetFlowLPerMin, 9);
        WhatIfResult result = WhatIf.Compute([rest, rest, rest, none, none, much], [ParameterChange.By(TargetFlowLPerMin, 1.2)]);
        Assert.Equal(6, result.Members);
        Assert.Equal(2, result.NotSettledBefore);
        Assert.Equal(1, result.OutOfRange);
        Assert.Equal([2, 1], result.LeftOut.Select(static l => l.Members));
        Assert.True(result.Found);
        Assert.Equal(3, result.Used);
    }

    [Theory]
    [InlineData(2, 2, true)]
    [InlineData(2, 3, false)]
    [InlineData(1, 0, false)]
    [InlineData(0, 0, false)]
    public void Fewer_than_half_of_the_members_or_one_alone_give_no_bands(int used, int lost, bool suffices) =>
        Assert.Equal(suffices, new WhatIfResult([], used + lost, 0, lost, 0, []).Suffices);

    [Fact]
    public void An_added_amount_is_the_same_amount_in_every_member()
    {
        Assert.All(patients.Full.Ensemble, member => Assert.Equal(
            member[BloodVolumeMl] + 300, ParameterChange.Plus(BloodVolumeMl, 300).Apply(member)[BloodVolumeMl], 1e-9));
        WhatIfResult result = WhatIf.Compute(patients.Full, [ParameterChange.Plus(HeartRatePerMin, 10)]);
        QuantityChange rate = result[CirculationQuantity.HeartRatePerMin];
        Assert.Equal((10, 10), (Math.Round(rate.Difference!.Low, 3), Math.Round(rate.Difference.High, 3)));
    }

    [Fact]
    public void What_has_no_value_after_the_change_has_no_band_after_it()
    {
        // Both ventricles so weak that the pump carries all blood past the lungs.
        CirculationParameters arterial = patients.Truth.With([(ArterialShareOfReturn, 1), (TargetFlowLPerMin, 6)]);
        WhatIfResult result = WhatIf.Compute(
            [arterial, arterial],
            [
                ParameterChange.To(LeftVentricleElastanceMmHgPerMl, 0.05), ParameterChange.To(RightVentricleElastanceMmHgPerMl, 0.05),
                ParameterChange.To(PulmonaryResistanceMmHgSPerMl, 3), ParameterChange.To(PeepCmH2O, 20), ParameterChange.By(BloodVolumeMl, 0.9),
            ]);
        QuantityChange resistance = result[CirculationQuantity.PulmonaryResistanceWoodUnits];
        Assert.NotNull(resistance.Before);
        Assert.Null(resistance.After);
        Assert.Null(resistance.Difference);
        Assert.NotNull(result[CirculationQuantity.SystemicResistanceWoodUnits].After);
        Assert.True(result[CirculationQuantity.LungFlowLPerMin].After!.Value < CirculationSummary.LeastFlowForResistanceLPerMin);
    }

    [Fact]
    public void An_ensemble_of_one_is_refused() => Assert.Throws<InputFaultException>(
        () => WhatIf.Compute([patients.Truth], [ParameterChange.By(TargetFlowLPerMin, 1.1)]));
}
