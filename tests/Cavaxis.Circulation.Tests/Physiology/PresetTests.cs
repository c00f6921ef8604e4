using Cavaxis.Circulation.Parameters;
using Cavaxis.Circulation.Presets;
using Cavaxis.Circulation.Signals;
using Cavaxis.Circulation.Simulation;
using Cavaxis.Quantities.Faults;
using static Cavaxis.Circulation.Signals.CirculationQuantity;

namespace Cavaxis.Circulation.Tests.Physiology;

public class PresetTests
{
    private const string Catheter = "catheter reference tables";
    private const string ChildTable = "children's textbook, table by age";

    private static readonly Lazy<Dictionary<string, SettledState>> States = new(static () => CirculationPresets.All
        .Zip(CirculationSimulator.Settle([.. CirculationPresets.All.Select(static preset => preset.Parameters())]))
        .ToDictionary(static pair => pair.First.Name, static pair => pair.Second));

    public static TheoryData<string, PublishedRange> Ranges => new()
    {
        { "adult", new(MeanArterialPressureMmHg, 70, 105, Catheter) },
        { "adult", new(SystolicPressureMmHg, 90, 140, Catheter) },
        { "adult", new(DiastolicPressureMmHg, 60, 90, Catheter) },
        { "adult", new(CentralVenousPressureMmHg, 2, 6, Catheter) },
        { "adult", new(RightVentricularSystolicMmHg, 15, 30, Catheter) },
        { "adult", new(PulmonaryArterySystolicMmHg, 15, 30, Catheter) },
        { "adult", new(PulmonaryArteryDiastolicMmHg, 4, 15, Catheter) },
        { "adult", new(PulmonaryArteryMeanMmHg, 10, 20, Catheter) },
        { "adult", new(WedgePressureMmHg, 4, 12, Catheter) },
        { "adult", new(NativeOutputLPerMin, 4, 8, Catheter) },
        { "adult", new(StrokeVolumeMl, 50, 100, Catheter) },
        { "adult", new(SystemicResistanceWoodUnits, 8.8, 20, Catheter) },
        { "adult", new(PulmonaryResistanceWoodUnits, 0.4, 3, Catheter) },
        { "adult", new(VenousSaturationPercent, 60, 80, Catheter) },
        { "adult", new(LeftVentricularEjectionFractionPercent, 52, 74, "echocardiography (Lang 2015)") },
        { "adult", new(LeftVentricularEndDiastolicVolumeMl, 62, 150, "echocardiography (Lang 2015)") },
        { "adult", new(RightVentricularEndDiastolicVolumeMl, 79 * 1.82 * 0.6, 108 * 1.82, "index of 79 by echo, below 108 mL/m2 by resonance") },
        { "adult", new(RightVentricularEjectionFractionPercent, 50, 68, "Kovalova 2006; 50 or more by resonance") },
        { "adult", new(OutflowVelocityTimeIntegralCm, 18, 23, "18 to 22 cm, echocardiography table") },
        { "adult", new(RightArmPo2MmHg, 80, 100, "teaching text") },
        { "adult", new(RightArmPco2MmHg, 35, 45, "teaching text") },
        { "cardiogenic-shock", new(NativeOutputLPerMin, 1.2 * 1.9, 1.8 * 1.9, "index 1.5 (SD 0.3), 13 patients") },
        { "cardiogenic-shock", new(WedgePressureMmHg, 15, 33, "24 (SD 9), 13 patients; above 15 (trial)") },
        { "cardiogenic-shock", new(SystemicResistanceWoodUnits, 18, 28, "23 (SD 5), 13 patients") },
        { "cardiogenic-shock", new(LeftVentricularEjectionFractionPercent, 10, 40, "below 40 % (cohort definition)") },
        { "cardiogenic-shock", new(MeanArterialPressureMmHg, 50, 80, "below 70 or 73 from the power of 13 patients") },
        { "severe-lung-failure", new(PulmonaryResistanceWoodUnits, 2.6 / 1.9, 5.4 / 1.9, "index 3.8 (2.6-5.4), Bull 2010") },
        { "severe-lung-failure", new(NativeOutputLPerMin, 3 * 1.9, 5.4 * 1.9, "index 4.2 (SD 1.2), 367 patients") },
        { "severe-lung-failure", new(RightArmPo2MmHg, 30, 0.9 * 80, "PaO2/FiO2 below 80 (Abrams 2015)") },
        { "septic-shock", new(MeanArterialPressureMmHg, 50.6, 63, "56.8 (SD 3.1), Guarracino 2019, two SD") },
        { "septic-shock", new(NativeOutputLPerMin, 2 * 1.9, 9, "index above 2 in 74 %, Guarracino 2019") },
        { "hypovolaemia", new(CentralVenousPressureMmHg, -5, 2, "below the normal range") },
        { "hypovolaemia", new(NativeOutputLPerMin, 2, 4.4, "below the normal range of 4 to 8 with room of a tenth") },
        { "child-20kg", new(HeartRatePerMin, 65, 110, ChildTable) },
        { "child-20kg", new(MeanArterialPressureMmHg, 65, 77, ChildTable) },
        { "child-20kg", new(NativeOutputLPerMin, 3.38 * 0.79 * 0.75, 3.7, "index 3.38 over all sizes; 3.7 L/min at 5 years (Williams 1993)") },
        { "child-10kg", new(HeartRatePerMin, 95, 130, "anaesthesia textbook, 1 year") },
        { "child-10kg", new(MeanArterialPressureMmHg, 50, 65, ChildTable) },
        { "child-10kg", new(NativeOutputLPerMin, 1.2 * 0.9, 3.38 * 0.49, "1.2 L/min at 1 year (Williams 1993); index 3.38") },
        { "newborn-3.5kg", new(HeartRatePerMin, 100, 180, ChildTable) },
        { "newborn-3.5kg", new(MeanArterialPressureMmHg, 40, 55, ChildTable) },
        { "newborn-3.5kg", new(NativeOutputLPerMin, 0.5, 3.38 * 0.22, "0.6 L/min (Williams 1993); index 3.38") },
    };

