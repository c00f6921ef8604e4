using Cavaxis.Circulation.Equations;
using Cavaxis.Circulation.Lanes;
using Cavaxis.Circulation.Parameters;
using static Cavaxis.Circulation.Signals.CirculationQuantity;

namespace Cavaxis.Circulation.Signals;

/// <summary>The numbers of a settled breath that people ask for.</summary>
public sealed class CirculationSummary
{
    /// <summary>Cross-section of the left ventricular outflow of the adult: a diameter of 2.1 cm.</summary>
    public const double OutflowAreaCm2 = 3.46;

    /// <summary>
    /// Least flow in the adult over which a pressure difference is a resistance, L/min; by mass in other sizes. Below it an error of 0.1 mmHg
    /// makes more than one Wood unit. Assumption.
    /// </summary>
    public const double LeastFlowForResistanceLPerMin = 0.1;

    /// <summary>
    /// Least content after the membrane lung over that of native venous blood at which contents tell recirculation, mL/dL: about the error
    /// with which a content is measured. Assumption.
    /// </summary>
    private const double LeastGainMlPerDl = 0.5;

    private readonly double[] values;

    private CirculationSummary(double[] values) => this.values = values;

    /// <summary>The value of a quantity, in the unit of its name; not a number where <see cref="IsDefined"/> is false.</summary>
    /// <param name="quantity">Which.</param>
    public double this[CirculationQuantity quantity] => values[(int)quantity];

    /// <summary>
    /// False where a quantity has no meaning in this circulation: a resistance without a flow to divide by, or recirculation by contents where
    /// the membrane lung hardly changes the content of what it is given.
    /// </summary>
    /// <param name="quantity">Which.</param>
    /// <returns>Whether it has a value.</returns>
    public bool IsDefined(CirculationQuantity quantity) => double.IsFinite(values[(int)quantity]);

    /// <summary>Describes a breath.</summary>
    /// <param name="parameters">The numbers it was computed with.</param>
    /// <param name="breath">The breath.</param>
    /// <param name="oxygen">Oxygen from lungs, from membrane and used over the breath, mL.</param>
    /// <returns>The summary.</returns>
    internal static CirculationSummary Of(
        CirculationParameters parameters, BreathRecord breath, (double Lungs, double Membrane, double Used) oxygen)
    {
        double[] v = new double[Enum.GetValues<CirculationQuantity>().Length];
        void Set(CirculationQuantity q, double value) => v[(int)q] = value;
        Pressures(breath, Set);
        Heart(parameters, breath, Set);
        Support(parameters, breath, Set);
        Gas(parameters, breath, Set);
        double perMin = 60 / breath.PeriodS;
        Set(OxygenDeliveryMlPerMin, breath.Mean(Signal.OxygenDelivery));
        Set(OxygenConsumptionMlPerMin, oxygen.Used * perMin);
        Set(DeliveryOverConsumption, breath.Mean(Signal.OxygenDelivery) / (oxygen.Used * perMin));
        Set(OxygenFromLungsMlPerMin, oxygen.Lungs * perMin);
        Set(OxygenFromMembraneMlPerMin, oxygen.Membrane * perMin);
        return new CirculationSummary(v);
    }

    private static void Pressures(BreathRecord b, Action<CirculationQuantity, double> set)
    {
        double systolic = b.BeatExtreme(Signal.ArterialPressure, highest: true);
        double diastolic = b.BeatExtreme(Signal.ArterialPressure, highest: false);
        set(HeartRatePerMin, b.Beats * 60 / b.PeriodS);
        set(MeanArterialPressureMmHg, b.Mean(Signal.ArterialPressure));
        set(SystolicPressureMmHg, systolic);
        set(DiastolicPressureMmHg, diastolic);
        set(PulsePressureMmHg, systolic - diastolic);
        set(CentralVenousPressureMmHg, b.Mean(Signal.RightAtrialPressure));
        set(RightVentricularSystolicMmHg, b.BeatExtreme(Signal.RightVentricularPressure, highest: true));
        set(PulmonaryArteryMeanMmHg, b.Mean(Signal.PulmonaryArteryPressure));
        set(PulmonaryArterySystolicMmHg, b.BeatExtreme(Signal.PulmonaryArteryPressure, highest: true));
        set(PulmonaryArteryDiastolicMmHg, b.BeatExtreme(Signal.PulmonaryArteryPressure, highest: false));
        set(WedgePressureMmHg, b.Mean(Signal.WedgePressure));
    }

