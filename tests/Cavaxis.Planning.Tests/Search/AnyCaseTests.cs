using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using Cavaxis.Anatomy.Axis;
using Cavaxis.Anatomy.Body;
using Cavaxis.Devices.Catalogue;
using Cavaxis.Planning.Case;
using Cavaxis.Planning.Json;
using Cavaxis.Planning.Plans;
using Cavaxis.Planning.Rules;
using Cavaxis.Planning.Search;
using Cavaxis.Quantities.Faults;
using CsCheck;

namespace Cavaxis.Planning.Tests.Search;

/// <summary>
/// Whatever the case reader accepts must be planned: no exception, no NaN, from newborns to giants and at the ends of every
/// accepted range.
/// </summary>
public class AnyCaseTests
{
    private const int Iterations = 60;

    /// <summary>An end of the range as often as something inside it.</summary>
    private static Gen<double> Within(double low, double high) =>
        Gen.Frequency((1, Gen.Const(low)), (1, Gen.Const(high)), (4, Gen.Double[low, high]));

    private static Gen<T> OneOf<T>(params T[] values) => Gen.Int[0, values.Length - 1].Select(i => values[i]);

    private static Gen<Measurement?> Maybe(double low, double high) =>
        from value in Within(low, high)
        from share in OneOf(0.0, 0.001, 0.02, 0.1)
        from given in Gen.Bool
        select given ? new Measurement(value, share * (high - low), true) : null;

    private static readonly Gen<PatientSection> Patients =
        from band in OneOf((Age: 0.1, Low: 48.0, High: 60.0), (1.5, 75, 88), (6, 105, 125), (14, 145, 180), (40, 145, 215), (80, 145, 195))
        from height in Within(band.Low, band.High)
        from index in Within(13, 55)
        from sex in Gen.Enum<Sex>()
        select new PatientSection
        {
            AgeYears = band.Age,
            Sex = sex,
            HeightCm = height,
            WeightKg = (band.Age < 5 ? Math.Min(index, 25) : index) * height * height * 1e-4,
        };

    private static readonly Gen<BloodSection> Bloods =
        from haemoglobin in Maybe(3, 24)
        from temperature in Maybe(20, 42)
        from ph in Maybe(6.5, 7.9)
        from pco2 in Maybe(8, 200)
        from saturation in Maybe(10, 100)
        from consumption in Maybe(5, 800)
        select new BloodSection
        {
            HaemoglobinGPerDl = haemoglobin,
            TemperatureC = temperature,
            ArterialPh = ph,
            ArterialPco2MmHg = pco2,
            ArterialSaturationPercent = saturation,
            OxygenConsumptionMlPerMin = consumption,
        };

    private static readonly Gen<HeartSection> Hearts =
        from output in Maybe(0, 20)
        from lvot in Maybe(4, 40)
        from vti in Maybe(0, 50)
        from rate in Maybe(0, 300)
        from map in Maybe(5, 200)
        from cvp in Maybe(-5, 50)
        from regurgitation in Gen.Enum<Severity>()
        select new HeartSection
        {
            CardiacOutputLPerMin = output,
            LvotDiameterMm = lvot,
            LvotVtiCm = vti,
            RatePerMin = rate,
            MeanArterialPressureMmHg = map,
            CentralVenousPressureMmHg = cvp,
            AorticRegurgitation = regurgitation,
        };

    private static readonly Gen<SupportSection> Supports =
        from goal in Gen.Enum<SupportGoal>()
        from goalKnown in Gen.Bool
        from saturation in Within(75, 99)
        from index in Within(1, 5)
        from flow in Within(0.1, 8)
        from given in Gen.Bool.Array[3]
        select new SupportSection
        {
            Goal = goalKnown ? goal : null,
            TargetSaturationPercent = given[0] ? saturation : null,
            TargetCardiacIndexLPerMinPerM2 = given[1] ? index : null,
            FlowLPerMin = given[2] ? flow : null,
        };

