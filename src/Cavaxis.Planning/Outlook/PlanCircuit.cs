using Cavaxis.Circulation.Parameters;
using Cavaxis.Devices.MembraneLungs;
using Cavaxis.Devices.Pumps;
using Cavaxis.Planning.Circuit;
using Cavaxis.Planning.Configurations;
using Cavaxis.Planning.Rules;
using Cavaxis.Planning.Running;
using Cavaxis.Planning.Search;
using Cavaxis.Quantities;
using static Cavaxis.Circulation.Parameters.CirculationParameter;

namespace Cavaxis.Planning.Outlook;

/// <summary>Connects a patient of the circulation model to the circuit of a plan.</summary>
/// <param name="context">The case.</param>
/// <param name="plan">The plan.</param>
internal sealed class PlanCircuit(PlanningContext context, PlannedSupport plan)
{
    private readonly ConfigurationSearch search = plan.Search;
    private readonly Combination combination = plan.Combination;
    private (DropFit Drainage, DropFit Return)? drops;

    /// <summary>Share of the pump flow that returns to an artery.</summary>
    public double ArterialShare => plan.Configuration.Kind switch
    {
        SupportKind.VenoVenous => 0,
        SupportKind.VenoArterial => 1,
        _ => 1 - context.Rules[LimitName.VenousShareOfReturn],
    };

    /// <summary>The patient on this circuit, flow kept.</summary>
    /// <param name="patient">Patient without support.</param>
    /// <param name="flowLPerMin">Pump flow.</param>
    /// <returns>The numbers with the circuit.</returns>
    public CirculationParameters Connect(CirculationParameters patient, double flowLPerMin)
    {
        CircuitModel circuit = search.Circuit;
        CentrifugalPump pump = circuit.Pump;
        MembraneLung lung = circuit.Lung;
        (DropFit drainage, DropFit back) = drops ??= Drops(lung);
        bool axillary = combination.InRole(CannulaRole.ArterialReturn)?.Slot.Route == AccessRoute.AxillaryGraft;
        double sweep = lung.SweepFor(Math.Min(1000, patient[CarbonDioxideProductionMlPerMin]), 42) ?? 10;
        (CirculationParameter, double)[] settings =
        [
            (CircuitOn, 1), (TargetFlowLPerMin, flowLPerMin), (ArterialShareOfReturn, ArterialShare),
            (AscendingShareOfArterialReturn, axillary ? 1 : 0),
            (PumpSpeedRatio, 0.7 * pump.HighestSpeedRpm / pump.ReferenceSpeedRpm),
            (DrainageLinearMmHgPerLPerMin, drainage.LinearMmHgPerLPerMin), (DrainageQuadraticMmHgPerLPerMin2, drainage.QuadraticMmHgPerLPerMin2),
            (ReturnLinearMmHgPerLPerMin, back.LinearMmHgPerLPerMin), (ReturnQuadraticMmHgPerLPerMin2, back.QuadraticMmHgPerLPerMin2),
            (SweepLPerMin, sweep), (SweepOxygenFraction, 1),
            .. DeviceNumber.Of(pump).Concat(DeviceNumber.Of(lung)).Select(static n => (n.Parameter, n.Value)),
        ];
        // A device may lie beyond the range that the model was made for; the nearest value inside matters only to pressures of the circuit.
        return settings.Aggregate(patient, static (set, setting) => set.WithNearest(setting.Item1, setting.Item2));
    }

    /// <summary>Drops of drainage and return. They are the plan's, whoever lies on the circuit.</summary>
    private (DropFit Drainage, DropFit Return) Drops(MembraneLung lung) => (
        DropFit.Around(combination.FlowLPerMin, flow => context.Reading.Picture.CentralVenousPressureMmHg.Value - search.Pressures(combination.Options, flow).Inlet),
        DropFit.Around(combination.FlowLPerMin, flow => search.Pressures(combination.Options, flow).Return - SinkMmHg() + (lung.DropPa(flow, context.Blood) / UnitFactors.PascalsPerMmHg)));

    private double SinkMmHg() => ArterialShare > 0
        ? context.Reading.Picture.MeanArterialPressureMmHg.Value
        : context.Reading.Picture.CentralVenousPressureMmHg.Value;
}
