using Cavaxis.Quantities.Faults;
using Cavaxis.Records.Events;
using CsCheck;

namespace Cavaxis.Records.Tests.Events;

public class NameTests
{
    [Theory]
    [InlineData("")]
    [InlineData(".hidden")]
    [InlineData("../../etc/passwd")]
    [InlineData("a b")]
    [InlineData("a\n")]
    [InlineData("a'; DROP TABLE event")]
    [InlineData("ä")]
    public void A_text_that_is_no_plain_name_is_refused(string text)
    {
        Assert.Equal(FaultCode.WrongLength, Assert.Throws<InputFaultException>(() => Identifier.Of(text)).Faults[0].Code);
        Assert.Throws<InputFaultException>(() => StreamName.Of("patient/" + text));
        Assert.Throws<InputFaultException>(() => EventKind.Of(text));
    }

    [Theory]
    [InlineData("patient")]
    [InlineData("/a")]
    [InlineData("Patient/a")]
    [InlineData("patient/a/b")]
    [InlineData("pat ient/a")]
    public void A_stream_has_an_area_and_a_name(string text)
    {
        Assert.Equal("stream", Assert.Throws<InputFaultException>(() => StreamName.Of(text)).Faults[0].Field);
        Assert.False(StreamName.IsOne(text));
    }

    [Theory]
    [InlineData("observation")]
    [InlineData("observation.")]
    [InlineData("Observation.x")]
    [InlineData("a..b")]
    [InlineData("a.1")]
    public void A_kind_has_two_words_or_more(string text) => Assert.Equal("kind", Assert.Throws<InputFaultException>(() => EventKind.Of(text)).Faults[0].Field);

    [Fact]
    public void Names_are_longest_at_64_letters()
    {
        Assert.Equal(64, Identifier.Of(new string('a', 64)).Text.Length);
        Assert.Throws<InputFaultException>(() => Identifier.Of(new string('a', 65)));
        Assert.Equal("patient/a.b-c_1", StreamName.Of("patient/a.b-c_1").Text);
    }

    [Fact]
    public void A_moment_is_kept_to_the_microsecond_whatever_its_zone() => Gen.Select(Gen.Long[-62_135_596_800_000_000, 253_402_300_799_999_999], Gen.Int[0, 9]).Sample(static (us, tenths) =>
    {
        DateTimeOffset time = Moment.OfMicroseconds(us);
        DateTimeOffset finer = time.AddTicks(tenths);
        Assert.Equal(us, Moment.ToMicroseconds(finer));
        Assert.Equal(time, Moment.Cut(finer));
    });

    [Fact]
    public void A_withdrawal_names_what_is_withdrawn() =>
        Assert.Equal("corrects", Assert.Throws<InputFaultException>(() => new EventDraft(EventKind.Withdrawn, CanonicalJson.Of("{}"))).Faults[0].Field);
}
