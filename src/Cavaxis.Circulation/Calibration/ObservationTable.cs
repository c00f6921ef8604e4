using Cavaxis.Circulation.Signals;
using Cavaxis.Quantities;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Circulation.Calibration;

/// <summary>The bedside readings that calibration knows, with the quantity each stands for and its usual spread.</summary>
public static class ObservationTable
{
    private static readonly Source Transducer = new(
        "Fluid-filled line: levelling by a centimetre or two, damping and rounding", Certainty.CommonPractice);

    private static readonly Source Echo = new(
        "Repeated echocardiographic reading, about a tenth of the value", Certainty.CommonPractice);

    private static readonly Source Oximeter = new("Co-oximeter with sampling and drift between samples", Certainty.CommonPractice);

    private static readonly Source Gas = new("Blood gas analysis with sampling and drift between samples", Certainty.CommonPractice);

    private static readonly Source Circuit = new("Circuit display, rounding and drift", Certainty.CommonPractice);

    private static readonly Source Thermodilution = new(
        "Stetz 1982, Am Rev Respir Dis 126:1001: a change below 12-15 % of thermodilution output is not told from chance", Certainty.FromMemory);

    private static readonly Source Upstream = new(
        "Saturation of the upper cava for that of all venous blood: scatter of several percent between the two", Certainty.CommonPractice);

    /// <summary>All readings, in the order of <see cref="ObservationKind"/>.</summary>
    public static IReadOnlyList<ObservationDefinition> All { get; } =
    [
        Row(ObservationKind.ArterialMeanMmHg, "mean arterial pressure", "mmHg", CirculationQuantity.MeanArterialPressureMmHg, 10, 200, 3, Transducer),
        Row(ObservationKind.ArterialSystolicMmHg, "systolic arterial pressure", "mmHg", CirculationQuantity.SystolicPressureMmHg, 10, 280, 5, Transducer),
        Row(ObservationKind.ArterialDiastolicMmHg, "diastolic arterial pressure", "mmHg", CirculationQuantity.DiastolicPressureMmHg, 5, 180, 4, Transducer),
        Row(ObservationKind.CentralVenousMmHg, "central venous pressure", "mmHg", CirculationQuantity.CentralVenousPressureMmHg, -10, 40, 1.5, Transducer),
        Row(ObservationKind.PulmonaryArteryMeanMmHg, "mean pulmonary artery pressure", "mmHg", CirculationQuantity.PulmonaryArteryMeanMmHg, 0, 100, 2, Transducer),
        Row(ObservationKind.PulmonaryArterySystolicMmHg, "systolic pulmonary artery pressure", "mmHg", CirculationQuantity.PulmonaryArterySystolicMmHg, 0, 150, 3, Transducer),
        Row(ObservationKind.PulmonaryArteryDiastolicMmHg, "diastolic pulmonary artery pressure", "mmHg", CirculationQuantity.PulmonaryArteryDiastolicMmHg, -5, 80, 2.5, Transducer),
        Row(ObservationKind.WedgeMmHg, "wedge pressure", "mmHg", CirculationQuantity.WedgePressureMmHg, -5, 60, 2, Transducer),
        Row(ObservationKind.HeartRatePerMin, "heart rate", "/min", CirculationQuantity.HeartRatePerMin, 20, 260, 1, Circuit),
        Row(ObservationKind.OutflowVelocityTimeIntegralCm, "velocity-time integral of the outflow", "cm", CirculationQuantity.OutflowVelocityTimeIntegralCm, 0, 50, 1, Echo, 0.1),
        Row(ObservationKind.EjectionFractionPercent, "ejection fraction", "%", CirculationQuantity.LeftVentricularEjectionFractionPercent, 0, 90, 6, Echo),
        Row(ObservationKind.NativeOutputLPerMin, "output of the heart", "L/min", CirculationQuantity.NativeOutputLPerMin, 0, 25, 0.3, Thermodilution, 0.1),
        Row(ObservationKind.PreMembraneSaturationPercent, "saturation before the membrane lung", "%", CirculationQuantity.PreMembraneSaturationPercent, 5, 100, 2, Oximeter),
        Row(ObservationKind.PostMembraneSaturationPercent, "saturation after the membrane lung", "%", CirculationQuantity.PostMembraneSaturationPercent, 5, 100, 1, Oximeter),
        Row(ObservationKind.MixedVenousSaturationPercent, "mixed venous saturation", "%", CirculationQuantity.PulmonaryArterySaturationPercent, 5, 100, 2, Oximeter),
        Row(ObservationKind.CentralVenousSaturationPercent, "central venous saturation", "%", CirculationQuantity.VenousSaturationPercent, 5, 100, 5, Upstream),
        Row(ObservationKind.RightArmSaturationPercent, "saturation of the right arm", "%", CirculationQuantity.RightArmSaturationPercent, 5, 100, 1.5, Oximeter),
        Row(ObservationKind.RightArmPo2MmHg, "oxygen tension of the right arm", "mmHg", CirculationQuantity.RightArmPo2MmHg, 10, 700, 4, Gas, 0.07),
        Row(ObservationKind.RightArmPco2MmHg, "carbon dioxide tension of the right arm", "mmHg", CirculationQuantity.RightArmPco2MmHg, 5, 200, 2, Gas, 0.05),
        Row(ObservationKind.LegSaturationPercent, "saturation of the leg", "%", CirculationQuantity.LowerBodySaturationPercent, 5, 100, 1.5, Oximeter),
        Row(ObservationKind.PumpFlowLPerMin, "pump flow", "L/min", CirculationQuantity.PumpFlowLPerMin, 0, 10, 0.15, Circuit),
        Row(ObservationKind.PumpSpeedRatio, "pump speed over the speed of its curve", "1", CirculationQuantity.PumpSpeedRatio, 0, 3, 0.02, Circuit),
        Row(ObservationKind.InletPressureMmHg, "pressure before the pump", "mmHg", CirculationQuantity.InletPressureMmHg, -400, 100, 5, Circuit),
        Row(ObservationKind.OutletPressureMmHg, "pressure after the pump", "mmHg", CirculationQuantity.OutletPressureMmHg, -50, 800, 5, Circuit, 0.03),
        Row(ObservationKind.RecirculationPercent, "recirculation by dilution", "%", CirculationQuantity.RecirculationPercent, 0, 100, 5, Circuit),
        Row(ObservationKind.AorticValveOpenPercent, "share of the beat with the aortic valve open", "%", CirculationQuantity.AorticValveOpenPercent, 0, 60, 4, Echo),
    ];

