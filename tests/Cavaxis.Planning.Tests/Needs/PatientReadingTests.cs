using Cavaxis.Planning.Case;
using Cavaxis.Planning.Needs;
using Cavaxis.Quantities;

namespace Cavaxis.Planning.Tests.Needs;

public class PatientReadingTests
{
    [Fact]
    public void Everything_the_case_does_not_give_is_listed_with_what_is_used_instead()
    {
        PatientReading reading = new(Cases.Bare);
        string[] expected =
        [
            "blood.haemoglobinGPerDl", "blood.temperatureC", "blood.oxygenConsumptionMlPerMin", "heart.cardiacOutputLPerMin",
            "heart.meanArterialPressureMmHg", "heart.centralVenousPressureMmHg", "support.goal", "vessels", "axis", "blood.arterialPh",
        ];
        Assert.Equal(expected.Order(StringComparer.Ordinal), reading.Missing.Select(missing => missing.Field).Order(StringComparer.Ordinal));
        Assert.All(reading.Missing, missing => Assert.True(missing.UsedInstead.Length > 0 && missing.Matters.Length > 0));
        Assert.Equal(Origin.Estimated, reading.Picture.HaemoglobinGPerDl.Origin);
        Assert.False(reading.CardiacOutputKnown);
    }

    [Fact]
    public void What_the_case_gives_is_measured_and_not_listed()
    {
        PatientReading reading = new(Cases.Bare with { Blood = new BloodSection { HaemoglobinGPerDl = Cases.Measured(8.8, 0.3) } });
        Assert.Equal(Origin.Measured, reading.Picture.HaemoglobinGPerDl.Origin);
        Assert.Equal(8.8, reading.Picture.HaemoglobinGPerDl.Value);
        Assert.DoesNotContain(reading.Missing, missing => missing.Field == "blood.haemoglobinGPerDl");
    }

    [Fact]
    public void Output_follows_from_the_outflow_tract_by_hand()
    {
        // 20 mm: π/4 · 4 cm² = 3.1416 cm²; times 20 cm = 62.83 mL; times 80 = 5.0265 L/min.
        PatientReading reading = new(Cases.Bare with
        {
            Heart = new HeartSection
            {
                LvotDiameterMm = Cases.Measured(20, 1),
                LvotVtiCm = Cases.Measured(20, 1),
                RatePerMin = Cases.Measured(80, 2),
            },
        });
        Estimate output = reading.Picture.CardiacOutputLPerMin;
        Assert.Equal(5.0265, output.Value, 4);
        Assert.Equal(5.0265 * Math.Sqrt((0.1 * 0.1) + (0.05 * 0.05) + (0.025 * 0.025)), output.Sd, 3);
        Assert.Equal(Origin.Calculated, output.Origin);
        Assert.True(reading.CardiacOutputKnown);
    }

    [Fact]
    public void A_warmer_patient_consumes_more_and_has_thinner_blood()
    {
        PatientReading cool = At(35);
        PatientReading warm = At(39);
        Assert.True(warm.Picture.OxygenConsumptionMlPerMin.Value > cool.Picture.OxygenConsumptionMlPerMin.Value);
        Assert.True(warm.Picture.BloodViscosityMPaS.Value < cool.Picture.BloodViscosityMPaS.Value);
    }

    private static PatientReading At(double celsius) =>
        new(Cases.Bare with { Blood = new BloodSection { TemperatureC = Cases.Measured(celsius, 0.2) } });
}
