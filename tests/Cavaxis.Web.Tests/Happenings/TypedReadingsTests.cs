using Cavaxis.Course.Observations;
using Cavaxis.Web.Happenings;
using Cavaxis.Web.Pages.Run;

namespace Cavaxis.Web.Tests.Happenings;

public class TypedReadingsTests
{
    [Fact]
    public void The_groups_hold_every_quantity_once() =>
        Assert.Equal(Enum.GetValues<ObservedQuantity>(), QuantityGroup.All.SelectMany(static g => g.Quantities).Select(static d => d.Quantity).Order());

    [Fact]
    public void What_was_typed_is_read_with_its_error_and_in_other_units()
    {
        TypedReadings typed = new();
        typed[ObservedQuantity.PumpFlowLPerMin] = "4,2";
        typed[ObservedQuantity.PreMembraneSaturationPercent] = "72 ± 1";
        typed[ObservedQuantity.HaemoglobinGPerDl] = "95 g/L";
        (IReadOnlyList<Reading> readings, var faults) = typed.Read();
        Assert.Empty(faults);
        Assert.Equal(
            [(ObservedQuantity.HaemoglobinGPerDl, 9.5, null), (ObservedQuantity.PumpFlowLPerMin, 4.2, null), (ObservedQuantity.PreMembraneSaturationPercent, 72, 1.0)],
            readings.Select(static r => (r.Quantity, r.Value, r.Sd)));
    }

    [Fact]
    public void One_wrong_field_is_named_and_the_others_are_not_lost()
    {
        TypedReadings typed = new();
        typed[ObservedQuantity.PumpFlowLPerMin] = "42";
        typed[ObservedQuantity.SweepLPerMin] = "four";
        typed[ObservedQuantity.HeartRatePerMin] = "90";
        (IReadOnlyList<Reading> readings, var faults) = typed.Read();
        Assert.Equal(["pump flow", "sweep gas"], faults.Select(static f => f.Field));
        Assert.Equal(ObservedQuantity.HeartRatePerMin, Assert.Single(readings).Quantity);
        Assert.Equal("42", typed[ObservedQuantity.PumpFlowLPerMin]);
    }
}
