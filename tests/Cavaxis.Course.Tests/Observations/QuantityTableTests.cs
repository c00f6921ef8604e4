using Cavaxis.Course.Observations;
using Cavaxis.Planning.Case;

namespace Cavaxis.Course.Tests.Observations;

public class QuantityTableTests
{
    [Fact]
    public void Every_quantity_stands_in_the_table_at_its_place() =>
        Assert.Equal(Enum.GetValues<ObservedQuantity>(), QuantityTable.All.Select(static d => d.Quantity));

    [Fact]
    public void What_the_case_file_observes_can_be_observed_under_the_same_name() =>
        Assert.All(
            typeof(ObservationSection).GetProperties().Where(static p => p.Name != "OutletPressureMmHg"),
            static property => Assert.True(Enum.TryParse<ObservedQuantity>(property.Name, out _), property.Name));

    [Fact]
    public void A_value_outside_its_range_is_named_with_the_range()
    {
        Assert.Null(QuantityTable.Check(ObservedQuantity.PumpFlowLPerMin, 4.2, "pumpFlowLPerMin"));
        Assert.Equal("0 to 10 L/min", QuantityTable.Check(ObservedQuantity.PumpFlowLPerMin, 42, "pumpFlowLPerMin")!.Accepted);
        Assert.NotNull(QuantityTable.Check(ObservedQuantity.PumpFlowLPerMin, double.NaN, "pumpFlowLPerMin"));
    }
}
