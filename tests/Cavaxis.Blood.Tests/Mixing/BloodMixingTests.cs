using Cavaxis.Blood.Mixing;
using Cavaxis.Blood.Oxygen;
using CsCheck;

namespace Cavaxis.Blood.Tests.Mixing;

public class BloodMixingTests
{
    private static readonly BloodConstants K = BloodConstants.Default;

    private static readonly Gen<BloodFlow[]> Flows =
        (from flow in Gen.Double[0.01, 8]
         from hb in Gen.Double[3, 20]
         from po2 in Gen.Double[5, 600]
         select new BloodFlow(flow, hb, OxygenContent.FromPo2(hb, po2, BloodConditions.Standard, K))).Array[1, 6];

    [Fact]
    public void Mixing_conserves_flow_haemoglobin_and_oxygen() =>
        Flows.Sample(flows =>
        {
            MixedBlood mixed = BloodMixing.Mix(flows, BloodConditions.Standard, K);
            Conserved(flows.Sum(f => f.FlowLPerMin), mixed.FlowLPerMin);
            Conserved(flows.Sum(f => f.FlowLPerMin * f.HaemoglobinGPerDl), mixed.FlowLPerMin * mixed.HaemoglobinGPerDl);
            Conserved(flows.Sum(f => f.FlowLPerMin * f.OxygenContentMlPerDl), mixed.FlowLPerMin * mixed.OxygenContentMlPerDl);
        });

    [Fact]
    public void Saturation_and_tension_of_the_mixture_carry_its_content() =>
        Flows.Sample(flows =>
        {
            MixedBlood mixed = BloodMixing.Mix(flows, BloodConditions.Standard, K);
            Assert.Equal(
                mixed.OxygenContentMlPerDl,
                OxygenContent.MlPerDl(mixed.HaemoglobinGPerDl, mixed.Saturation, mixed.Po2MmHg, K),
                1e-10);
        });

    [Fact]
    public void The_mixture_lies_between_its_streams() =>
        Flows.Sample(flows => Assert.InRange(
            BloodMixing.Mix(flows, BloodConditions.Standard, K).OxygenContentMlPerDl,
            flows.Min(f => f.OxygenContentMlPerDl) - 1e-9,
            flows.Max(f => f.OxygenContentMlPerDl) + 1e-9));

    [Fact]
    public void The_order_of_streams_does_not_matter() =>
        Flows.Sample(flows => Assert.Equal(
            BloodMixing.Mix(flows, BloodConditions.Standard, K).Po2MmHg,
            BloodMixing.Mix([.. flows.Reverse()], BloodConditions.Standard, K).Po2MmHg,
            1e-8));

    [Fact]
    public void One_stream_stays_what_it_was()
    {
        double content = OxygenContent.FromPo2(12, 45, BloodConditions.Standard, K);
        MixedBlood mixed = BloodMixing.Mix([new BloodFlow(4, 12, content)], BloodConditions.Standard, K);
        Assert.Equal(45, mixed.Po2MmHg, 1e-9);
    }

    [Fact]
    public void The_tension_of_a_mixture_is_not_the_mean_of_the_tensions()
    {
        double rich = OxygenContent.FromPo2(12, 500, BloodConditions.Standard, K);
        double poor = OxygenContent.FromPo2(12, 35, BloodConditions.Standard, K);
        MixedBlood mixed = BloodMixing.Mix(
            [new BloodFlow(2, 12, rich), new BloodFlow(2, 12, poor)], BloodConditions.Standard, K);
        Assert.InRange(mixed.Po2MmHg, 35, 100);
    }

    [Fact]
    public void Nothing_that_flows_is_refused()
    {
        Fault.Names("streams", () => BloodMixing.Mix([], BloodConditions.Standard, K));
        Fault.Names("streams", () => BloodMixing.Mix([default], BloodConditions.Standard, K));
    }

    [Theory]
    [InlineData(double.NaN, 12, 15, "flowLPerMin")]
    [InlineData(-1, 12, 15, "flowLPerMin")]
    [InlineData(4, 120, 15, "haemoglobinGPerDl")]
    [InlineData(4, 12, double.NaN, "oxygenContentMlPerDl")]
    [InlineData(4, 12, -1, "oxygenContentMlPerDl")]
    public void A_stream_out_of_range_is_refused_by_name(double flow, double hb, double content, string field) =>
        Fault.Names(field, () => _ = new BloodFlow(flow, hb, content));

    private static void Conserved(double before, double after) =>
        Assert.InRange(after, before * (1 - 1e-12), before * (1 + 1e-12));
}
