using Cavaxis.Devices.Hydraulics;
using CsCheck;

namespace Cavaxis.Devices.Tests.Hydraulics;

public class TubeFrictionTests
{
    [Theory]
    [InlineData(1)]
    [InlineData(250)]
    [InlineData(2000)]
    public void The_quiet_inlet_is_hagen_poiseuille_up_to_two_thousand(double reynolds) =>
        Assert.Equal(64 / reynolds, TubeFriction.DarcyFactor(reynolds), 1e-12);

    [Theory]
    [InlineData(4000)]
    [InlineData(10_000)]
    [InlineData(50_000)]
    [InlineData(80_000)]
    public void A_smooth_wall_follows_blasius_within_half_a_percent_where_blasius_applies(double reynolds)
    {
        double blasius = 0.3164 * Math.Pow(reynolds, -0.25);
        Assert.InRange(TubeFriction.DarcyFactor(reynolds), blasius * 0.995, blasius * 1.005);
    }

    [Theory]
    [InlineData(1e5, 0.01798977308427384)]
    [InlineData(1e5, 0.018513866077471648, 1e-4)]
    public void Colebrook_agrees_with_a_general_purpose_library(double reynolds, double published, double roughness = 0) =>
        Assert.Equal(published, TubeFriction.Colebrook(reynolds, roughness), 1e-12);

    [Theory]
    [InlineData(4000, 0.001)]
    [InlineData(1e5, 0)]
    [InlineData(1e5, 1e-3)]
    [InlineData(1e6, 0.05)]
    [InlineData(5000, 0.02)]
    public void Colebrook_solves_its_own_equation(double reynolds, double roughness)
    {
        double f = TubeFriction.Colebrook(reynolds, roughness);
        double right = -2 * Math.Log10((roughness / 3.7) + (2.51 / (reynolds * Math.Sqrt(f))));
        Assert.Equal(1 / Math.Sqrt(f), right, 1e-12);
    }

    [Fact]
    public void Rough_walls_follow_colebrook_where_it_exceeds_the_smooth_wall() =>
        Assert.Equal(TubeFriction.Colebrook(1e5, 2e-3), TubeFriction.DarcyFactor(1e5, 2e-3), 1e-15);

    [Fact]
    public void The_pressure_drop_of_the_quiet_inlet_rises_with_flow_through_the_transition() =>
        Gen.Select(Gen.Double[100, 2e5], Gen.Double[1.0001, 1.5], Gen.Double[0, 0.05]).Sample((re, ratio, rough) =>
        {
            double more = re * ratio;
            Assert.True(TubeFriction.DarcyFactor(more, rough) * more * more > TubeFriction.DarcyFactor(re, rough) * re * re);
        });

    [Theory]
    [InlineData(2000)]
    [InlineData(4000)]
    public void The_quiet_inlet_is_continuous_where_its_branches_meet(double reynolds)
    {
        double below = TubeFriction.DarcyFactor(reynolds * (1 - 1e-9));
        Assert.Equal(1, TubeFriction.DarcyFactor(reynolds * (1 + 1e-9)) / below, 1e-7);
    }

    [Fact]
    public void The_factor_of_the_disturbed_inlet_never_rises_with_the_reynolds_number() =>
        Gen.Select(Gen.Double[1, 5e5], Gen.Double[1, 3], Gen.Double[0, 0.05]).Sample((re, ratio, rough) =>
            Assert.True(TubeFriction.DisturbedInlet(re * ratio, rough) <= TubeFriction.DisturbedInlet(re, rough) * (1 + 1e-12)));

    [Theory]
    [InlineData(0)]
    [InlineData(1e-95)]
    [InlineData(1e-6)]
    [InlineData(1e-3)]
    [InlineData(0.05)]
    public void Just_below_the_turbulent_limit_the_disturbed_inlet_is_at_least_the_quiet_one_and_still_falls(double roughness)
    {
        double last = double.PositiveInfinity;
        for (int i = 0; i <= 2400; i++)
        {
            double reynolds = 3800 + (i * 0.1);
            double factor = TubeFriction.DisturbedInlet(reynolds, roughness);
            Assert.True(factor >= TubeFriction.DarcyFactor(reynolds, roughness) * (1 - 1e-12), $"below the quiet inlet at {reynolds}");
            Assert.True(factor <= last * (1 + 1e-12), $"rises at {reynolds}");
            last = factor;
        }
    }

    [Fact]
    public void The_disturbed_inlet_is_never_below_the_quiet_one() =>
        Gen.Select(Gen.Double[1, 5e5], Gen.Double[0, 0.05]).Sample((re, rough) =>
            Assert.True(TubeFriction.DisturbedInlet(re, rough) >= TubeFriction.DarcyFactor(re, rough) * (1 - 1e-12)));

    [Theory]
    [InlineData(0, 0)]
    [InlineData(-5, 0)]
    [InlineData(double.NaN, 0)]
    [InlineData(double.PositiveInfinity, 0)]
    [InlineData(1000, -0.001)]
    [InlineData(1000, double.NaN)]
    [InlineData(1000, 0.06)]
    public void Unusable_arguments_are_refused(double reynolds, double roughness)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => TubeFriction.DarcyFactor(reynolds, roughness));
        Assert.Throws<ArgumentOutOfRangeException>(() => TubeFriction.DisturbedInlet(reynolds, roughness));
        Assert.Throws<ArgumentOutOfRangeException>(() => TubeFriction.Turbulent(reynolds, roughness));
    }
}
