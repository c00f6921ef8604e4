using Cavaxis.Circulation.Parameters;
using Cavaxis.Web.Pages.WhatIf;
using CsCheck;

namespace Cavaxis.Web.Tests.WhatIf;

public class StepsInAddressTests
{
    [Fact]
    public void What_is_written_is_read_again() => Gen.Int[-9, 9].Array[4].Sample(counts =>
    {
        Stepper[] steppers = [.. ControlTable.For(CirculationParameters.Adult, null).Take(4).Select((c, i) => Stepper.Of(c, CirculationParameters.Adult).SteppedBy(counts[i]))];
        string query = StepsInAddress.Write(steppers);
        IReadOnlyDictionary<string, int> read = StepsInAddress.Read(query.Length == 0 ? null : Uri.UnescapeDataString(query["?steps=".Length..]));
        Assert.All(steppers, s => Assert.Equal(s.Steps, read.GetValueOrDefault(s.Control.Key)));
    });

    [Theory]
    [InlineData(null)]
    [InlineData("")]
    [InlineData(",,:,")]
    [InlineData("flow")]
    [InlineData("flow:many")]
    [InlineData("flow:1:2")]
    [InlineData("flow:100000000")]
    [InlineData("flow:99999999999999")]
    public void What_is_no_step_is_passed_over(string? text) => Assert.Empty(StepsInAddress.Read(text));
}
