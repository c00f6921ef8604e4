using Cavaxis.Anatomy.Body;
using Cavaxis.Anatomy.Sampling;
using Cavaxis.Devices.Cannulae;
using Cavaxis.Devices.Catalogue;
using Cavaxis.Planning.Configurations;
using Cavaxis.Planning.Fit;
using Cavaxis.Planning.Plans;
using Cavaxis.Planning.Rules;

namespace Cavaxis.Planning.Tests.Fit;

/// <summary>Holds windows, best depth and summary against a sweep that moves every port along every anatomy.</summary>
public class DepthWindowTests
{
    private const double OutsideMm = 30;

    public static TheoryData<string, ConfigurationKind, CannulaRole, AccessRoute, BodySide, double> Setups => new()
    {
        { "bicaval-31fr-31cm", ConfigurationKind.VvDualLumenJugular, CannulaRole.DualLumen, AccessRoute.Jugular, BodySide.Right, 172 },
        { "bicaval-27fr-29cm", ConfigurationKind.VvDualLumenJugular, CannulaRole.DualLumen, AccessRoute.Jugular, BodySide.Left, 160 },
        { "drain-multi-25fr-55cm", ConfigurationKind.VvFemoralJugular, CannulaRole.Drainage, AccessRoute.FemoralVein, BodySide.Right, 180 },
        { "drain-multi-25fr-55cm", ConfigurationKind.VaFemoral, CannulaRole.Drainage, AccessRoute.FemoralVein, BodySide.Left, 165 },
        { "return-venous-19fr-16cm", ConfigurationKind.VvFemoralJugular, CannulaRole.VenousReturn, AccessRoute.Jugular, BodySide.Right, 170 },
        { "return-venous-19fr-52cm", ConfigurationKind.VvFemoralFemoral, CannulaRole.VenousReturn, AccessRoute.FemoralVein, BodySide.Left, 190 },
        { "bicaval-13fr-9cm", ConfigurationKind.VvDualLumenJugular, CannulaRole.DualLumen, AccessRoute.Jugular, BodySide.Right, 60 },
    };

    [Theory]
    [MemberData(nameof(Setups))]
    public void A_depth_suits_exactly_when_every_port_lies_in_its_zone(
        string device, ConfigurationKind configuration, CannulaRole role, AccessRoute route, BodySide side, double heightCm)
    {
        (DepthWindows windows, ZoneBounds zones, AxisLandmarks landmarks) = Windows(device, configuration, role, route, side, heightCm);
        for (int i = 0; i < landmarks.Count; i++)
        {
            for (double depth = 0.25; depth <= windows.DeepestMm; depth += 1.5)
            {
                bool inWindow = depth >= windows.Low[i] && depth <= windows.High[i];
                Assert.True(
                    inWindow == Suits(windows, zones, landmarks, i, depth) || NearAnEdge(windows, i, depth),
                    FormattableString.Invariant($"anatomy {i}, depth {depth} mm, window {windows.Low[i]} to {windows.High[i]}"));
            }
        }
    }

    [Theory]
    [MemberData(nameof(Setups))]
    public void The_bits_and_the_count_say_which_windows_are_open(
        string device, ConfigurationKind configuration, CannulaRole role, AccessRoute route, BodySide side, double heightCm)
    {
        (DepthWindows windows, _, AxisLandmarks landmarks) = Windows(device, configuration, role, route, side, heightCm);
        int open = 0;
        for (int i = 0; i < landmarks.Count; i++)
        {
            bool isOpen = windows.Low[i] <= windows.High[i];
            Assert.Equal(isOpen, ((windows.Suits[i >> 6] >> (i & 63)) & 1) == 1);
            open += isOpen ? 1 : 0;
        }

        Assert.Equal(open, windows.SuitableCount);
    }

    [Theory]
    [MemberData(nameof(Setups))]
    public void The_chosen_depth_suits_as_many_anatomies_as_the_best_of_all_millimetres(
        string device, ConfigurationKind configuration, CannulaRole role, AccessRoute route, BodySide side, double heightCm)
    {
        (DepthWindows windows, _, _) = Windows(device, configuration, role, route, side, heightCm);
        DepthChoice choice = DepthChoice.Of(windows);
        int best = Enumerable.Range(0, (int)windows.DeepestMm + 1).Max(depth => Suited(windows, depth));
        Assert.Equal(best, choice.SuitedCount);
        if (best > 0)
        {
            // The middle of a run may lie on a half millimetre; a window that holds both neighbours holds it too.
            Assert.True(Suited(windows, choice.DepthMm) >= best);
            Assert.InRange(choice.DepthMm, 0, windows.DeepestMm);
        }
        else
        {
            Assert.Equal(windows.DeepestMm, choice.DepthMm);
        }
    }

