using Cavaxis.Circulation.Calibration;
using Cavaxis.Circulation.Parameters;
using Cavaxis.Circulation.Signals;
using Cavaxis.Planning.Case;
using Cavaxis.Quantities.Faults;
using static Cavaxis.Circulation.Calibration.ObservationKind;

namespace Cavaxis.Planning.Running;

/// <summary>
/// The readings of a case, as calibration takes them. With support running only the observations count, since heart and blood sections tell of
/// the time before it; without support both are readings of one state, and an observation goes before the same reading of another section.
/// </summary>
internal sealed class ObservationsFromCase
{
    /// <summary>No reading is surer than this share of the usual error of its kind.</summary>
    private const double SurestShare = 0.05;

    private readonly List<CaseReading> list = [];

    /// <summary>Reads them.</summary>
    /// <param name="file">The case.</param>
    /// <param name="massKg">Body mass of the circulation.</param>
    /// <param name="referenceSpeedPerMin">Speed of the pump at which its ratio is one; null without a circuit.</param>
    /// <returns>Readings, each kind once.</returns>
    /// <exception cref="InputFaultException">A reading lies outside what can be fitted.</exception>
    public static IReadOnlyList<CaseReading> Read(CaseFile file, double massKg, double? referenceSpeedPerMin)
    {
        ObservationsFromCase readings = new();
        readings.Pressures(file.Observations);
        readings.Heart(file.Observations, file.Heart.LvotDiameterMm, massKg);
        readings.Gas(file.Observations);
        if (file.Running.Configuration is null)
        {
            readings.WithoutSupport(file, massKg);
        }
        else
        {
            readings.Circuit(file, referenceSpeedPerMin);
        }

        return readings.list;
    }

    private void Pressures(ObservationSection o)
    {
        Add("observations.meanArterialPressureMmHg", ArterialMeanMmHg, o.MeanArterialPressureMmHg);
        Add("observations.systolicPressureMmHg", ArterialSystolicMmHg, o.SystolicPressureMmHg);
        Add("observations.diastolicPressureMmHg", ArterialDiastolicMmHg, o.DiastolicPressureMmHg);
        Add("observations.centralVenousPressureMmHg", CentralVenousMmHg, o.CentralVenousPressureMmHg);
        Add("observations.pulmonaryArteryMeanMmHg", PulmonaryArteryMeanMmHg, o.PulmonaryArteryMeanMmHg);
        Add("observations.pulmonaryArterySystolicMmHg", PulmonaryArterySystolicMmHg, o.PulmonaryArterySystolicMmHg);
        Add("observations.pulmonaryArteryDiastolicMmHg", PulmonaryArteryDiastolicMmHg, o.PulmonaryArteryDiastolicMmHg);
        Add("observations.wedgePressureMmHg", WedgeMmHg, o.WedgePressureMmHg);
    }

    private void Heart(ObservationSection o, Measurement? diameter, double massKg)
    {
        Add("observations.heartRatePerMin", HeartRatePerMin, o.HeartRatePerMin);
        Add("observations.ejectionFractionPercent", EjectionFractionPercent, o.EjectionFractionPercent);
        Add("observations.cardiacOutputLPerMin", NativeOutputLPerMin, o.CardiacOutputLPerMin);
        Outflow("observations.outflowVtiCm", o.OutflowVtiCm, diameter, massKg);
        Add("observations.aorticValveOpenPercent", AorticValveOpenPercent, o.AorticValveOpenPercent);
    }

    private void Gas(ObservationSection o)
    {
        Add("observations.rightArmSaturationPercent", RightArmSaturationPercent, o.RightArmSaturationPercent);
        Add("observations.rightArmPo2MmHg", RightArmPo2MmHg, o.RightArmPo2MmHg);
        Add("observations.rightArmPco2MmHg", RightArmPco2MmHg, o.RightArmPco2MmHg);
        Add("observations.legSaturationPercent", LegSaturationPercent, o.LegSaturationPercent);
        Add("observations.pulmonaryArterySaturationPercent", MixedVenousSaturationPercent, o.PulmonaryArterySaturationPercent);
    }

