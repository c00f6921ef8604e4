using System.Globalization;
using Cavaxis.Quantities.Faults;
using CsCheck;

namespace Cavaxis.Quantities.Tests;

public class RequireTests
{
    [Fact]
    public void A_number_within_its_bounds_comes_back_as_it_is() => Gen.Select(Gen.Double[-1e9, 1e9], Gen.Double[0, 1e9], Gen.Double[0, 1]).Sample(
        (low, width, place) =>
        {
            double value = Math.Min(low + (place * width), low + width);
            return Require.InRange(value, low, low + width, "field", "Remedy.") == value;
        });

    [Theory]
    [InlineData(-0.001)]
    [InlineData(10.001)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(double.NegativeInfinity)]
    public void Anything_else_is_a_fault_that_names_field_value_range_and_remedy(double value)
    {
        InputFault fault = Assert.Single(Assert.Throws<InputFaultException>(
            () => Require.InRange(value, 0, 10, "flowLPerMin", "Give the flow in L/min.")).Faults);
        Assert.Equal(FaultCode.OutOfRange, fault.Code);
        Assert.Equal("flowLPerMin", fault.Field);
        Assert.Equal(value.ToString("G6", CultureInfo.InvariantCulture), fault.Value);
        Assert.Equal("a finite number from 0 to 10", fault.Accepted);
        Assert.Equal("Give the flow in L/min.", fault.Remedy);
    }

    [Fact]
    public void Both_bounds_belong_to_the_range()
    {
        Assert.Equal(0, Require.InRange(0, 0, 10, "field", "Remedy."));
        Assert.Equal(10, Require.InRange(10, 0, 10, "field", "Remedy."));
    }

    [Fact]
    public void The_culture_of_the_thread_does_not_change_a_fault()
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        CultureInfo comma = (CultureInfo)CultureInfo.InvariantCulture.Clone();
        comma.NumberFormat.NumberDecimalSeparator = ",";
        try
        {
            CultureInfo.CurrentCulture = comma;
            Assert.Equal("a finite number from 0.5 to 1.5", Require.OutOfRange(2.25, 0.5, 1.5, "f", "R.").Accepted);
            Assert.Equal("2.25", Require.OutOfRange(2.25, 0.5, 1.5, "f", "R.").Value);
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }
}
