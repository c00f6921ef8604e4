using Cavaxis.Blood.Demand;
using CsCheck;

namespace Cavaxis.Blood.Tests.Demand;

public class VenoVenousSupportTests
{
    private static readonly Gen<(double Share, double Output, double Post, double Consumption)> Case =
        Gen.Select(Gen.Double[0.05, 1], Gen.Double[2, 12], Gen.Double[8, 28], Gen.Double[80, 400]);

    [Fact]
    public void Oxygen_given_by_both_lungs_is_the_oxygen_consumed() =>
        Gen.Select(Case, Gen.Double[0, 1]).Sample((x, native) =>
        {
            double effective = x.Share * x.Output;
            double uptake = native * x.Consumption;
            OxygenBalance b = VenoVenousSupport.Balance(effective, x.Output, x.Post, x.Consumption, uptake);
            Assert.Equal(x.Consumption, (10 * effective * (x.Post - b.VenousContentMlPerDl)) + uptake, 1e-8);
        });

    [Fact]
    public void The_closed_form_is_where_going_round_the_circulation_settles() =>
        Gen.Select(Case, Gen.Double[0.2, 0.95], Gen.Double[8, 25]).Sample((x, shunt, capillary) =>
        {
            double arterial = 10;
            for (int round = 0; round < 4000; round++)
            {
                double venous = arterial - (x.Consumption / (10 * x.Output));
                double pulmonary = (x.Share * x.Post) + ((1 - x.Share) * venous);
                arterial = ((1 - shunt) * capillary) + (shunt * pulmonary);
            }

            OxygenBalance b = VenoVenousSupport.BalanceWithShunt(
                x.Share * x.Output, x.Output, x.Post, x.Consumption, shunt, capillary);
            Assert.Equal(arterial, b.ArterialContentMlPerDl, 1e-8);
        });

    [Fact]
    public void A_lung_of_full_shunt_is_a_lung_without_uptake() =>
        Case.Sample(x => Assert.Equal(
            VenoVenousSupport.Balance(x.Share * x.Output, x.Output, x.Post, x.Consumption).ArterialContentMlPerDl,
            VenoVenousSupport.BalanceWithShunt(x.Share * x.Output, x.Output, x.Post, x.Consumption, 1, 20).ArterialContentMlPerDl,
            1e-8));

    [Fact]
    public void A_lung_without_shunt_gives_its_own_content_whatever_the_pump_does() =>
        Case.Sample(x => Assert.Equal(
            20,
            VenoVenousSupport.BalanceWithShunt(x.Share * x.Output, x.Output, x.Post, x.Consumption, 0, 20).ArterialContentMlPerDl,
            1e-9));

    [Fact]
    public void More_effective_flow_never_lowers_the_arterial_content() =>
        Case.Where(x => x.Share < 0.99).Sample(x => Assert.True(
            VenoVenousSupport.Balance(x.Share * x.Output, x.Output, x.Post, x.Consumption).ArterialContentMlPerDl
            < VenoVenousSupport.Balance((x.Share + 0.01) * x.Output, x.Output, x.Post, x.Consumption).ArterialContentMlPerDl));

    [Fact]
    public void More_cardiac_output_at_the_same_pump_flow_lowers_the_arterial_content() =>
        Case.Sample(x => Assert.True(
            VenoVenousSupport.Balance(x.Share * x.Output, x.Output + 1, x.Post, x.Consumption).ArterialContentMlPerDl
            < VenoVenousSupport.Balance(x.Share * x.Output, x.Output, x.Post, x.Consumption).ArterialContentMlPerDl));

    [Fact]
    public void The_flow_that_reaches_a_content_reaches_it() =>
        Gen.Select(Case, Gen.Double[0, 0.9]).Sample((x, native) =>
        {
            double uptake = native * x.Consumption;
            OxygenBalance b = VenoVenousSupport.Balance(x.Share * x.Output, x.Output, x.Post, x.Consumption, uptake);
            if (b.ArterialContentMlPerDl > 0)
            {
                double? flow = VenoVenousSupport.EffectiveFlowLPerMin(
                    b.ArterialContentMlPerDl, x.Output, x.Post, x.Consumption, uptake);
                Assert.NotNull(flow);
                Assert.Equal(x.Share * x.Output, flow.Value, 1e-7);
            }
        });

