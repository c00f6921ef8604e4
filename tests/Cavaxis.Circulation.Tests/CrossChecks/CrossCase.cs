using Cavaxis.Circulation.Axis;
using Cavaxis.Circulation.Parameters;
using static Cavaxis.Circulation.Parameters.CirculationParameter;

namespace Cavaxis.Circulation.Tests.CrossChecks;

/// <summary>Patients that together exercise every term of the equations.</summary>
internal static class CrossCase
{
    /// <summary>A patient by name.</summary>
    public static CirculationParameters Of(string name) => name switch
    {
        "normal adult" => CirculationParameters.Adult,
        "two-site V-V" => CirculationParameters.Adult.With(
            (CircuitOn, 1), (ShuntFraction, 0.6), (TargetFlowLPerMin, 4.5), (PeepCmH2O, 12), (AlveolarSwingCmH2O, 12), (PleuralSwingMmHg, 4)),
        "V-A with a weak ventricle" => CirculationParameters.Adult.With(
            (CircuitOn, 1), (ArterialShareOfReturn, 1), (TargetFlowLPerMin, 4), (LeftVentricleElastanceMmHgPerMl, 0.7), (MitralLeakAreaCm2, 0.1)),
        "V-AV with every option" => CirculationParameters.Adult.With(
            (CircuitOn, 1), (ArterialShareOfReturn, 0.6), (AscendingShareOfArterialReturn, 0.3), (TargetFlowLPerMin, 4), (FlowControlPerS, 0.5),
            (AorticLeakAreaCm2, 0.05), (MitralLeakAreaCm2, 0.1), (BalloonVolumeMl, 40), (VentFlowLPerMin, 0.5), (TransvalvularFlowLPerMin, 1),
            (SeptalOpeningCm2, 0.3), (ReflexGain, 1), (ShuntFraction, 0.4), (PeepCmH2O, 8), (AbdominalSwingMmHg, 2), (JetMixing, 0.5))
            .With(new AxisPorts([0.05, 0.15, 0.05, 0.05, 0.1, 0.2, 0.15, 0.1, 0.1, 0.05], [0.1, 0.1, 0.2, 0.2, 0.1, 0.1, 0.05, 0.05, 0.05, 0.05])),
        _ => throw new ArgumentOutOfRangeException(nameof(name), name, "No such patient."),
    };
}
