using Cavaxis.Planning.Case;
using Cavaxis.Planning.Configurations;
using Cavaxis.Planning.Needs;
using Cavaxis.Planning.Plans;
using Cavaxis.Planning.Rules;
using CsCheck;

namespace Cavaxis.Planning.Tests.Needs;

public class GasExchangeModelTests
{
    private static readonly Gen<CaseFile> AnyCase =
        from goal in Gen.Enum<SupportGoal>()
        from output in Gen.Double[0, 12]
        from sd in Gen.Double[0.1, 3]
        from consumption in Gen.Double[40, 600]
        from haemoglobin in Gen.Double[4, 20]
        from saturation in Gen.Double[20, 100]
        select Cases.For(goal) with
        {
            Blood = new BloodSection
            {
                HaemoglobinGPerDl = Cases.Measured(haemoglobin, 1),
                OxygenConsumptionMlPerMin = Cases.Measured(consumption, 40),
                ArterialSaturationPercent = Cases.Measured(saturation, 2),
            },
            Heart = new HeartSection { CardiacOutputLPerMin = Cases.Measured(output, sd) },
        };

    private static readonly Gen<SupportKind> Kinds = Gen.Enum<SupportKind>();

    [Fact]
    public void Saturation_and_delivery_stay_within_what_is_possible() => Gen.Select(AnyCase, Kinds, Gen.Double[0.1, 8]).Sample(
        (file, kind, flow) =>
        {
            GasExchangeOutlook outlook = Model(file).Outlook(kind, flow, 4.5);
            return outlook.ArterialSaturationPercent is { Low: >= 0, High: <= 100 } s && s.Low <= s.Value && s.Value <= s.High
                && outlook.DeliveryToConsumption is { Low: >= 0 } d && d.Low <= d.Value && d.Value <= d.High
                && outlook.RecirculationFractionBounds is { Low: 0, High: >= 0 and < 1 }
                && outlook.PumpBloodSaturationPercent.Value is > 90 and <= 100;
        });

    [Fact]
    public void More_flow_never_lowers_the_veno_venous_saturation_nor_the_bound_of_complete_mixing() => Gen.Select(
        AnyCase, Gen.Double[0.3, 6], Gen.Double[0, 2]).Sample((file, flow, more) =>
        {
            GasExchangeModel model = Model(file);
            (double saturation, double delivery) = model.Middle(SupportKind.VenoVenous, flow, 4.5);
            (double higher, double delivered) = model.Middle(SupportKind.VenoVenous, flow + more, 4.5);
            return higher >= saturation - 1e-9 && delivered >= delivery - 1e-9
                && model.CompleteMixing(flow + more) >= model.CompleteMixing(flow);
        });

    [Fact]
    public void Recirculation_widens_the_outlook_to_the_low_side_of_its_absence()
    {
        // Precisely known patient: the interval is then the two limits of recirculation and nothing else.
        CaseFile file = Cases.For(SupportGoal.GasExchange) with
        {
            Blood = new BloodSection
            {
                HaemoglobinGPerDl = Cases.Measured(11, 1e-6),
                OxygenConsumptionMlPerMin = Cases.Measured(240, 1e-6),
            },
            Heart = new HeartSection { CardiacOutputLPerMin = Cases.Measured(7, 1e-6) },
        };
        GasExchangeModel model = Model(file);
        GasExchangeOutlook outlook = model.Outlook(SupportKind.VenoVenous, 4, 4.5);
        Assert.Equal(SaturationByBalance(4), outlook.ArterialSaturationPercent.High, 2);
        Assert.Equal(SaturationByBalance(4 * (1 - (4.0 / 11))), outlook.ArterialSaturationPercent.Low, 2);
        Assert.Equal(4.0 / 11, outlook.RecirculationFractionBounds.High, 9);

        double SaturationByBalance(double effective)
        {
            PatientReading reading = new(file);
            double post = Blood.Oxygen.OxygenContent.FromPo2(
                11, RuleBookReader.BuiltIn[LimitName.PostMembranePo2MmHg], reading.Conditions, Blood.Oxygen.BloodConstants.Default);
            double content = post - (240 / (10 * effective)) + (240 / 70.0);
            return 100 * Blood.Oxygen.OxygenContent.SaturationAt(content, 11, reading.Conditions, Blood.Oxygen.BloodConstants.Default);
        }
    }

    [Fact]
    public void More_haemoglobin_never_lowers_the_delivery_over_consumption() => Gen.Select(AnyCase, Kinds, Gen.Double[0.5, 7]).Sample(
        (file, kind, flow) =>
        {
            Measurement haemoglobin = file.Blood.HaemoglobinGPerDl!;
            CaseFile redder = file with
            {
                Blood = file.Blood with { HaemoglobinGPerDl = haemoglobin with { Value = Math.Min(24, haemoglobin.Value * 1.2) } },
            };
            return Model(redder).Middle(kind, flow, 4.5).DeliveryToConsumption
                >= Model(file).Middle(kind, flow, 4.5).DeliveryToConsumption - 1e-9;
        });

    [Fact]
    public void In_arrest_the_blood_that_arrives_is_the_pumps()
    {
        GasExchangeOutlook outlook = Model(Cases.For(SupportGoal.Arrest)).Outlook(SupportKind.VenoArterial, 4, 4);
        Assert.Equal(outlook.PumpBloodSaturationPercent.Value, outlook.ArterialSaturationPercent.Value, 1);
    }

    [Fact]
    public void After_femoral_return_the_heart_ejects_what_its_own_lung_gives()
    {
        CaseFile file = Cases.For(SupportGoal.Both) with
        {
            Blood = new BloodSection { ArterialSaturationPercent = Cases.Measured(72, 1) },
            Heart = new HeartSection { CardiacOutputLPerMin = Cases.Measured(3, 0.3) },
        };
        double femoral = Model(file).Outlook(SupportKind.VenoArterial, 4, 4.5).ArterialSaturationPercent.Value;
        double helped = Model(file).Outlook(SupportKind.VenoArterioVenous, 6, 4.5).ArterialSaturationPercent.Value;
        Assert.Equal(72, femoral, 1);
        Assert.True(helped > femoral);
    }

    private static GasExchangeModel Model(CaseFile file) => new(new PatientReading(file), file, RuleBookReader.BuiltIn);
}