    /// <summary>The definition of a reading.</summary>
    /// <param name="kind">The reading.</param>
    /// <returns>Its definition.</returns>
    /// <exception cref="InputFaultException">Not one of the list.</exception>
    public static ObservationDefinition Of(ObservationKind kind) => Enum.IsDefined(kind) ? All[(int)kind] : throw Unknown(kind.ToString());

    /// <summary>The reading of a name, upper or lower case.</summary>
    /// <param name="name">Name with its unit, such as <c>wedgeMmHg</c>.</param>
    /// <returns>The reading.</returns>
    /// <exception cref="InputFaultException">There is no such name.</exception>
    public static ObservationKind Find(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        return All.FirstOrDefault(d => string.Equals(d.Name, name, StringComparison.OrdinalIgnoreCase))?.Kind ?? throw Unknown(name);
    }

    private static InputFaultException Unknown(string name) => new(new InputFault(
        FaultCode.UnknownField,
        "observations",
        InputFault.Shown(name),
        string.Join(", ", All.Select(static d => d.Name)),
        "Name the reading as in this list."));

    private static ObservationDefinition Row(
        ObservationKind kind, string words, string unit, CirculationQuantity quantity, double low, double high, double sd, Source source, double relative = 0)
    {
        string name = kind.ToString();
        return new ObservationDefinition(kind, char.ToLowerInvariant(name[0]) + name[1..], words, unit, quantity, low, high, sd, source, relative);
    }
}
