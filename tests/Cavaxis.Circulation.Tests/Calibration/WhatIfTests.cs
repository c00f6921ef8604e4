using Cavaxis.Circulation.Calibration;
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
        Assert.All(result.Quantities, static q => Assert.InRange(0, q.Difference.Low, q.Difference.High));
        Assert.Equal(Enum.GetValues<CirculationQuantity>().Length, result.Quantities.Count);
    }

    [Fact]
    public void More_venovenous_flow_raises_arterial_saturation_and_less_lowers_it()
    {
        WhatIfResult more = WhatIf.Compute(patients.MonitorOnly, [ParameterChange.By(TargetFlowLPerMin, 1.25)]);
        WhatIfResult less = WhatIf.Compute(patients.MonitorOnly, [ParameterChange.By(TargetFlowLPerMin, 0.6)]);
        Assert.True(more[CirculationQuantity.RightArmSaturationPercent].Difference.Value > 0);
        Assert.True(less[CirculationQuantity.RightArmSaturationPercent].Difference.High < 0);
        Assert.True(more[CirculationQuantity.PumpFlowLPerMin].Difference.Low > 0.5);
    }

    [Fact]
    public void A_band_of_differences_is_narrower_than_the_bands_it_comes_from()
    {
        WhatIfResult result = WhatIf.Compute(patients.MonitorOnly, [ParameterChange.By(TargetFlowLPerMin, 0.9)]);
        QuantityChange saturation = result[CirculationQuantity.RightArmSaturationPercent];
        Assert.True(saturation.Difference.Sd < saturation.Before.Sd);
    }

    [Fact]
    public void Members_that_leave_the_range_of_the_model_are_counted_and_no_number_is_made_up()
    {
        WhatIfResult result = WhatIf.Compute(patients.Full, [ParameterChange.By(TargetFlowLPerMin, 50)]);
        Assert.Equal(8, result.OutOfRange);
        Assert.Equal(0, result.Used);
        Assert.False(result.Found);
        Assert.NotEmpty(result.Reasons);
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
        Assert.NotEmpty(result.Reasons);
    }

    [Fact]
    public void An_ensemble_of_one_is_refused() => Assert.Throws<InputFaultException>(
        () => WhatIf.Compute([patients.Truth], [ParameterChange.By(TargetFlowLPerMin, 1.1)]));
}