    private static readonly Gen<AxisEntry> AxisEntries =
        from dimension in Gen.Enum<AxisDimension>()
        from place in Within(0, 1)
        from method in Gen.Enum<AxisMethod>()
        from sd in OneOf<double?>(null, 0, 0.01, 5)
        select Entry(dimension, place, method, sd);

    private static readonly Gen<VesselEntry> Vessels =
        from vessel in Gen.Enum<VesselName>()
        from side in Gen.Enum<BodySide>()
        from diameter in Maybe(0.5, 45)
        from patency in Gen.Enum<Patency>()
        from thrombus in Gen.Enum<Finding>()
        select new VesselEntry { Vessel = vessel, Side = side, DiameterMm = diameter, Patency = patency, Thrombus = thrombus };

    private static readonly Gen<CaseFile> AnyCase =
        from patient in Patients
        from blood in Bloods
        from heart in Hearts
        from support in Supports
        from axis in AxisEntries.Array[0, 4]
        from vessels in Vessels.Array[0, 5]
        from outside in Maybe(0, 150)
        from neck in Gen.Enum<NeckEntryHeight>()
        select new CaseFile
        {
            CavaxisCase = 1,
            Patient = patient,
            Blood = blood,
            Heart = heart,
            Support = support,
            Axis = [.. axis.DistinctBy(entry => entry.Dimension)],
            Vessels = [.. vessels.DistinctBy(entry => (entry.Vessel, entry.Side))],
            Access = new AccessSection { NeckEntry = neck, LengthOutsideMm = outside },
        };

    [Fact]
    public void Whatever_the_reader_accepts_is_planned_without_an_exception_or_a_NaN()
    {
        int accepted = 0;
        AnyCase.Sample(
            drawn =>
            {
                if (AsRead(drawn) is not CaseFile file)
                {
                    return true;
                }

                accepted++;
                PlanningResult result = Planner.Plan(
                    file, DeviceCatalogue.BuiltIn, RuleBookReader.BuiltIn,
                    new PlanningOptions { Anatomies = PlanningOptions.FewestAnatomies, PlansPerConfiguration = 1 });

                // The writer refuses NaN and infinity, so that writing is the check.
                return JsonSerializer.SerializeToUtf8Bytes(result, CavaxisJson.Options).Length > 0
                    && result.Plans.Count + result.NotPlanned.Count == 7
                    && result.Plans.All(plan => plan.ProbabilityAllPortsInZone is >= 0 and <= 1 && plan.Circuit.FlowLPerMin > 0);
            },
            iter: Iterations,
            threads: 1,
            print: file => Text(file).ToJsonString());
        Assert.True(accepted > Iterations / 4, $"The reader accepted only {accepted} of {Iterations} cases: the test says little.");
    }

    private static CaseFile? AsRead(CaseFile drawn)
    {
        try
        {
            return CaseFileReader.Read(Encoding.UTF8.GetBytes(Text(drawn).ToJsonString()));
        }
        catch (InputFaultException)
        {
            return null;
        }
    }

    /// <summary>The case as a person would write it: without nulls and without what the reader adds.</summary>
    private static JsonNode Text(CaseFile file)
    {
        JsonNode root = JsonSerializer.SerializeToNode(file, CavaxisJson.Options)!;
        Strip(root);
        return root;
    }

    private static void Strip(JsonNode? node)
    {
        if (node is JsonObject fields)
        {
            foreach (string name in fields.Where(f => f.Value is null || f.Key == "sdGiven").Select(f => f.Key).ToArray())
            {
                fields.Remove(name);
            }
        }

        foreach (JsonNode? child in node switch
        {
            JsonObject o => o.Select(f => f.Value).ToArray(),
            JsonArray a => [.. a],
            _ => [],
        })
        {
            Strip(child);
        }
    }

    private static AxisEntry Entry(AxisDimension dimension, double place, AxisMethod method, double? sd)
    {
        AxisRange range = AxisRange.Of(dimension);
        double value = double.Lerp(range.Low, range.High, place);
        return new AxisEntry
        {
            Dimension = dimension,
            Value = value,
            Sd = range.IsPositive && sd > value ? value : sd,
            Method = method,
        };
    }
}
