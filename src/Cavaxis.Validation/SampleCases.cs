using Cavaxis.Anatomy.Axis;
using Cavaxis.Anatomy.Body;
using Cavaxis.Devices.Catalogue;
using Cavaxis.Planning.Case;
using Cavaxis.Planning.Information;
using Cavaxis.Planning.Plans;
using Cavaxis.Planning.Rules;
using Cavaxis.Planning.Search;

namespace Cavaxis.Validation;

/// <summary>Invented cases that the planning rows are computed for.</summary>
internal static class SampleCases
{
    private const int Anatomies = 4000;

    /// <summary>A man of average height with a measured output, consumption and haemoglobin and failing lungs.</summary>
    internal static CaseFile LungFailure { get; } = new()
    {
        CavaxisCase = CaseFile.CurrentVersion,
        Title = "Reference rows",
        Invented = true,
        Patient = new PatientSection { AgeYears = 45, Sex = Sex.Male, HeightCm = 172, WeightKg = 71 },
        Support = new SupportSection { Goal = SupportGoal.GasExchange, TargetSaturationPercent = 90 },
        Blood = new BloodSection
        {
            HaemoglobinGPerDl = new Measurement(12, 0.2, true),
            TemperatureC = new Measurement(37, 0.2, true),
            ArterialPh = new Measurement(7.4, 0.01, true),
            ArterialPco2MmHg = new Measurement(40, 1, true),
            OxygenConsumptionMlPerMin = new Measurement(250, 20, true),
        },
        Heart = new HeartSection { CardiacOutputLPerMin = new Measurement(6, 0.5, true) },
    };

    /// <summary>The same man with a failing heart.</summary>
    internal static CaseFile HeartFailure { get; } = LungFailure with
    {
        Support = new SupportSection { Goal = SupportGoal.Circulation, TargetCardiacIndexLPerMinPerM2 = 2.4 },
    };

    /// <summary>Depths from the neck at 165 cm: the population's middle at a low and at a mid-neck entry.</summary>
    internal static IReadOnlyList<double> NeckDepthsMm { get; } = [144, 168];

    /// <summary>
    /// Value of the measurements of the axis, best first, for the dual-lumen device alone in a man of 165 cm whose depth from
    /// the neck was measured at the model's own edge, and whose jugular vein is known to be wide enough.
    /// </summary>
    internal static MeasurementValue[] AxisMeasurements(double neckDepthMm)
    {
        CaseFile known = LungFailure with
        {
            Patient = new PatientSection { AgeYears = 45, Sex = Sex.Male, HeightCm = 165, WeightKg = 65 },
            Axis =
            [
                new AxisEntry
                {
                    Dimension = AxisDimension.RightNeckSkinToScaj,
                    Value = neckDepthMm,
                    Sd = 4,
                    Method = AxisMethod.Ct,
                    SuperiorEdge = JunctionEdge.AppendageBorder,
                },
            ],
            Vessels =
            [
                new VesselEntry
                {
                    Vessel = VesselName.InternalJugularVein,
                    Side = BodySide.Right,
                    DiameterMm = new Measurement(18, 0.7, true),
                    Patency = Patency.Patent,
                    Thrombus = Finding.Absent,
                },
            ],
            DevicesOnHand = [DualLumenByHeight.DeviceId],
        };
        return [.. Plan(known).NextMeasurements.Where(value => value.Dimension < AxisDimension.SvcDiameter)];
    }

    /// <summary>Plans a case with few anatomies and a fixed seed.</summary>
    internal static PlanningResult Plan(CaseFile caseFile) => Planner.Plan(
        caseFile, DeviceCatalogue.BuiltIn, RuleBookReader.BuiltIn, new PlanningOptions { Anatomies = Anatomies, Seed = 1 });
}
