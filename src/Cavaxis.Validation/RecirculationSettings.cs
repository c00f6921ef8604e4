using Cavaxis.Anatomy.Body;
using Cavaxis.Anatomy.Landmarks;
using Cavaxis.Anatomy.Population;
using Cavaxis.Circulation.Axis;
using Cavaxis.Circulation.Parameters;
using Cavaxis.Circulation.Presets;
using Cavaxis.Devices.Cannulae;
using Cavaxis.Devices.Catalogue;
using Cavaxis.Devices.Hydraulics;
using static Cavaxis.Circulation.Parameters.CirculationParameter;

namespace Cavaxis.Validation;

/// <summary>
/// Cannulae of published series laid into the median adult of the anatomy room, in severe lung failure. The series give no positions:
/// a well placed side port lies in the middle of the atrium, other places are named where they are used.
/// </summary>
internal static class RecirculationSettings
{
    private const double LateralMm = 25;
    private const double AnnulusMm = 18;

    private static readonly Fluid Blood = new(1055, 0.003);

    private static readonly CavalAxis Median = CavalAxis.OfMedians(PopulationModel.For(new BodyHabitus(40, Sex.Male, 175, 75)));

    private static readonly AxisGrid Adult = AxisGrid.Of(Median);

    /// <summary>Middle of the atrium, mm below the superior cavo-atrial junction.</summary>
    internal static double MiddleOfAtriumMm => 0.5 * InferiorJunctionMm;

    /// <summary>Inferior cavo-atrial junction, mm below the superior one.</summary>
    internal static double InferiorJunctionMm => Median[CavalLandmark.Icaj];

    /// <summary>Dual-lumen cannula, its port so far below the middle of the atrium (negative: too shallow) and turned away from the valve.</summary>
    internal static CirculationParameters DualLumen(double flow, double deeperMm, double turnDeg)
    {
        Cannula cannula = Device("bicaval-31fr-31cm");
        double tip = MiddleOfAtriumMm + deeperMm + 94;
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

    private static CirculationParameters Patient(double flow, AxisPorts ports) => CirculationPresets.Of("severe-lung-failure").Parameters()
        .With((CircuitOn, 1), (ArterialShareOfReturn, 0), (ShuntFraction, 0.6), (TargetFlowLPerMin, flow)).With(ports);
}
