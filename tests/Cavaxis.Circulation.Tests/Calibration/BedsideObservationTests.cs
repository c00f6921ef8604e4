using Cavaxis.Circulation.Calibration;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Circulation.Tests.Calibration;

public class BedsideObservationTests
{
    public static TheoryData<ObservationKind> Kinds => [.. Enum.GetValues<ObservationKind>()];

    [Theory]
    [MemberData(nameof(Kinds))]
    public void A_reading_outside_its_range_is_refused_with_its_name(ObservationKind kind)
    {
        ObservationDefinition d = ObservationTable.Of(kind);
        foreach (double wrong in new[] { d.Low - 1, d.High + 1, double.NaN, double.PositiveInfinity })
        {
            InputFault fault = Assert.Throws<InputFaultException>(() => BedsideObservation.Of(kind, wrong)).Faults[0];
            Assert.Equal(FaultCode.OutOfRange, fault.Code);
            Assert.Equal(d.Name, fault.Field);
        }
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void A_reading_without_spread_is_refused(ObservationKind kind)
    {
        ObservationDefinition d = ObservationTable.Of(kind);
        foreach (double wrong in new[] { 0, -1, double.NaN })
        {
            InputFault fault = Assert.Throws<InputFaultException>(() => new BedsideObservation(kind, d.High, wrong)).Faults[0];
            Assert.Equal(d.Name + ".sd", fault.Field);
        }
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void A_reading_is_found_by_its_name(ObservationKind kind)
    {
        ObservationDefinition d = ObservationTable.Of(kind);
        Assert.Equal(kind, d.Kind);
        Assert.Equal(kind, ObservationTable.Find(d.Name.ToUpperInvariant()));
        Assert.Equal(Math.Max(d.DefaultSd, d.RelativeSd * d.High), BedsideObservation.Of(kind, d.High).Sd);
    }

    [Fact]
    public void Every_reading_stands_for_another_quantity() =>
        Assert.Equal(ObservationTable.All.Count, ObservationTable.All.Select(static d => d.Quantity).Distinct().Count());

    [Fact]
    public void An_unknown_reading_is_refused_with_the_list_of_those_known()
    {
        InputFault fault = Assert.Throws<InputFaultException>(static () => ObservationTable.Find("pulse")).Faults[0];
        Assert.Equal(FaultCode.UnknownField, fault.Code);
        Assert.Contains("wedgeMmHg", fault.Accepted, StringComparison.Ordinal);
    }
}