    private void Circuit(CaseFile file, double? referenceSpeedPerMin)
    {
        ObservationSection o = file.Observations;
        Add("observations.preMembraneSaturationPercent", PreMembraneSaturationPercent, o.PreMembraneSaturationPercent);
        Add("observations.postMembraneSaturationPercent", PostMembraneSaturationPercent, o.PostMembraneSaturationPercent);
        Add("observations.inletPressureMmHg", InletPressureMmHg, o.InletPressureMmHg);
        Add("observations.outletPressureMmHg", OutletPressureMmHg, o.OutletPressureMmHg);
        if (file.Running.Configuration is not (RunningConfiguration.VaFemoral or RunningConfiguration.VaAxillary))
        {
            Add("observations.recirculationPercent", RecirculationPercent, o.RecirculationPercent);
        }

        Add("running.flowLPerMin", PumpFlowLPerMin, file.Running.FlowLPerMin);
        if (referenceSpeedPerMin is double reference)
        {
            Add("running.speedPerMin", PumpSpeedRatio, file.Running.SpeedPerMin, 1 / reference);
        }
    }

    private void WithoutSupport(CaseFile file, double massKg)
    {
        Add("heart.meanArterialPressureMmHg", ArterialMeanMmHg, file.Heart.MeanArterialPressureMmHg);
        Add("heart.centralVenousPressureMmHg", CentralVenousMmHg, file.Heart.CentralVenousPressureMmHg);
        Add("heart.ratePerMin", HeartRatePerMin, file.Heart.RatePerMin is { Value: >= 20 } rate ? rate : null);
        Add("heart.ejectionFractionPercent", EjectionFractionPercent, file.Heart.EjectionFractionPercent);
        Add("heart.cardiacOutputLPerMin", NativeOutputLPerMin, file.Heart.CardiacOutputLPerMin);
        Outflow("heart.lvotVtiCm", file.Heart.LvotVtiCm, file.Heart.LvotDiameterMm, massKg);
        Add("blood.arterialSaturationPercent", RightArmSaturationPercent, file.Blood.ArterialSaturationPercent);
        Add("blood.arterialPo2MmHg", RightArmPo2MmHg, file.Blood.ArterialPo2MmHg);
        Add("blood.arterialPco2MmHg", RightArmPco2MmHg, file.Blood.ArterialPco2MmHg);
        Add("blood.venousSaturationPercent", CentralVenousSaturationPercent, file.Blood.VenousSaturationPercent);
    }

    /// <summary>The integral over this patient's own outflow tract, carried over to the outflow of the model so that the stroke volume is the same.</summary>
    private void Outflow(string field, Measurement? vti, Measurement? diameter, double massKg)
    {
        if (vti is null || diameter is null)
        {
            Add(field, OutflowVelocityTimeIntegralCm, vti);
            return;
        }

        double own = Math.PI / 4 * diameter.Value * diameter.Value / 100;
        double model = CirculationSummary.OutflowAreaCm2 * Math.Pow(massKg / ParameterTable.ReferenceMassKg, 2.0 / 3);
        Add(field, OutflowVelocityTimeIntegralCm, vti, own / model, vti.Value * own / model * 2 * diameter.Sd / diameter.Value);
    }

    private void Add(string field, ObservationKind kind, Measurement? reading, double factor = 1, double extraSd = 0)
    {
        if (reading is null || list.Exists(seen => seen.Observation.Kind == kind))
        {
            return;
        }

        ObservationDefinition definition = ObservationTable.Of(kind);
        double value = reading.Value * factor;
        Require.InRange(value, definition.Low, definition.High, field, $"The circulation fits the {definition.Words} inside this range only.");
        double sd = Math.Max(SurestShare * definition.DefaultSd, double.Hypot(reading.Sd * factor, extraSd));
        list.Add(new CaseReading(field, new BedsideObservation(kind, value, Math.Min(sd, definition.High - definition.Low))));
    }
}