    [Theory]
    [MemberData(nameof(Setups))]
    public void The_summary_tells_the_share_of_anatomies_by_the_same_sweep(
        string device, ConfigurationKind configuration, CannulaRole role, AccessRoute route, BodySide side, double heightCm)
    {
        (DepthWindows windows, ZoneBounds zones, AxisLandmarks landmarks) = Windows(device, configuration, role, route, side, heightCm);
        DepthChoice choice = DepthChoice.Of(windows);
        CannulaFit fit = FitSummary.Of(windows, choice, zones, landmarks);
        Assert.Equal((double)windows.SuitableCount / landmarks.Count, fit.ProbabilityWithImaging, 12);
        Assert.Equal((double)choice.SuitedCount / landmarks.Count, fit.ProbabilityAtPlannedDepth, 12);
        Assert.True(fit.ProbabilityAtPlannedDepth <= fit.ProbabilityWithImaging);
        Assert.Equal(choice.DepthMm / 10, fit.PlannedDepthCm.Value, 12);
        Assert.InRange(fit.PlannedDepthCm.Value, fit.PlannedDepthCm.Low, fit.PlannedDepthCm.High);
        Assert.Equal(windows.Rules.Count, fit.Ports.Count);
        Assert.Equal(windows.SuitableCount == landmarks.Count, fit.LimitingRule is null);
        for (int r = 0; r < windows.Rules.Count; r++)
        {
            int inside = Enumerable.Range(0, landmarks.Count)
                .Count(i => PortSuits(windows, zones, landmarks, i, choice.DepthMm, windows.Rules[r]));
            Assert.Equal((double)inside / landmarks.Count, fit.Ports[r].ProbabilityInZone, 12);
            Assert.True(fit.Ports[r].ProbabilityInZone >= fit.ProbabilityAtPlannedDepth);
        }
    }

    [Fact]
    public void A_cannula_too_short_for_everybody_is_said_not_to_reach()
    {
        (DepthWindows windows, ZoneBounds zones, AxisLandmarks landmarks) = Windows(
            "bicaval-13fr-9cm", ConfigurationKind.VvDualLumenJugular, CannulaRole.DualLumen, AccessRoute.Jugular, BodySide.Right, 190);
        DepthChoice choice = DepthChoice.Of(windows);
        CannulaFit fit = FitSummary.Of(windows, choice, zones, landmarks);
        Assert.Equal(0, fit.ProbabilityWithImaging);
        Assert.Equal(windows.DeepestMm, choice.DepthMm);
        Assert.Contains("Cannot reach", fit.LimitingReason, StringComparison.Ordinal);
    }

    [Fact]
    public void A_cannula_without_the_port_that_a_rule_names_has_no_windows()
    {
        AxisSamples samples = Cases.Anatomies(170, 64);
        AxisLandmarks landmarks = new(samples);
        ZoneRule[] rules = Rules(ConfigurationKind.VvDualLumenJugular, CannulaRole.DualLumen);
        Assert.Null(DepthWindows.Of(
            DeviceCatalogue.BuiltIn.Cannula("drain-multi-25fr-55cm"), new VenousEntry(AccessRoute.Jugular, BodySide.Right),
            rules, new ZoneBounds(rules, landmarks, 170), landmarks, OutsideMm));
    }

    [Fact]
    public void A_longer_dual_lumen_with_the_same_ports_never_fits_fewer_anatomies()
    {
        AxisSamples samples = Cases.Anatomies(185, 2000);
        Cannula cannula = DeviceCatalogue.BuiltIn.Cannula("bicaval-31fr-31cm");
        double before = 0;
        for (double outside = 150; outside >= 0; outside -= 10)
        {
            double now = FitProbability.WithImaging(Question(cannula, 185, outside), samples, RuleBookReader.BuiltIn);
            Assert.InRange(now, before, 1);
            before = now;
        }

        Assert.True(before > 0);
    }

    [Fact]
    public void A_lower_entry_on_the_neck_never_takes_away_the_reach_of_a_dual_lumen()
    {
        AxisSamples samples = Cases.Anatomies(190, 2000);
        FitQuestion question = Question(DeviceCatalogue.BuiltIn.Cannula("bicaval-31fr-31cm"), 190, OutsideMm);
        double before = 0;
        for (double lower = 0; lower <= 60; lower += 5)
        {
            double now = FitProbability.WithImaging(
                question with { Shift = new AnatomyShift(-lower, 0) }, samples, RuleBookReader.BuiltIn);
            Assert.InRange(now, before, 1);
            before = now;
        }
    }