    [Fact]
    public void The_flow_that_reaches_a_content_beside_a_shunted_lung_reaches_it() =>
        Gen.Select(Case, Gen.Double[0.3, 0.95]).Where((x, _) => x.Share < 0.95).Sample((x, shunt) =>
        {
            const double capillary = 15;
            OxygenBalance b = VenoVenousSupport.BalanceWithShunt(
                x.Share * x.Output, x.Output, x.Post, x.Consumption, shunt, capillary);
            if (b.ArterialContentMlPerDl > 0 && x.Post > b.VenousContentMlPerDl + 0.1)
            {
                double? flow = VenoVenousSupport.EffectiveFlowWithShuntLPerMin(
                    b.ArterialContentMlPerDl, x.Output, x.Post, x.Consumption, shunt, capillary);
                Assert.NotNull(flow);
                Assert.Equal(x.Share * x.Output, flow.Value, 1e-6);
            }
        });

    [Fact]
    public void A_content_above_the_post_membrane_content_cannot_be_reached() =>
        Assert.Null(VenoVenousSupport.EffectiveFlowLPerMin(16, 5, 15, 250));

    [Fact]
    public void A_native_lung_that_suffices_needs_no_flow() =>
        Assert.Equal(0, VenoVenousSupport.EffectiveFlowWithShuntLPerMin(15, 5, 20, 250, 0.05, 19));

    [Fact]
    public void Unmet_demand_is_told_and_not_hidden()
    {
        OxygenBalance b = VenoVenousSupport.Balance(0.5, 5, 15, 300);
        Assert.False(b.DemandIsMet);
        Assert.True(b.VenousContentMlPerDl < 0);
    }

    [Fact]
    public void Delivery_is_ten_times_flow_times_content()
    {
        OxygenBalance b = new(20.1, 5, 245);
        Assert.Equal(1005, b.DeliveryMlPerMin, 1e-9);
        Assert.Equal(1005.0 / 245, b.DeliveryOverConsumption, 1e-12);
        Assert.Equal(15.2, b.VenousContentMlPerDl, 1e-9);
        Assert.True(b.DemandIsMet);
    }

    [Theory]
    [InlineData(double.NaN, 5, 15, 250, 0, "effectiveFlowLPerMin")]
    [InlineData(6, 5, 15, 250, 0, "effectiveFlowLPerMin")]
    [InlineData(3, 0, 15, 250, 0, "cardiacOutputLPerMin")]
    [InlineData(3, double.NaN, 15, 250, 0, "cardiacOutputLPerMin")]
    [InlineData(3, 5, -1, 250, 0, "postMembraneContentMlPerDl")]
    [InlineData(3, 5, 15, 0, 0, "consumptionMlPerMin")]
    [InlineData(3, 5, 15, 250, 251, "nativeUptakeMlPerMin")]
    [InlineData(3, 5, 15, 250, double.NaN, "nativeUptakeMlPerMin")]
    public void An_input_out_of_range_is_refused_by_name(
        double effective, double output, double post, double consumption, double uptake, string field) =>
        Fault.Names(field, () => VenoVenousSupport.Balance(effective, output, post, consumption, uptake));

    [Fact]
    public void Two_lungs_that_do_nothing_are_refused() =>
        Fault.Names("shuntFraction", () => VenoVenousSupport.BalanceWithShunt(0, 5, 15, 250, 1, 20));

    [Theory]
    [InlineData(-0.1)]
    [InlineData(40)]
    [InlineData(double.NaN)]
    public void A_shunt_out_of_range_is_refused(double shunt) =>
        Fault.Names("shuntFraction", () => VenoVenousSupport.BalanceWithShunt(3, 5, 15, 250, shunt, 20));
}