    private static void Heart(CirculationParameters p, BreathRecord b, Action<CirculationQuantity, double> set)
    {
        double largest = b.BeatExtreme(Signal.LeftVentricularVolume, highest: true);
        double smallest = b.BeatExtreme(Signal.LeftVentricularVolume, highest: false);
        double rightLargest = b.BeatExtreme(Signal.RightVentricularVolume, highest: true);
        double rightSmallest = b.BeatExtreme(Signal.RightVentricularVolume, highest: false);
        double native = b.Mean(Signal.AorticValveFlow);
        double stroke = native * 1000 / 60 * b.PeriodS / b.Beats;
        double area = OutflowAreaCm2 * Math.Pow(p.MassKg / ParameterTable.ReferenceMassKg, 2.0 / 3);
        double lung = b.Mean(Signal.LungFlow);
        double systemic = b.Mean(Signal.SystemicFlow);
        set(LeftVentricularEndDiastolicPressureMmHg, EndDiastolicPressure(p, b));
        set(LeftVentricularEndDiastolicVolumeMl, largest);
        set(LeftVentricularEndSystolicVolumeMl, smallest);
        set(LeftVentricularEjectionFractionPercent, 100 * (largest - smallest) / largest);
        set(RightVentricularEndDiastolicVolumeMl, rightLargest);
        set(RightVentricularEjectionFractionPercent, 100 * (rightLargest - rightSmallest) / rightLargest);
        set(StrokeVolumeMl, stroke);
        set(OutflowVelocityTimeIntegralCm, stroke / area);
        set(StrokeWorkMmHgMl, LoopArea(b[Signal.LeftVentricularVolume], b[Signal.LeftVentricularPressure]) / b.Beats);
        set(NativeOutputLPerMin, native);
        set(LungFlowLPerMin, lung);
        set(SystemicFlowLPerMin, systemic);
        set(AorticValveOpenPercent, 100 * b.Mean(Signal.AorticValveOpen));
        double least = LeastFlowForResistanceLPerMin * p.MassKg / ParameterTable.ReferenceMassKg;
        double Resistance(Signal before, Signal behind, double flow) => flow < least ? double.NaN : (b.Mean(before) - b.Mean(behind)) / flow;
        set(SystemicResistanceWoodUnits, Resistance(Signal.ArterialPressure, Signal.RightAtrialPressure, systemic));
        set(PulmonaryResistanceWoodUnits, Resistance(Signal.PulmonaryArteryPressure, Signal.WedgePressure, lung));
    }

