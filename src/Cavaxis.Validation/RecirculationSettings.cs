using Cavaxis.Circulation.Axis;
using Cavaxis.Circulation.Parameters;
using Cavaxis.Devices.Cannulae;
using Cavaxis.Devices.Catalogue;
using Cavaxis.Devices.Hydraulics;
using static Cavaxis.Circulation.Parameters.CirculationParameter;

namespace Cavaxis.Validation;

/// <summary>Cannulae of published series laid into one adult line, in severe lung failure.</summary>
internal static class RecirculationSettings
{
    private const double Tricuspid = 45;
    private const double LateralMm = 25;
    private const double AnnulusMm = 18;

    private static readonly Fluid Blood = new(1055, 0.003);

    private static readonly AxisGrid Adult = AxisGrid.Of(-65, Tricuspid, 85, 105, 190, 290);

    /// <summary>Dual-lumen cannula, its port so far below the valve (negative: too shallow) and turned away from it.</summary>
    internal static CirculationParameters DualLumen(double flow, double deeperMm, double turnDeg)
    {
        Cannula cannula = Device("bicaval-31fr-31cm");
        double tip = Tricuspid + deeperMm + 94;
        return Patient(flow, AxisPortsBuilder.Of(
            Adult, AxisPortsBuilder.DrainageOf(cannula, tip, true, flow, Blood),
            AxisPortsBuilder.ReturnOf(cannula, tip, true, flow, Blood, turnDeg, LateralMm, AnnulusMm)));
    }

    /// <summary>Drainage from the groin, return from the neck.</summary>
    internal static CirculationParameters FemoroJugular(double flow, string drain, double drainTipMm, double returnTipMm) =>
        Two(flow, drain, drainTipMm, false, returnTipMm);

    /// <summary>Drainage from the neck, return from the groin.</summary>
    internal static CirculationParameters JugularDrainage(double flow, string drain, double drainTipMm, double returnTipMm) =>
        Two(flow, drain, drainTipMm, true, returnTipMm);

    private static CirculationParameters Two(double flow, string drain, double drainTipMm, bool drainFromNeck, double returnTipMm) =>
        Patient(flow, AxisPortsBuilder.Of(
            Adult, AxisPortsBuilder.DrainageOf(Device(drain), drainTipMm, drainFromNeck, flow, Blood),
            AxisPortsBuilder.ReturnOf(Device("return-venous-19fr-21cm"), returnTipMm, !drainFromNeck, flow, Blood, 0, LateralMm, AnnulusMm)));

    private static Cannula Device(string id) => DeviceCatalogue.BuiltIn.Cannulae.Single(c => c.Id == id);

    private static CirculationParameters Patient(double flow, AxisPorts ports) => CirculationParameters.Adult
        .With((CircuitOn, 1), (ArterialShareOfReturn, 0), (ShuntFraction, 0.6), (TargetFlowLPerMin, flow)).With(ports);
}
