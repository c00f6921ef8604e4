using Cavaxis.Anatomy.Body;
using Cavaxis.Blood.CarbonDioxide;
using Cavaxis.Blood.Oxygen;
using Cavaxis.Circulation.Calibration;
using Cavaxis.Circulation.Parameters;
using Cavaxis.Devices.Catalogue;
using Cavaxis.Planning.Case;
using Cavaxis.Planning.Configurations;
using Cavaxis.Planning.Running;
using Cavaxis.Quantities;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Planning.Tests.Running;

public class CirculationFromCaseTests
{
    // Nadler's equation by hand: 0.3669·1.8³ + 0.03219·80 + 0.6041 and 0.3561·1.65³ + 0.03308·60 + 0.1833 litres.
    [Theory]
    [InlineData(Sex.Male, 180, 80, 5319.1)]
    [InlineData(Sex.Female, 165, 60, 3767.7)]
    public void Blood_volume_of_an_adult_is_that_of_the_equation(Sex sex, double height, double weight, double volume)
    {
        CaseFile file = Cases.Bare with { Patient = new PatientSection { AgeYears = 40, Sex = sex, HeightCm = height, WeightKg = weight } };
        Assert.Equal(volume, Read(file).Parameters[CirculationParameter.BloodVolumeMl], 1.0);
    }

    [Theory]
    [InlineData(40)]
    [InlineData(10)]
    public void Twice_the_weight_at_one_height_is_less_than_twice_the_blood(double age)
    {
        double Mass(double weight) => CirculatoryMass.Kg(new BodyHabitus(age, Sex.Male, 170, weight));
        Assert.InRange(Mass(140) / Mass(70), 1.1, 1.7);
    }

    [Theory]
    [InlineData(14, 0)]
    [InlineData(8, -12)]
    [InlineData(10, 8)]
    public void The_carbon_dioxide_curve_follows_the_contents_between_the_points_of_its_fit(double haemoglobin, double excess)
    {
        CarbonDioxideFit fit = CarbonDioxideCurve.Fit(haemoglobin, excess);
        Assert.InRange(fit.LargestErrorMlPerDl, 0, 2.5);
        foreach ((double pco2, double saturation) in new[] { (42.5, 0.95), (57.5, 0.55), (33.0, 0.75) })
        {
            double pH = BaseExcess.PhAt(pco2, excess, haemoglobin, saturation);
            double content = CarbonDioxideContent.MlPerDl(pco2, pH, haemoglobin, saturation, 37);
            double fitted = 100 * fit.Scale * Math.Pow(pco2, fit.Exponent) * (1 + (fit.Haldane * (1 - saturation)));
            Assert.Equal(content, fitted, fit.LargestErrorMlPerDl + 0.05);
        }
    }

    [Fact]
    public void A_drop_of_two_parts_is_found_again()
    {
        DropFit fit = DropFit.Of(static q => (3 * q) + (2 * q * q), 0.5, 6);
        Assert.Equal((3, 2, 0), (fit.LinearMmHgPerLPerMin, fit.QuadraticMmHgPerLPerMin2, fit.LargestErrorMmHg), Close);
    }

    [Fact]
    public void Warm_acid_blood_has_the_same_saturation_at_the_shifted_tension()
    {
        CaseFile file = Cases.Bare with
        {
            Blood = new BloodSection { TemperatureC = Given(39), ArterialPh = Given(7.2), ArterialPco2MmHg = Given(60), ArterialSaturationPercent = Given(85) },
        };
        double factor = Read(file).Parameters[CirculationParameter.VirtualPo2Factor];
        BloodConditions warm = new(7.2, 39, BloodConditions.StandardDpgMmolPerL, 60);
        Assert.Equal(OxygenDissociation.SaturationAt(55, warm), OxygenDissociation.SaturationAt(55 * factor, BloodConditions.Standard), 1e-9);
        Assert.True(factor < 1);
    }

    [Fact]
    public void What_the_case_does_not_say_is_listed_and_what_it_says_is_not()
    {
        CirculationSetup bare = Read(Cases.Bare);
        string[] listed = [.. bare.Assumed.Select(static a => a.Field)];
        Assert.Contains("blood.haemoglobinGPerDl", listed);
        Assert.Contains("heart.ejectionFractionPercent", listed);
        Assert.Contains("ventilation.mode", listed);
        Assert.Empty(bare.Observations);
        CirculationSetup full = Read(Cases.Demo("running-veno-venous"));
        string[] remaining = [.. full.Assumed.Select(static a => a.Field)];
        Assert.DoesNotContain("blood.haemoglobinGPerDl", remaining);
        Assert.DoesNotContain("heart.ejectionFractionPercent", remaining);
        Assert.DoesNotContain("ventilation.mode", remaining);
        Assert.Equal(Origin.Measured, full.Origins[CirculationParameter.HaemoglobinGPerDl]);
    }

