using Cavaxis.Planning.Rapid;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Planning.Tests.Rapid;

public class ArrestClockTests
{
    [Fact]
    public void Times_over_midnight_are_counted_on()
    {
        ArrestClock clock = ArrestClock.FromTimes(new TimeOnly(23, 50), new TimeOnly(23, 53), new TimeOnly(0, 21), 12);
        Assert.Equal((3.0, 28.0), (clock.NoFlow!.Value.Low, clock.Compressions!.Value.Low));
        Assert.Equal(new NumberRange(40, 40), clock.LowFlow);
    }

    [Fact]
    public void Times_in_another_order_are_refused() => Assert.All(
        new Func<ArrestClock>[]
        {
            static () => ArrestClock.FromTimes(new TimeOnly(10, 5), new TimeOnly(10, 1), new TimeOnly(10, 30), null),
            static () => ArrestClock.FromTimes(null, new TimeOnly(10, 40), new TimeOnly(10, 30), null),
            static () => ArrestClock.FromTimes(new TimeOnly(10, 40), null, new TimeOnly(10, 30), null),
        },
        static made => Assert.Equal(FaultCode.Contradiction, Assert.Single(Assert.Throws<InputFaultException>(made).Faults).Code));

    [Fact]
    public void Without_compressions_time_without_circulation_still_runs()
    {
        ArrestClock clock = ArrestClock.FromTimes(new TimeOnly(10, 0), null, new TimeOnly(10, 7), null);
        Assert.Equal(NumberRange.AtLeast(7), clock.NoFlow);
        Assert.Null(clock.LowFlow);
        CriterionReading limit = Minutes.Criteria(Minutes.Man with { Clock = clock }).Single(static r => r.Id == "c047");
        Assert.Equal(CriterionVoice.Against, limit.Voice);
    }

    [Fact]
    public void Minutes_and_times_give_the_same_clock() => Assert.Equal(
        ArrestClock.FromMinutes(4, 26, 15), ArrestClock.FromTimes(new TimeOnly(9, 0), new TimeOnly(9, 4), new TimeOnly(9, 30), 15));

    [Fact]
    public void Low_flow_is_at_least_what_has_gone_by_until_somebody_says_when_support_flows()
    {
        Assert.Equal(NumberRange.AtLeast(31), ArrestClock.FromMinutes(null, 31, null).LowFlow);
        Assert.Equal("at least 31 min", ArrestClock.FromMinutes(null, 31, null).LowFlow!.Value.Words("min"));
        Assert.Null(ArrestClock.Unknown.LowFlow);
    }

    [Theory]
    [InlineData(-1.0, null, null, "noFlowMin")]
    [InlineData(null, 721.0, null, "lowFlowMin")]
    [InlineData(null, null, double.NaN, "toFlowMin")]
    public void Minutes_out_of_range_are_named(double? noFlow, double? lowFlow, double? toFlow, string field) =>
        Assert.Equal(field, Assert.Single(Assert.Throws<InputFaultException>(() => ArrestClock.FromMinutes(noFlow, lowFlow, toFlow)).Faults).Field);
}
