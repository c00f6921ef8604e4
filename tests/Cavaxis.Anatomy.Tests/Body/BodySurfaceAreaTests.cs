using Cavaxis.Anatomy.Body;
using CsCheck;

namespace Cavaxis.Anatomy.Tests.Body;

public class BodySurfaceAreaTests
{
    [Fact]
    public void Mosteller_gives_two_square_metres_for_180_cm_and_80_kg()
    {
        // √(180 × 80 / 3600) = √4, exactly.
        Assert.Equal(2.0, BodySurfaceArea.Mosteller(180, 80), 1e-12);
    }

    [Fact]
    public void The_three_formulas_agree_within_a_tenth_for_ordinary_adults()
    {
        Gen.Select(Gen.Double[150, 195], Gen.Double[19, 32]).Sample((height, index) =>
        {
            double weight = index * height * height * 1e-4;
            double middle = BodySurfaceArea.Mosteller(height, weight);
            Assert.InRange(BodySurfaceArea.DuBois(height, weight) / middle, 0.9, 1.1);
            Assert.InRange(BodySurfaceArea.Haycock(height, weight) / middle, 0.9, 1.1);
        });
    }

    [Fact]
    public void More_height_or_weight_never_lowers_the_area()
    {
        Gen.Select(Gen.Double[40, 229], Gen.Double[2, 349], Gen.Double[0, 1]).Sample((height, weight, more) =>
        {
            foreach (Func<double, double, double> formula in new Func<double, double, double>[]
                { BodySurfaceArea.DuBois, BodySurfaceArea.Mosteller, BodySurfaceArea.Haycock })
            {
                Assert.True(formula(height + more, weight) >= formula(height, weight));
                Assert.True(formula(height, weight + more) >= formula(height, weight));
            }
        });
    }

    [Theory]
    [InlineData(17.9, BsaFormula.Haycock)]
    [InlineData(18, BsaFormula.Mosteller)]
    public void The_formula_goes_with_the_age(double age, BsaFormula expected)
    {
        BodyHabitus habitus = new(age, Sex.Male, 170, 60);

        Assert.Equal(expected, BodySurfaceArea.FormulaFor(habitus));
        Assert.Equal(BodySurfaceArea.M2(habitus, expected), BodySurfaceArea.M2(habitus));
    }

    [Fact]
    public void A_formula_that_is_none_is_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => BodySurfaceArea.M2(Bodies.Adult, (BsaFormula)7));
}
