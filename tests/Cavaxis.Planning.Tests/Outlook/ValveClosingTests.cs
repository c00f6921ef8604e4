using Cavaxis.Planning.Outlook;
using CsCheck;

namespace Cavaxis.Planning.Tests.Outlook;

public class ValveClosingTests
{
    [Fact]
    public void A_straight_fall_is_followed_to_zero() =>
        Assert.Equal(4.0, ValveClosing.FlowLPerMin([(1, 30), (2, 20), (3, 10), (4.5, 0)])!.Value, 9);

    [Fact]
    public void A_valve_that_opens_at_every_flow_has_no_such_flow() =>
        Assert.Null(ValveClosing.FlowLPerMin([(1, 30), (2, 25), (3, 20)]));

    [Fact]
    public void A_valve_that_opens_at_none_is_shut_from_nothing_on() =>
        Assert.Equal(0.0, ValveClosing.FlowLPerMin([(1, 0), (2, 0)]));

    [Fact]
    public void A_late_steep_fall_lies_between_the_last_open_and_the_first_shut_flow() => Gen.Select(
        Gen.Double[1, 40], Gen.Double[0.6, 1]).Sample((open, keep) =>
    {
        double flow = ValveClosing.FlowLPerMin([(1, open), (2, (open * keep) + 1e-9), (3, 0)]) ?? double.NaN;
        Assert.True(open * keep <= 0.5 || (flow >= 2 && flow <= 3), $"{flow}");
    });
}