    [Theory]
    [MemberData(nameof(Ranges))]
    public void A_typical_circulation_lies_in_the_published_range(string preset, PublishedRange range) =>
        Assert.InRange(States.Value[preset].RequireSummary()[range.Quantity], range.Low, range.High);

    [Fact]
    public void Mean_systemic_filling_pressure_lies_between_the_seven_mmHg_of_the_dog_and_the_twelve_of_patients()
    {
        // Stressed volume over compliance once everything has come to one pressure; the heart and the cavae hold little of it. Seven is Guyton's value in
        // the dog; analogues in patients give 11 to 19 mmHg.
        CirculationParameters p = CirculationParameters.Adult;
        double Sum(params CirculationParameter[] all) => all.Sum(parameter => p[parameter]);
        double systemic = Sum(
            CirculationParameter.AscendingComplianceMlPerMmHg, CirculationParameter.ArchComplianceMlPerMmHg, CirculationParameter.DescendingComplianceMlPerMmHg,
            CirculationParameter.UpperVenousComplianceMlPerMmHg, CirculationParameter.SplanchnicComplianceMlPerMmHg, CirculationParameter.LowerVenousComplianceMlPerMmHg);
        ReadOnlySpan<double> state = States.Value["adult"].State;
        double stressed = 0;
        foreach ((int volume, CirculationParameter zero) in new[]
        {
            (Equations.StateIndex.Ascending, CirculationParameter.AscendingZeroVolumeMl), (Equations.StateIndex.Arch, CirculationParameter.ArchZeroVolumeMl),
            (Equations.StateIndex.Descending, CirculationParameter.DescendingZeroVolumeMl), (Equations.StateIndex.UpperVein, CirculationParameter.UpperVenousZeroVolumeMl),
            (Equations.StateIndex.SplanchnicVein, CirculationParameter.SplanchnicZeroVolumeMl), (Equations.StateIndex.LowerVein, CirculationParameter.LowerVenousZeroVolumeMl),
        })
        {
            stressed += state[volume] - p[zero];
        }

        Assert.InRange(stressed / systemic, 7, 12);
    }

    [Fact]
    public void Filling_pressures_of_both_sides_come_together_in_tamponade()
    {
        CirculationSummary usual = States.Value["adult"].RequireSummary();
        CirculationSummary tamponade = States.Value["tamponade"].RequireSummary();
        Assert.True(tamponade[WedgePressureMmHg] - tamponade[CentralVenousPressureMmHg] < usual[WedgePressureMmHg] - usual[CentralVenousPressureMmHg]);
        Assert.True(tamponade[CentralVenousPressureMmHg] > 2 * usual[CentralVenousPressureMmHg]);
        Assert.True(tamponade[StrokeVolumeMl] < 0.75 * usual[StrokeVolumeMl]);
    }

    [Fact]
    public void An_unknown_preset_is_refused_with_the_names_there_are()
    {
        InputFaultException refused = Assert.Throws<InputFaultException>(static () => CirculationPresets.Of("adlut"));
        Assert.Equal("adlut", refused.Faults[0].Value);
        Assert.Contains("adult", refused.Faults[0].Accepted, StringComparison.Ordinal);
        Assert.Equal(10.0, CirculationPresets.Of("CHILD-10KG").MassKg);
    }
}