    [Fact]
    public void With_support_running_only_the_observations_are_readings()
    {
        CirculationSetup before = Read(Cases.Demo("tall-man-severe-lung-failure"));
        Assert.Contains(before.Observations, static r => r.Field == "blood.arterialSaturationPercent");
        CirculationSetup running = Read(Cases.Demo("running-veno-venous"));
        Assert.DoesNotContain(running.Observations, static r => r.Field.StartsWith("blood.", StringComparison.Ordinal) || r.Field.StartsWith("heart.", StringComparison.Ordinal));
        Assert.Contains(running.Observations, static r => r.Observation.Kind == ObservationKind.InletPressureMmHg);
        Assert.Equal(1, running.Parameters[CirculationParameter.CircuitOn]);
        Assert.Equal(0, running.Parameters[CirculationParameter.ArterialShareOfReturn]);
    }

    [Fact]
    public void Return_to_an_artery_is_told_apart_by_its_site()
    {
        double Ascending(RunningConfiguration configuration) => Read(Cases.Bare with
        {
            Running = new RunningSection { Configuration = configuration, FlowLPerMin = Given(4) },
        }).Parameters[CirculationParameter.AscendingShareOfArterialReturn];
        Assert.Equal(0, Ascending(RunningConfiguration.VaFemoral));
        Assert.Equal(1, Ascending(RunningConfiguration.VaAxillary));
    }

    [Fact]
    public void A_speed_without_a_flow_keeps_the_speed()
    {
        CirculationSetup setup = Read(Cases.Bare with { Running = new RunningSection { Configuration = RunningConfiguration.VaFemoral, SpeedPerMin = Given(3000) } });
        Assert.Equal(0, setup.Parameters[CirculationParameter.FlowControlPerS]);
        Assert.Equal(3000 / setup.Circuit!.PumpReferenceSpeedPerMin, setup.Parameters[CirculationParameter.PumpSpeedRatio], 1e-12);
    }

    [Fact]
    public void Two_drainage_cannulae_cost_less_than_one()
    {
        RunningCannula one = new() { Role = CannulaRole.Drainage, Device = "drain-multi-21fr-55cm" };
        double Cost(params RunningCannula[] cannulae)
        {
            DropFit drop = Read(Cases.Bare with
            {
                Running = new RunningSection { Configuration = RunningConfiguration.VaFemoral, FlowLPerMin = Given(4), Cannulae = cannulae },
            }).Circuit!.Drainage;
            return (4 * drop.LinearMmHgPerLPerMin) + (16 * drop.QuadraticMmHgPerLPerMin2);
        }

        Assert.True(Cost(one, one) < 0.5 * Cost(one));
    }

    [Theory]
    [InlineData(CannulaRole.Drainage, "no-such-device", FaultCode.NotFound)]
    [InlineData(CannulaRole.Drainage, "return-arterial-19fr-16cm", FaultCode.Contradiction)]
    [InlineData(CannulaRole.ArterialReturn, "drain-multi-21fr-55cm", FaultCode.Contradiction)]
    public void A_device_that_cannot_do_it_is_refused_with_its_place(CannulaRole role, string device, FaultCode code)
    {
        CaseFile file = Cases.Bare with
        {
            Running = new RunningSection { Configuration = RunningConfiguration.VaFemoral, Cannulae = [new RunningCannula { Role = role, Device = device }] },
        };
        InputFault fault = Assert.Single(Assert.Throws<InputFaultException>(() => Read(file)).Faults);
        Assert.Equal((code, "running.cannulae[0].device"), (fault.Code, fault.Field));
    }

    [Fact]
    public void Beyond_the_range_of_the_model_the_field_of_the_case_is_named()
    {
        CaseFile file = Cases.Bare with { Heart = new HeartSection { RatePerMin = Given(299) } };
        InputFault fault = Assert.Single(Assert.Throws<InputFaultException>(() => Read(file)).Faults);
        Assert.Equal((FaultCode.OutOfRange, "heart.ratePerMin"), (fault.Code, fault.Field));
    }

    private static CirculationSetup Read(CaseFile file) => CirculationFromCase.Read(file, DeviceCatalogue.BuiltIn);

    private static Measurement Given(double value) => new(value, 0, true);

    private static bool Close((double A, double B, double C) x, (double A, double B, double C) y) =>
        Math.Abs(x.A - y.A) < 1e-9 && Math.Abs(x.B - y.B) < 1e-9 && Math.Abs(x.C - y.C) < 1e-9;
}
