using Cavaxis.Anatomy.Body;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Anatomy.Tests.Body;

public class BodyHabitusTests
{
    [Theory]
    [InlineData(-1, 170, 70, "ageYears")]
    [InlineData(111, 170, 70, "ageYears")]
    [InlineData(40, 39, 70, "heightCm")]
    [InlineData(40, 231, 70, "heightCm")]
    [InlineData(40, 170, 1.9, "weightKg")]
    [InlineData(40, 170, double.NaN, "weightKg")]
    [InlineData(40, double.PositiveInfinity, 70, "heightCm")]
    public void A_number_out_of_range_is_refused_with_its_field(double age, double height, double weight, string field)
    {
        InputFaultException thrown = Assert.Throws<InputFaultException>(() => new BodyHabitus(age, Sex.Male, height, weight));

        InputFault fault = Assert.Single(thrown.Faults);
        Assert.Equal(FaultCode.OutOfRange, fault.Code);
        Assert.Equal(field, fault.Field);
    }

    [Fact]
    public void Every_fault_is_told_at_once()
    {
        InputFaultException thrown = Assert.Throws<InputFaultException>(() => new BodyHabitus(-1, (Sex)9, 0, 0));

        Assert.Equal(["ageYears", "heightCm", "weightKg", "sex"], thrown.Faults.Select(fault => fault.Field));
    }

    [Theory]
    [InlineData(180, 3)]
    [InlineData(50, 70)]
    public void Height_and_weight_that_cannot_belong_together_are_a_contradiction(double height, double weight)
    {
        InputFaultException thrown = Assert.Throws<InputFaultException>(() => new BodyHabitus(1, Sex.Male, height, weight));

        Assert.Equal(FaultCode.Contradiction, Assert.Single(thrown.Faults).Code);
    }

    [Theory]
    [InlineData(0, 48, 2.5)]
    [InlineData(110, 230, 350)]
    [InlineData(30, 150, 200)]
    public void The_edges_of_what_is_accepted_are_accepted(double age, double height, double weight)
    {
        BodyHabitus habitus = new(age, Sex.Female, height, weight);

        Assert.Equal((age, height, weight), (habitus.AgeYears, habitus.HeightCm, habitus.WeightKg));
    }
}