    [Fact]
    public void A_millimetre_lower_on_the_neck_and_a_millimetre_less_outside_are_worth_the_same()
    {
        AxisSamples samples = Cases.Anatomies(190, 2000);
        FitQuestion question = Question(DeviceCatalogue.BuiltIn.Cannula("bicaval-31fr-31cm"), 190, OutsideMm);
        double lower = FitProbability.WithImaging(question with { Shift = new AnatomyShift(-20, 0) }, samples, RuleBookReader.BuiltIn);
        double shorter = FitProbability.WithImaging(question with { LengthOutsideMm = OutsideMm - 20 }, samples, RuleBookReader.BuiltIn);
        Assert.Equal(lower, shorter, 12);
    }

    [Fact]
    public void A_role_that_does_not_reach_the_atrium_cannot_be_asked_about()
    {
        FitQuestion dual = Question(DeviceCatalogue.BuiltIn.Cannula("bicaval-31fr-31cm"), 190, OutsideMm);
        FitQuestion question = dual with { Configuration = ConfigurationKind.VaFemoral, Role = CannulaRole.ArterialReturn };
        Assert.Throws<ArgumentException>(
            () => FitProbability.WithImaging(question, Cases.Anatomies(190, 10), RuleBookReader.BuiltIn));
    }

    private static FitQuestion Question(Cannula cannula, double heightCm, double outsideMm) =>
        new(cannula, ConfigurationKind.VvDualLumenJugular, CannulaRole.DualLumen, BodySide.Right, heightCm, outsideMm);

    private static ZoneRule[] Rules(ConfigurationKind configuration, CannulaRole role) =>
        [.. RuleBookReader.BuiltIn.Zones.Where(rule => rule.Role == role && rule.Configurations.Contains(configuration))];

    private static (DepthWindows Windows, ZoneBounds Zones, AxisLandmarks Landmarks) Windows(
        string device, ConfigurationKind configuration, CannulaRole role, AccessRoute route, BodySide side, double heightCm)
    {
        // 301 is no multiple of any vector width, so the remainder of the loop is walked too.
        AxisLandmarks landmarks = new(Cases.Anatomies(heightCm, 301));
        ZoneRule[] rules = Rules(configuration, role);
        ZoneBounds zones = new(rules, landmarks, heightCm);
        DepthWindows? windows = DepthWindows.Of(
            DeviceCatalogue.BuiltIn.Cannula(device), new VenousEntry(route, side), rules, zones, landmarks, OutsideMm);
        return (Assert.IsType<DepthWindows>(windows), zones, landmarks);
    }

    private static int Suited(DepthWindows windows, double depth) =>
        Enumerable.Range(0, windows.Low.Length).Count(i => depth >= windows.Low[i] && depth <= windows.High[i]);

    private static bool NearAnEdge(DepthWindows windows, int i, double depth) =>
        Math.Abs(depth - windows.Low[i]) < 1e-6 || Math.Abs(depth - windows.High[i]) < 1e-6;

    private static bool Suits(DepthWindows windows, ZoneBounds zones, AxisLandmarks landmarks, int i, double depth) =>
        windows.Rules.All(rule => PortSuits(windows, zones, landmarks, i, depth, rule));

    /// <summary>Walks the holes of the device itself rather than the extents that the windows are computed from.</summary>
    private static bool PortSuits(
        DepthWindows windows, ZoneBounds zones, AxisLandmarks landmarks, int i, double depth, ZoneRule rule)
    {
        double tip = landmarks.Skin(windows.Entry)[i] + (windows.Entry.Direction * depth);
        double from = zones.From(rule)[i];
        double to = zones.To(rule)[i];
        if (rule.Part == PortPart.Tip)
        {
            return tip >= from && tip <= to;
        }

        IEnumerable<HoleGroup> groups = windows.Cannula.Lumens
            .Where(lumen => rule.Port != "every hole" || lumen.Purpose == LumenPurpose.Drainage)
            .SelectMany(lumen => lumen.HoleGroups)
            .Where(group => rule.Port == "every hole" || group.Name == rule.Port);
        double[] ends = [.. groups.SelectMany(group => new[] { group.FromTipMm - (group.SpanMm / 2), group.FromTipMm + (group.SpanMm / 2) })];
        if (rule.Part == PortPart.Whole)
        {
            return ends.All(end => At(end) >= from && At(end) <= to);
        }

        double middle = (ends.Min() + ends.Max()) / 2;
        return At(middle) >= from && At(middle) <= to;

        double At(double fromTip) => tip - (windows.Entry.Direction * fromTip);
    }
}