    private static void Support(CirculationParameters p, BreathRecord b, Action<CirculationQuantity, double> set)
    {
        double flow = b.Mean(Signal.CircuitFlow);
        double recirculated = b.Mean(Signal.RecirculatedFlow);
        double toVein = flow * (1 - p[CirculationParameter.ArterialShareOfReturn]);
        bool venous = flow > 1e-3 && toVein > 1e-3;
        double share = venous ? recirculated / flow : 0;
        double native = b.Mean(Signal.NativeVenousOxygen);
        double after = b.Mean(Signal.PostMembraneOxygen);
        set(PumpFlowLPerMin, flow);
        set(PumpSpeedRatio, b.Mean(Signal.SpeedRatio));
        set(InletPressureMmHg, b.Mean(Signal.InletPressure));
        set(OutletPressureMmHg, b.Mean(Signal.OutletPressure));
        set(RecirculationPercent, 100 * share);
        set(RecirculationLowestPercent, venous ? 100 * b.Lowest(Signal.Recirculation) : 0);
        set(RecirculationHighestPercent, venous ? 100 * b.Highest(Signal.Recirculation) : 0);
        set(EffectiveFlowLPerMin, flow - recirculated);
        set(RecirculationByContentPercent, !venous ? 0 : after - native < LeastGainMlPerDl ? double.NaN : 100 * (b.Mean(Signal.PreMembraneOxygen) - native) / (after - native));
        set(SuperiorCavaLowestFilling, b.Lowest(Signal.SuperiorCavaFilling));
        set(InferiorCavaLowestFilling, b.Lowest(Signal.AbdominalCavaFilling));
        set(DrainageLowestOpenness, b.Lowest(Signal.DrainageOpenness));
        set(InletPressureSwingMmHg, b.Highest(Signal.InletPressure) - b.Lowest(Signal.InletPressure));
    }

    private static void Gas(CirculationParameters p, BreathRecord b, Action<CirculationQuantity, double> set)
    {
        GasExchange<OneLane> gas = new(new ModelConstants<OneLane>([p]));
        double Saturation(double content) => 100 * BloodGas.Saturation(gas, p[CirculationParameter.HaemoglobinGPerDl], content);
        set(RightArmSaturationPercent, Saturation(b.Mean(Signal.AscendingOxygen)));
        set(LeftArmSaturationPercent, Saturation(b.Mean(Signal.ArchOxygen)));
        set(LowerBodySaturationPercent, Saturation(b.Mean(Signal.DescendingOxygen)));
        set(PulmonaryArterySaturationPercent, Saturation(b.Mean(Signal.PulmonaryArteryOxygen)));
        set(VenousSaturationPercent, Saturation(b.Mean(Signal.NativeVenousOxygen)));
        set(PreMembraneSaturationPercent, Saturation(b.Mean(Signal.PreMembraneOxygen)));
        set(PostMembraneSaturationPercent, Saturation(b.Mean(Signal.PostMembraneOxygen)));
        set(PreMembraneSwingPercent, Saturation(b.Highest(Signal.PreMembraneOxygen)) - Saturation(b.Lowest(Signal.PreMembraneOxygen)));
        set(RightArmPo2MmHg, BloodGas.Po2(gas, b.Mean(Signal.AscendingOxygen)));
        set(RightArmPco2MmHg, gas.CarbonDioxideTensionAt(
            new OneLane(b.Mean(Signal.AscendingCarbonDioxide) / 100), new OneLane(b.Mean(Signal.AscendingOxygen) / 100)).Value);
    }

    /// <summary>Mean over the beats of the left ventricular pressure at the onset of ventricular activation.</summary>
    private static double EndDiastolicPressure(CirculationParameters p, BreathRecord b)
    {
        double beat = b.PeriodS / b.Beats;
        double onset = p[CirculationParameter.AtrioventricularDelayS] * BeatClock<OneLane>.Scale(p, beat);
        double sum = 0;
        for (int i = 0; i < b.Beats; i++)
        {
            int at = (int)Math.Round(((i * beat) + onset) / b.PeriodS * b.Count);
            sum += b[Signal.LeftVentricularPressure][Math.Min(at, b.Count - 1)];
        }

        return sum / b.Beats;
    }

    /// <summary>Area of a closed loop by the trapezoid rule, positive when it is run through counter-clockwise.</summary>
    private static double LoopArea(ReadOnlySpan<double> x, ReadOnlySpan<double> y)
    {
        double sum = 0;
        for (int i = 0; i < x.Length; i++)
        {
            int next = i + 1 == x.Length ? 0 : i + 1;
            sum += 0.5 * ((x[i] * y[next]) - (x[next] * y[i]));
        }

        return sum;
    }
}
