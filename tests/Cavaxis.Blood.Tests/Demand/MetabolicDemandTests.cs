using Cavaxis.Blood.Demand;
using Cavaxis.Quantities;
using CsCheck;

namespace Cavaxis.Blood.Tests.Demand;

public class MetabolicDemandTests
{
    private static readonly Gen<(double Age, double Surface, double Weight, double Temperature)> Person =
        Gen.Select(Gen.Double[0, 100], Gen.Double[0.15, 2.8], Gen.Double[0.5, 200], Gen.Double[18, 42]);

    [Fact]
    public void An_adult_is_estimated_from_body_surface() =>
        Assert.Equal(228, MetabolicDemand.Estimate(50, 1.9, 80, 37).OxygenConsumptionMlPerMin.Value, 1e-9);

    [Fact]
    public void A_newborn_is_estimated_from_weight() =>
        Assert.Equal(19.25, MetabolicDemand.Estimate(0, 0.22, 3.5, 37).OxygenConsumptionMlPerMin.Value, 1e-9);

    [Fact]
    public void The_interval_holds_the_value_and_stays_above_nothing() =>
        Person.Sample(p =>
        {
            MetabolicDemand demand = MetabolicDemand.Estimate(p.Age, p.Surface, p.Weight, p.Temperature);
            foreach (Estimate e in new[] { demand.OxygenConsumptionMlPerMin, demand.CarbonDioxideProductionMlPerMin })
            {
                Assert.True(0 < e.Low && e.Low < e.Value && e.Value < e.High);
                Assert.Equal(Origin.Estimated, e.Origin);
            }
        });

    [Fact]
    public void Fever_raises_and_cold_lowers_the_consumption() =>
        Person.Sample(p => Assert.True(
            MetabolicDemand.Estimate(p.Age, p.Surface, p.Weight, p.Temperature + 0.5).OxygenConsumptionMlPerMin.Value
            > MetabolicDemand.Estimate(p.Age, p.Surface, p.Weight, p.Temperature).OxygenConsumptionMlPerMin.Value));

    [Fact]
    public void The_further_from_normal_temperature_the_wider_the_estimate()
    {
        Estimate normal = MetabolicDemand.Estimate(50, 1.9, 80, 37).OxygenConsumptionMlPerMin;
        Estimate cold = MetabolicDemand.Estimate(50, 1.9, 80, 32).OxygenConsumptionMlPerMin;
        Assert.True(cold.Sd / cold.Value > normal.Sd / normal.Value);
    }

    [Fact]
    public void A_birthday_never_makes_the_consumption_jump() =>
        Gen.Double[0, 30].Sample(age => Assert.Equal(
            MetabolicDemand.Estimate(age, 1.1, 34, 37).OxygenConsumptionMlPerMin.Value,
            MetabolicDemand.Estimate(age + 0.001, 1.1, 34, 37).OxygenConsumptionMlPerMin.Value,
            0.05));

    [Fact]
    public void Every_estimate_carries_its_sources() =>
        Assert.NotEmpty(MetabolicDemand.Estimate(50, 1.9, 80, 37).Sources);

    [Theory]
    [InlineData(double.NaN, 1.9, 80, 37, "ageYears")]
    [InlineData(-1, 1.9, 80, 37, "ageYears")]
    [InlineData(50, 19, 80, 37, "bodySurfaceAreaM2")]
    [InlineData(50, double.NaN, 80, 37, "bodySurfaceAreaM2")]
    [InlineData(50, 1.9, 8000, 37, "weightKg")]
    [InlineData(50, 1.9, double.NegativeInfinity, 37, "weightKg")]
    [InlineData(50, 1.9, 80, 98.6, "temperatureC")]
    [InlineData(50, 1.9, 80, double.NaN, "temperatureC")]
    public void An_input_out_of_range_is_refused_by_name(
        double age, double surface, double weight, double temperature, string field) =>
        Fault.Names(field, () => MetabolicDemand.Estimate(age, surface, weight, temperature));
}
