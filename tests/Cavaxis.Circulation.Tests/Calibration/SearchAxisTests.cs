using Cavaxis.Circulation.Calibration;
using Cavaxis.Circulation.Parameters;
using Cavaxis.Quantities.Faults;
using CsCheck;

namespace Cavaxis.Circulation.Tests.Calibration;

public class SearchAxisTests
{
    public static TheoryData<CirculationParameter> Fittable => [.. PriorTable.All.Select(static p => p.Parameter)];

    [Theory]
    [MemberData(nameof(Fittable))]
    public void The_place_of_a_value_leads_back_to_the_value(CirculationParameter parameter)
    {
        SearchAxis axis = new(PriorTable.Of(parameter), CirculationParameters.Adult.With(CirculationParameter.ShuntFraction, 0.4)[parameter], false);
        Gen.Double[-4, 4].Sample(place => Assert.Equal(place, axis.PlaceOf(axis.ValueAt(place)), 0.02), iter: 200);
    }

    [Theory]
    [MemberData(nameof(Fittable))]
    public void No_place_leaves_the_range_of_the_model(CirculationParameter parameter)
    {
        CirculationParameters prior = CirculationParameters.Adult.With(CirculationParameter.CircuitOn, 1);
        SearchSpace space = new(prior, [], new CalibrationOptions { Fitted = [parameter] });
        (double low, double high) = ParameterTable.Bounds(parameter, prior.MassKg);
        Gen.Double[-50, 50].Sample(place => Assert.InRange(space.At([place])[parameter], low, high), iter: 200);
    }

    [Fact]
    public void A_logit_is_that_of_the_textbook()
    {
        // Odds of 0.4 are 2/3; one standard deviation of one multiplies odds by e: 1.8122/(1 + 1.8122).
        SearchAxis axis = new(PriorTable.Of(CirculationParameter.ShuntFraction), 0.4, false);
        Assert.Equal(2.0 / 3 * Math.E / (1 + (2.0 / 3 * Math.E)), axis.ValueAt(1), 1e-12);
    }

    [Fact]
    public void Followers_move_by_the_same_factor()
    {
        CirculationParameters prior = CirculationParameters.Adult;
        SearchSpace space = new(prior, [], new CalibrationOptions { Fitted = [CirculationParameter.DescendingComplianceMlPerMmHg] });
        CirculationParameters moved = space.At([1.3]);
        double factor = moved[CirculationParameter.DescendingComplianceMlPerMmHg] / prior[CirculationParameter.DescendingComplianceMlPerMmHg];
        Assert.True(factor > 1.2);
        foreach (CirculationParameter follower in PriorTable.Of(CirculationParameter.DescendingComplianceMlPerMmHg).Followers)
        {
            Assert.Equal(factor, moved[follower] / prior[follower], 1e-12);
        }
    }

    [Fact]
    public void A_parameter_outside_the_list_is_refused() => Assert.Equal(
        FaultCode.NotAChoice,
        Assert.Throws<InputFaultException>(static () => PriorTable.Of(CirculationParameter.CircuitOn)).Faults[0].Code);

    [Fact]
    public void What_cannot_make_a_difference_is_not_fitted()
    {
        static CirculationParameter[] Fitted(CirculationParameters patient, bool haemoglobin) =>
            [.. PriorTable.For(patient, haemoglobin).Select(static p => p.Parameter)];
        CirculationParameters adult = CirculationParameters.Adult;
        CirculationParameters circuit = adult.With(CirculationParameter.CircuitOn, 1);
        Assert.DoesNotContain(CirculationParameter.DrainageQuadraticMmHgPerLPerMin2, Fitted(adult, false));
        Assert.DoesNotContain(CirculationParameter.JetMixing, Fitted(circuit.With(CirculationParameter.ArterialShareOfReturn, 1), false));
        Assert.Contains(CirculationParameter.JetMixing, Fitted(circuit, false));
        Assert.DoesNotContain(CirculationParameter.HaemoglobinGPerDl, Fitted(circuit, false));
        Assert.Contains(CirculationParameter.HaemoglobinGPerDl, Fitted(circuit, true));
    }
}
