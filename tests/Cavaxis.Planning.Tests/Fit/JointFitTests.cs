using System.Numerics;
using Cavaxis.Anatomy.Body;
using Cavaxis.Devices.Catalogue;
using Cavaxis.Planning.Configurations;
using Cavaxis.Planning.Fit;
using Cavaxis.Planning.Rules;

namespace Cavaxis.Planning.Tests.Fit;

/// <summary>Holds the joint fit of two cannulae against a sweep of both depths.</summary>
public class JointFitTests
{
    public static TheoryData<ConfigurationKind, string, string, AccessRoute, BodySide, double> Pairs => new()
    {
        { ConfigurationKind.VvFemoralJugular, "drain-multi-25fr-55cm", "return-venous-19fr-16cm", AccessRoute.Jugular, BodySide.Right, 80 },
        { ConfigurationKind.VvFemoralJugular, "drain-multi-25fr-38cm", "return-venous-19fr-21cm", AccessRoute.Jugular, BodySide.Left, 130 },
        { ConfigurationKind.VvFemoralFemoral, "drain-multi-25fr-38cm", "return-venous-19fr-52cm", AccessRoute.FemoralVein, BodySide.Left, 80 },
        { ConfigurationKind.VvFemoralFemoral, "drain-multi-25fr-55cm", "return-venous-19fr-52cm", AccessRoute.FemoralVein, BodySide.Left, 110 },
        { ConfigurationKind.VavFemoralJugular, "drain-multi-25fr-55cm", "return-venous-17fr-16cm", AccessRoute.Jugular, BodySide.Right, 100 },
    };

    [Theory]
    [MemberData(nameof(Pairs))]
    public void Two_cannulae_fit_when_some_pair_of_depths_suits_both_and_keeps_the_ports_apart(
        ConfigurationKind configuration, string drain, string back, AccessRoute route, BodySide side, double separationMm)
    {
        AxisLandmarks landmarks = new(Cases.Anatomies(175, 130));
        DepthWindows drainage = Windows(drain, configuration, CannulaRole.Drainage, AccessRoute.FemoralVein, BodySide.Right, landmarks);
        DepthWindows venous = Windows(back, configuration, CannulaRole.VenousReturn, route, side, landmarks);
        ulong[] marks = new ulong[(landmarks.Count + 63) / 64];
        int count = JointFit.Mark(drainage, venous, landmarks, separationMm, marks);
        Assert.Equal(marks.Sum(BitOperations.PopCount), count);
        for (int i = 0; i < landmarks.Count; i++)
        {
            double apart = FarthestApart(drainage, venous, landmarks, i);
            bool marked = ((marks[i >> 6] >> (i & 63)) & 1) == 1;
            Assert.True(
                marked == (apart >= separationMm) || Math.Abs(apart - separationMm) < 1e-6,
                FormattableString.Invariant($"anatomy {i}: {apart} mm apart at most, marked {marked}"));
        }
    }

    [Theory]
    [MemberData(nameof(Pairs))]
    public void Advanced_blindly_they_fit_no_more_often_than_under_imaging(
        ConfigurationKind configuration, string drain, string back, AccessRoute route, BodySide side, double separationMm)
    {
        AxisLandmarks landmarks = new(Cases.Anatomies(175, 500));
        DepthWindows drainage = Windows(drain, configuration, CannulaRole.Drainage, AccessRoute.FemoralVein, BodySide.Right, landmarks);
        DepthWindows venous = Windows(back, configuration, CannulaRole.VenousReturn, route, side, landmarks);
        ulong[] marks = new ulong[(landmarks.Count + 63) / 64];
        int seen = JointFit.Mark(drainage, venous, landmarks, separationMm, marks);
        int blind = JointFit.CountBlind(
            drainage, DepthChoice.Of(drainage).DepthMm, venous, DepthChoice.Of(venous).DepthMm, landmarks, separationMm);
        Assert.InRange(blind, 0, seen);
    }

    [Fact]
    public void Asking_for_more_distance_never_marks_more_anatomies()
    {
        AxisLandmarks landmarks = new(Cases.Anatomies(175, 500));
        DepthWindows drainage = Windows(
            "drain-multi-25fr-55cm", ConfigurationKind.VvFemoralJugular, CannulaRole.Drainage, AccessRoute.FemoralVein, BodySide.Right, landmarks);
        DepthWindows venous = Windows(
            "return-venous-19fr-16cm", ConfigurationKind.VvFemoralJugular, CannulaRole.VenousReturn, AccessRoute.Jugular, BodySide.Right, landmarks);
        ulong[] marks = new ulong[(landmarks.Count + 63) / 64];
        int before = int.MaxValue;
        for (double separation = 0; separation <= 300; separation += 20)
        {
            int now = JointFit.Mark(drainage, venous, landmarks, separation, marks);
            Assert.True(now <= before);
            before = now;
        }

        Assert.Equal(0, before);
    }

    private static DepthWindows Windows(
        string device, ConfigurationKind configuration, CannulaRole role, AccessRoute route, BodySide side, AxisLandmarks landmarks)
    {
        ZoneRule[] rules = [.. RuleBookReader.BuiltIn.Zones.Where(r => r.Role == role && r.Configurations.Contains(configuration))];
        return DepthWindows.Of(
            DeviceCatalogue.BuiltIn.Cannula(device), new VenousEntry(route, side), rules,
            new ZoneBounds(rules, landmarks, 175), landmarks, 30)!;
    }

    /// <summary>Tries the ends and a grid of both windows; the return end is the tip of every return cannula in the table.</summary>
    private static double FarthestApart(DepthWindows drainage, DepthWindows venous, AxisLandmarks landmarks, int i)
    {
        double best = double.NegativeInfinity;
        foreach (double first in Depths(drainage, i))
        {
            foreach (double second in Depths(venous, i))
            {
                double tip = landmarks.Skin(drainage.Entry)[i] + (drainage.Entry.Direction * first);
                double end = landmarks.Skin(venous.Entry)[i] + (venous.Entry.Direction * second);
                best = Math.Max(best, tip - end);
            }
        }

        return best;
    }

    private static IEnumerable<double> Depths(DepthWindows windows, int i)
    {
        if (windows.Low[i] > windows.High[i])
        {
            return [];
        }

        return Enumerable.Range(0, 9).Select(k => double.Lerp(windows.Low[i], windows.High[i], k / 8.0));
    }
}
