using Cavaxis.Circulation.Calibration;
using Cavaxis.Circulation.Parameters;
using Cavaxis.Planning.Running;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Planning.Tests.Running;

public class ChangeReaderTests
{
    private static readonly CirculationParameters Adult = CirculationParameters.Adult.With(CirculationParameter.BloodVolumeMl, 5000);

    [Theory]
    [InlineData("peepCmH2O=12", CirculationParameter.PeepCmH2O, 12)]
    [InlineData("PEEP = 12", CirculationParameter.PeepCmH2O, 12)]
    [InlineData("bloodVolumeMl=+500", CirculationParameter.BloodVolumeMl, 5500)]
    [InlineData("bloodVolume=-500", CirculationParameter.BloodVolumeMl, 4500)]
    [InlineData("bloodVolume=80%", CirculationParameter.BloodVolumeMl, 4000)]
    [InlineData("bloodVolume=+10%", CirculationParameter.BloodVolumeMl, 5500)]
    [InlineData("bloodVolume=-10%", CirculationParameter.BloodVolumeMl, 4500)]
    [InlineData("bloodVolume=x1.1", CirculationParameter.BloodVolumeMl, 5500)]
    [InlineData("pleuralSwingMmHg=-5", CirculationParameter.PleuralSwingMmHg, -5)]
    public void A_change_is_read_as_written(string text, CirculationParameter parameter, double value)
    {
        RequestedChange change = Assert.Single(ChangeReader.Read("--set", [text], Adult));
        Assert.Equal(parameter, change.Parameter);
        Assert.Equal(value, change.To, value < 0 ? 1e-9 : 1e-6 * Math.Max(1, value));
        Assert.Equal(change.To, ChangeReader.Apply(Adult, [change])[parameter]);
    }

    [Theory]
    [InlineData("bloodVolume=5000", ChangeKind.Set, 5000)]
    [InlineData("bloodVolume=+500", ChangeKind.Add, 500)]
    [InlineData("bloodVolume=-500", ChangeKind.Add, -500)]
    [InlineData("bloodVolume=110%", ChangeKind.Multiply, 1.1)]
    [InlineData("bloodVolume=+10%", ChangeKind.Multiply, 1.1)]
    [InlineData("bloodVolume=-10%", ChangeKind.Multiply, 0.9)]
    [InlineData("bloodVolume=x1.1", ChangeKind.Multiply, 1.1)]
    [InlineData("pleuralSwingMmHg=-5", ChangeKind.Set, -5)]
    [InlineData("pleuralSwingMmHg=+2", ChangeKind.Add, 2)]
    [InlineData("pleuralSwingMmHg=+-2", ChangeKind.Add, -2)]
    public void A_change_is_carried_to_every_member_in_the_form_that_was_written(string text, ChangeKind kind, double amount)
    {
        ParameterChange change = Assert.Single(ChangeReader.Read("--change", [text], Adult)).Change;
        Assert.Equal(kind, change.Kind);
        Assert.Equal(amount, change.Amount, 1e-12);
    }

    [Theory]
    [InlineData("peepCmH2O", FaultCode.BadOption)]
    [InlineData("=3", FaultCode.BadOption)]
    [InlineData("", FaultCode.BadOption)]
    [InlineData("peepCmH2O=", FaultCode.WrongKind)]
    [InlineData("peepCmH2O=twelve", FaultCode.WrongKind)]
    [InlineData("peepCmH2O=NaN", FaultCode.WrongKind)]
    [InlineData("peepCmH2O=1e400", FaultCode.WrongKind)]
    [InlineData("peepCmH2O=12,5", FaultCode.WrongKind)]
    [InlineData("peepCmH2O=++2", FaultCode.WrongKind)]
    [InlineData("peepCmH2O=x", FaultCode.WrongKind)]
    [InlineData("peepCmH2O=x-2", FaultCode.WrongKind)]
    [InlineData("peepCmH2O=x50%", FaultCode.WrongKind)]
    [InlineData("peepCmH2O=50%%", FaultCode.WrongKind)]
    [InlineData("peepCmH2O=+", FaultCode.WrongKind)]
    [InlineData("peepCmH2O=5cmH2O", FaultCode.WrongKind)]
    [InlineData("peepCmH2O=%", FaultCode.WrongKind)]
    [InlineData("bloodVolume=x9", FaultCode.OutOfRange)]
    [InlineData("peepCmH2O=99", FaultCode.OutOfRange)]
    [InlineData("bloodVolume=-99%", FaultCode.OutOfRange)]
    [InlineData("pepCmH2O=5", FaultCode.UnknownField)]
    public void What_cannot_be_used_is_one_fault_with_a_remedy(string text, FaultCode code)
    {
        InputFault fault = Assert.Single(Assert.Throws<InputFaultException>(() => ChangeReader.Read("--set", [text], Adult)).Faults);
        Assert.Equal(code, fault.Code);
        Assert.StartsWith("--set", fault.Field, StringComparison.Ordinal);
        Assert.NotEmpty(fault.Value);
        Assert.NotEmpty(fault.Remedy);
        if (code == FaultCode.WrongKind)
        {
            Assert.All(new[] { "NUMBER to set", "+NUMBER", "NUMBER%", "xNUMBER" }, form => Assert.Contains(form, fault.Accepted, StringComparison.Ordinal));
        }
    }

    [Fact]
    public void Every_fault_is_told_at_once_and_a_number_stands_once()
    {
        InputFaultException thrown = Assert.Throws<InputFaultException>(() => ChangeReader.Read("--set", ["moon=1", "peep=5", "peepCmH2O=6", "flow=x"], Adult));
        Assert.Equal([FaultCode.UnknownField, FaultCode.DuplicateField, FaultCode.WrongKind], thrown.Faults.Select(static f => f.Code));
    }
}
