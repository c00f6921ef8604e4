using Cavaxis.Circulation.Parameters;
using Cavaxis.Devices.MembraneLungs;
using Cavaxis.Devices.Pumps;

namespace Cavaxis.Planning.Running;

/// <summary>A number of the circulation that a pump or membrane lung of the catalogue gives.</summary>
/// <param name="Parameter">Which.</param>
/// <param name="Value">Its value.</param>
/// <param name="Decides">
/// True where a value beyond the range of the model would change what the circuit does; false where the nearest value inside changes
/// little besides pressures of the circuit.
/// </param>
internal readonly record struct DeviceNumber(CirculationParameter Parameter, double Value, bool Decides)
{
    /// <summary>Numbers of a pump at the speed of its curve.</summary>
    /// <param name="pump">The pump.</param>
    /// <returns>The numbers.</returns>
    public static DeviceNumber[] Of(CentrifugalPump pump) =>
    [
        new(CirculationParameter.PumpShutOffMmHg, pump.ShutOffMmHg, true),
        new(CirculationParameter.PumpLinearMmHgPerLPerMin, pump.LinearMmHgPerLPerMin, true),
        new(CirculationParameter.PumpQuadraticMmHgPerLPerMin2, pump.QuadraticMmHgPerLPerMin2, true),
        new(CirculationParameter.HighestSpeedRatio, pump.HighestSpeedRpm / pump.ReferenceSpeedRpm, false),
    ];

    /// <summary>Numbers of a membrane lung.</summary>
    /// <param name="lung">The membrane lung.</param>
    /// <returns>The numbers.</returns>
    public static DeviceNumber[] Of(MembraneLung lung) =>
    [
        new(CirculationParameter.MembraneRatedFlowLPerMin, lung.RatedFlowLPerMin, true),
        new(CirculationParameter.MembraneCarbonDioxideMlPerMinPerMmHg, lung.CarbonDioxideConductance, false),
        new(CirculationParameter.MembraneLungMl, lung.PrimingVolumeMl, false),
    ];
}
