using Cavaxis.Circulation.Parameters;
using Cavaxis.Circulation.Presets;
using Cavaxis.Circulation.Signals;
using Cavaxis.Circulation.Simulation;
using static Cavaxis.Circulation.Parameters.CirculationParameter;
using static Cavaxis.Circulation.Signals.CirculationQuantity;

namespace Cavaxis.Circulation.Tests.Physiology;

/// <summary>
/// What changes recirculation while no cannula moves, in the directions and orders of size of the pig series of 2024 (Intensive Care Med
/// Exp 12:51): PEEP 5 to 15 cmH2O +12 to +28 %, a litre of blood lost +43 %, a litre given -45 %, flow 3.5 to 5 L/min +28 to +49 % (medians; the
/// abstract does not say whether of the value or in points, so both readings bound the tests).
/// </summary>
public class RecirculationPhenomenaTests
{
    private static readonly CirculationParameters Supported = CirculationPresets.Of("severe-lung-failure").Parameters()
        .With(CircuitOn, 1).With(TargetFlowLPerMin, 4.5).With(BloodVolumeMl, 5200);

    private static readonly Lazy<Dictionary<string, SettledState>> States = new(static () =>
    {
        Dictionary<string, CirculationParameters> sets = new()
        {
            ["4.5 L/min"] = Supported,
            ["half a litre lost"] = Supported.With(BloodVolumeMl, 4700),
            ["a litre given"] = Supported.With(BloodVolumeMl, 6200),
            ["PEEP 5"] = Supported.With(PeepCmH2O, 5),
            ["PEEP 15"] = Supported.With(PeepCmH2O, 15),
            ["3.5 L/min"] = Supported.With(TargetFlowLPerMin, 3.5),
            ["5 L/min"] = Supported.With(TargetFlowLPerMin, 5),
        };
        return sets.Keys.Zip(CirculationSimulator.Settle([.. sets.Values])).ToDictionary(static pair => pair.First, static pair => pair.Second);
    });

    [Fact]
    public void Lost_blood_raises_recirculation_with_hardly_a_change_of_the_inlet_pressure()
    {
        Assert.InRange(Relative("4.5 L/min", "half a litre lost"), 0.43 / 2, 1.5);
        Assert.InRange(Change(InletPressureMmHg, "4.5 L/min", "half a litre lost"), -6, 0);
    }

    [Fact]
    public void Given_blood_lowers_recirculation() => Assert.InRange(Relative("4.5 L/min", "a litre given"), -0.6, -0.2);

    [Fact]
    public void Airway_pressure_raises_recirculation_with_a_less_negative_inlet_pressure()
    {
        Assert.InRange(Relative("PEEP 5", "PEEP 15"), 0.12, 0.6);
        Assert.True(Change(InletPressureMmHg, "PEEP 5", "PEEP 15") > 0);
    }

    [Fact]
    public void Flow_raises_recirculation() => Assert.InRange(Relative("3.5 L/min", "5 L/min"), 0.28, 1.5);

    private static double Relative(string from, string to) => Of(to)[RecirculationPercent] / Of(from)[RecirculationPercent] - 1;

    private static double Change(CirculationQuantity quantity, string from, string to) => Of(to)[quantity] - Of(from)[quantity];

    private static CirculationSummary Of(string name) => States.Value[name].RequireSummary();
}
