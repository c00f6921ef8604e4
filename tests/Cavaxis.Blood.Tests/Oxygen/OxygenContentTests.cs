using Cavaxis.Blood.Oxygen;
using CsCheck;

namespace Cavaxis.Blood.Tests.Oxygen;

public class OxygenContentTests
{
    private static readonly BloodConstants K = BloodConstants.Default;

    [Fact]
    public void The_content_is_bound_plus_dissolved() =>
        Assert.Equal((1.34 * 15 * 0.975) + (0.0031 * 100), OxygenContent.MlPerDl(15, 0.975, 100, K), 1e-12);

    [Fact]
    public void Content_from_tension_is_content_from_its_saturation() =>
        Gen.Select(BloodGen.Haemoglobin, BloodGen.Po2, BloodGen.Conditions).Sample((hb, po2, c) =>
            Assert.Equal(
                OxygenContent.MlPerDl(hb, OxygenDissociation.SaturationAt(po2, c), po2, K),
                OxygenContent.FromPo2(hb, po2, c, K),
                1e-12));

    [Fact]
    public void Tension_to_content_and_back_is_exact() =>
        Gen.Select(Gen.Double[0.01, 700], Gen.Double[0, 25], BloodGen.Conditions, BloodGen.Constants).Sample((po2, hb, c, k) =>
        {
            double back = OxygenContent.Po2At(OxygenContent.FromPo2(hb, po2, c, k), hb, c, k);
            Assert.InRange(back / po2, 1 - 1e-10, 1 + 1e-10);
        });

    [Fact]
    public void Content_to_tension_and_back_is_exact() =>
        Gen.Select(Gen.Double[0, 1], BloodGen.Haemoglobin, BloodGen.Conditions).Sample((share, hb, c) =>
        {
            double content = share * OxygenContent.FromPo2(hb, 700, c, K);
            double again = OxygenContent.FromPo2(hb, OxygenContent.Po2At(content, hb, c, K), c, K);
            Assert.Equal(content, again, 1e-10);
        });

    [Fact]
    public void Saturation_from_content_is_the_saturation_of_its_tension() =>
        Gen.Select(BloodGen.Po2, BloodGen.Haemoglobin, BloodGen.Conditions).Sample((po2, hb, c) =>
            Assert.Equal(
                OxygenDissociation.SaturationAt(po2, c),
                OxygenContent.SaturationAt(OxygenContent.FromPo2(hb, po2, c, K), hb, c, K),
                1e-10));

    [Fact]
    public void More_haemoglobin_never_lowers_the_oxygen_content() =>
        Gen.Select(Gen.Double[0, 25], Gen.Double[0, 25], BloodGen.Po2, BloodGen.Conditions).Sample((a, b, po2, c) =>
            Assert.True(OxygenContent.FromPo2(Math.Min(a, b), po2, c, K) <= OxygenContent.FromPo2(Math.Max(a, b), po2, c, K)));

    [Fact]
    public void More_tension_never_lowers_the_oxygen_content() =>
        Gen.Select(BloodGen.Po2, BloodGen.Po2, BloodGen.Haemoglobin, BloodGen.Conditions).Sample((a, b, hb, c) =>
            Assert.True(OxygenContent.FromPo2(hb, Math.Min(a, b), c, K) <= OxygenContent.FromPo2(hb, Math.Max(a, b), c, K)));

    [Fact]
    public void Fluid_without_haemoglobin_carries_dissolved_oxygen_alone()
    {
        Assert.Equal(0.31, OxygenContent.FromPo2(0, 100, BloodConditions.Standard, K), 1e-12);
        Assert.Equal(100, OxygenContent.Po2At(0.31, 0, BloodConditions.Standard, K), 1e-9);
    }

    [Fact]
    public void Blood_without_content_is_without_tension() =>
        Assert.Equal(0, OxygenContent.Po2At(0, 15, BloodConditions.Standard, K));

    [Fact]
    public void A_content_that_the_haemoglobin_cannot_carry_is_refused() =>
        Fault.Names("oxygenContentMlPerDl", () => OxygenContent.Po2At(40, 7, BloodConditions.Standard, K));

    [Theory]
    [InlineData(double.NaN, 0.9, 60, "haemoglobinGPerDl")]
    [InlineData(150, 0.9, 60, "haemoglobinGPerDl")]
    [InlineData(-1, 0.9, 60, "haemoglobinGPerDl")]
    [InlineData(15, 90, 60, "saturation")]
    [InlineData(15, double.NaN, 60, "saturation")]
    [InlineData(15, 0.9, -60, "po2MmHg")]
    [InlineData(15, 0.9, double.NaN, "po2MmHg")]
    public void An_input_out_of_range_is_refused_by_name(double hb, double saturation, double po2, string field) =>
        Fault.Names(field, () => OxygenContent.MlPerDl(hb, saturation, po2, K));

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(-0.1)]
    [InlineData(200)]
    public void A_content_out_of_range_is_refused(double content) =>
        Fault.Names("oxygenContentMlPerDl", () => OxygenContent.Po2At(content, 15, BloodConditions.Standard, K));

    [Fact]
    public void The_curve_and_its_inverses_allocate_nothing()
    {
        BloodConditions c = new(7.3, 35);
        double sum = RoundTrip(c);
        long before = GC.GetAllocatedBytesForCurrentThread();
        for (int i = 0; i < 100; i++)
        {
            sum += RoundTrip(c);
        }

        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
        Assert.True(sum > 0);
    }

    [Fact]
    public void Missing_constants_are_refused() =>
        Assert.Throws<ArgumentNullException>(() => OxygenContent.MlPerDl(15, 0.9, 60, null!));

    private static double RoundTrip(in BloodConditions c) =>
        OxygenContent.Po2At(OxygenContent.FromPo2(12, 80, c, K), 12, c, K)
        + OxygenDissociation.Po2At(OxygenDissociation.SaturationAt(50, c), c);
}
