using Cavaxis.Planning.Rapid;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Planning.Tests.Rapid;

public class AnswerReaderTests
{
    [Fact]
    public void Answers_of_each_kind_are_read_and_unknown_is_left_out()
    {
        RapidAnswer[] answers = Minutes.Answers("witnessed=yes", "frail = no", "lactateMmolPerL=12.5", "firstRhythm=asystole", "gasping=unknown");
        Assert.Equal(
            [RapidAnswer.Of("witnessed", true), RapidAnswer.Of("frail", false), RapidAnswer.Of("lactateMmolPerL", NumberRange.Exactly(12.5)), RapidAnswer.Of("firstRhythm", "asystole")], answers);
    }

    [Theory]
    [InlineData("witnesed=yes", FaultCode.NotAChoice, "witnessed")]
    [InlineData("witnessed=maybe", FaultCode.NotAChoice, "leave it out")]
    [InlineData("witnessed", FaultCode.NotAChoice, "leave it out")]
    [InlineData("firstRhythm=flutter", FaultCode.NotAChoice, "leave it out")]
    [InlineData("lactateMmolPerL=-1", FaultCode.OutOfRange, "leave it out")]
    [InlineData("lactateMmolPerL=1,5", FaultCode.OutOfRange, "leave it out")]
    [InlineData("lactateMmolPerL=NaN", FaultCode.OutOfRange, "leave it out")]
    [InlineData("ageYears=40", FaultCode.NotAChoice, "clock")]
    public void An_answer_that_cannot_be_used_is_named(string typed, FaultCode code, string remedy)
    {
        InputFault fault = Assert.Single(Assert.Throws<InputFaultException>(() => Minutes.Answers(typed)).Faults);
        Assert.Equal(code, fault.Code);
        Assert.Contains(remedy, fault.Remedy, StringComparison.Ordinal);
    }

    [Fact]
    public void An_answer_given_twice_is_refused() =>
        Assert.Equal(FaultCode.DuplicateField, Assert.Single(Assert.Throws<InputFaultException>(() => Minutes.Answers("frail=no", "frail=no")).Faults).Code);

    [Fact]
    public void An_answer_that_contradicts_sex_or_situation_is_refused()
    {
        Assert.Equal("pregnant", Assert.Single(Assert.Throws<InputFaultException>(() => Minutes.Of(Minutes.Man with { Answers = Minutes.Answers("pregnant=yes") })).Faults).Field);
        Assert.Equal("pregnant", Assert.Single(Assert.Throws<InputFaultException>(() => Minutes.Of(Minutes.Man with { Situations = [RapidSituation.Pregnancy] })).Faults).Field);
    }
}
