using Cavaxis.Circulation.Signals;
using Cavaxis.Planning.Case;
using static Cavaxis.Circulation.Signals.CirculationQuantity;

namespace Cavaxis.Planning.Running;

/// <summary>The readings of a case, as the circulation knows them.</summary>
internal static class ObservationsFromCase
{
    /// <summary>
    /// Reads them. With support running only the observations count, since heart and blood sections tell of the time before it; without
    /// support both are readings of one state, and an observation goes before the same reading of another section.
    /// </summary>
    /// <param name="file">The case.</param>
    /// <param name="referenceSpeedPerMin">Speed of the pump at which its ratio is one; null without a circuit.</param>
    /// <returns>Readings, each quantity once.</returns>
    public static IReadOnlyList<BedsideObservation> Read(CaseFile file, double? referenceSpeedPerMin)
    {
        ObservationSection o = file.Observations;
        List<BedsideObservation> list = [];
        void Add(string field, CirculationQuantity quantity, Measurement? m, double factor = 1, double extra = 0)
        {
            if (m is not null && list.TrueForAll(seen => seen.Quantity != quantity))
            {
                list.Add(new BedsideObservation(field, quantity, m.Value * factor, double.Hypot(m.Sd * factor, extra)));
            }
        }

        Add("observations.meanArterialPressureMmHg", MeanArterialPressureMmHg, o.MeanArterialPressureMmHg);
        Add("observations.systolicPressureMmHg", SystolicPressureMmHg, o.SystolicPressureMmHg);
        Add("observations.diastolicPressureMmHg", DiastolicPressureMmHg, o.DiastolicPressureMmHg);
        Add("observations.centralVenousPressureMmHg", CentralVenousPressureMmHg, o.CentralVenousPressureMmHg);
        Add("observations.pulmonaryArteryMeanMmHg", PulmonaryArteryMeanMmHg, o.PulmonaryArteryMeanMmHg);
        Add("observations.pulmonaryArterySystolicMmHg", PulmonaryArterySystolicMmHg, o.PulmonaryArterySystolicMmHg);
        Add("observations.pulmonaryArteryDiastolicMmHg", PulmonaryArteryDiastolicMmHg, o.PulmonaryArteryDiastolicMmHg);
        Add("observations.wedgePressureMmHg", WedgePressureMmHg, o.WedgePressureMmHg);
        Add("observations.heartRatePerMin", HeartRatePerMin, o.HeartRatePerMin);
        Add("observations.ejectionFractionPercent", LeftVentricularEjectionFractionPercent, o.EjectionFractionPercent);
        Add("observations.cardiacOutputLPerMin", NativeOutputLPerMin, o.CardiacOutputLPerMin);
        Stroke("observations.outflowVtiCm", o.OutflowVtiCm, file.Heart.LvotDiameterMm, Add);
        Add("observations.aorticValveOpenPercent", AorticValveOpenPercent, o.AorticValveOpenPercent);
        Add("observations.rightArmSaturationPercent", RightArmSaturationPercent, o.RightArmSaturationPercent);
        Add("observations.rightArmPo2MmHg", RightArmPo2MmHg, o.RightArmPo2MmHg);
        Add("observations.rightArmPco2MmHg", RightArmPco2MmHg, o.RightArmPco2MmHg);
        Add("observations.legSaturationPercent", LowerBodySaturationPercent, o.LegSaturationPercent);
        Add("observations.pulmonaryArterySaturationPercent", PulmonaryArterySaturationPercent, o.PulmonaryArterySaturationPercent);
        if (file.Running.Configuration is null)
        {
            Before(file, Add);
            return list;
        }

        Add("observations.preMembraneSaturationPercent", PreMembraneSaturationPercent, o.PreMembraneSaturationPercent);
        Add("observations.postMembraneSaturationPercent", PostMembraneSaturationPercent, o.PostMembraneSaturationPercent);
        Add("observations.inletPressureMmHg", InletPressureMmHg, o.InletPressureMmHg);
        Add("observations.outletPressureMmHg", OutletPressureMmHg, o.OutletPressureMmHg);
        Add("observations.recirculationPercent", RecirculationPercent, o.RecirculationPercent);
        Add("running.flowLPerMin", PumpFlowLPerMin, file.Running.FlowLPerMin);
        if (referenceSpeedPerMin is double reference)
        {
            Add("running.speedPerMin", PumpSpeedRatio, file.Running.SpeedPerMin, 1 / reference);
        }

        return list;
    }

    private static void Before(CaseFile file, Action<string, CirculationQuantity, Measurement?, double, double> add)
    {
        add("heart.meanArterialPressureMmHg", MeanArterialPressureMmHg, file.Heart.MeanArterialPressureMmHg, 1, 0);
        add("heart.centralVenousPressureMmHg", CentralVenousPressureMmHg, file.Heart.CentralVenousPressureMmHg, 1, 0);
        add("heart.ratePerMin", HeartRatePerMin, file.Heart.RatePerMin is { Value: >= 20 } rate ? rate : null, 1, 0);
        add("heart.ejectionFractionPercent", LeftVentricularEjectionFractionPercent, file.Heart.EjectionFractionPercent, 1, 0);
        add("heart.cardiacOutputLPerMin", NativeOutputLPerMin, file.Heart.CardiacOutputLPerMin, 1, 0);
        Stroke("heart.lvotVtiCm", file.Heart.LvotVtiCm, file.Heart.LvotDiameterMm, add);
        add("blood.arterialSaturationPercent", RightArmSaturationPercent, file.Blood.ArterialSaturationPercent, 1, 0);
        add("blood.arterialPo2MmHg", RightArmPo2MmHg, file.Blood.ArterialPo2MmHg, 1, 0);
        add("blood.arterialPco2MmHg", RightArmPco2MmHg, file.Blood.ArterialPco2MmHg, 1, 0);
        add("blood.venousSaturationPercent", VenousSaturationPercent, file.Blood.VenousSaturationPercent, 1, 0);
    }

    /// <summary>With the diameter of the outflow tract the integral is a stroke volume; without it, an integral over the table's outflow.</summary>
    private static void Stroke(string field, Measurement? vti, Measurement? diameter, Action<string, CirculationQuantity, Measurement?, double, double> add)
    {
        if (vti is null || diameter is null)
        {
            add(field, OutflowVelocityTimeIntegralCm, vti, 1, 0);
            return;
        }

        double area = Math.PI / 4 * diameter.Value * diameter.Value / 100;
        add(field, StrokeVolumeMl, vti, area, vti.Value * area * 2 * diameter.Sd / diameter.Value);
    }
}
