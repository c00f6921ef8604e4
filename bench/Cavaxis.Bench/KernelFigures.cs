using Cavaxis.Anatomy.Body;
using Cavaxis.Anatomy.Sampling;
using Cavaxis.Blood.Oxygen;
using Cavaxis.Devices.Cannulae;
using Cavaxis.Devices.Catalogue;
using Cavaxis.Devices.Hydraulics;
using Cavaxis.Planning.Case;
using Cavaxis.Planning.Configurations;
using Cavaxis.Planning.Fit;
using Cavaxis.Planning.Rules;
using Cavaxis.Planning.Search;

namespace Cavaxis.Bench;

/// <summary>The inner parts of a plan, one by one.</summary>
internal static class KernelFigures
{
    /// <summary>Measures the parts.</summary>
    /// <param name="clock">The clock.</param>
    public static void Print(Clock clock)
    {
        CaseFile caseFile = DemoCases.All[^1].Case;
        RuleBook rules = RuleBookReader.BuiltIn;
        PlanningContext context = new(caseFile, DeviceCatalogue.BuiltIn, rules, new PlanningOptions());
        int count = context.Samples.Count;
        FigureTable table = new("Parts", "part", "time", "allocated B", "remark");

        Timing draw = clock.Measure(() => AxisSampler.Fill(context.Axis, context.Samples, 1));
        table.Add($"sampler into a used buffer, 10 000 anatomies", $"{draw.WallMs:F2} ms", $"{draw.AllocatedBytes:F0}", $"{draw.WallMs * 1e6 / count:F0} ns per anatomy");
        Timing landmarks = clock.Measure(() => _ = new AxisLandmarks(context.Samples));
        table.Add($"landmarks with jet windows", $"{landmarks.WallMs:F2} ms", $"{landmarks.AllocatedBytes:F0}", $"{landmarks.WallMs * 1e6 / count:F0} ns per anatomy");

        ZoneRule[] zones = [.. rules.Zones.Where(
            rule => rule.Role == CannulaRole.Drainage && rule.Configurations.Contains(ConfigurationKind.VvFemoralJugular))];
        Cannula drainage = First(CannulaFamily.MultiStageDrainage);
        Cannula venousReturn = First(CannulaFamily.VenousReturn);
        VenousEntry groin = new(AccessRoute.FemoralVein, BodySide.Right);
        DepthWindows windows = Windows(context, drainage, groin, zones);
        Timing fast = clock.Measure(() => Windows(context, drainage, groin, zones).Release(), 10);
        double[] low = new double[count];
        double[] high = new double[count];
        Timing slow = clock.Measure(() => OneByOne(context, drainage, groin, zones, low, high), 10);
        table.Add($"depth windows of one device, one side", $"{fast.WallMs * 1e3:F1} us", $"{fast.AllocatedBytes:F0}", $"{fast.WallMs * 1e6 / count:F2} ns per anatomy");
        table.Add($"  the same, one anatomy at a time", $"{slow.WallMs * 1e3:F1} us", $"{slow.AllocatedBytes:F0}", $"{slow.WallMs / fast.WallMs:F1} times as long");

        ZoneRule[] returnZones = [.. rules.Zones.Where(
            rule => rule.Role == CannulaRole.VenousReturn && rule.Configurations.Contains(ConfigurationKind.VvFemoralJugular))];
        DepthWindows back = Windows(context, venousReturn, new VenousEntry(AccessRoute.Jugular, BodySide.Right), returnZones);
        ulong[] marks = new ulong[AnatomyBits.WordsFor(count)];
        Timing pair = clock.Measure(() => JointFit.Mark(windows, back, context.Landmarks, 100, marks), 10);
        table.Add($"joint fit of a pair of cannulae", $"{pair.WallMs * 1e3:F1} us", $"{pair.AllocatedBytes:F0}", $"{pair.WallMs * 1e6 / count:F2} ns per anatomy");

        Timing drop = clock.Measure(() => CannulaHydraulics.At(drainage, LumenPurpose.Drainage, 4, context.Blood), 100);
        table.Add($"hydraulics of a multi-stage cannula, one flow", $"{drop.WallMs * 1e3:F2} us", $"{drop.AllocatedBytes:F0}", $"{drainage.Id}");
        double sum = 0;
        Timing saturation = clock.Measure(() => sum += OxygenDissociation.SaturationAt(60, context.Reading.Conditions), 10_000);
        table.Add($"saturation at a PO2", $"{saturation.WallMs * 1e6:F0} ns", $"{saturation.AllocatedBytes:F0}", $"closed form");
        Timing content = clock.Measure(
            () => sum += OxygenContent.SaturationAt(12, 10, context.Reading.Conditions, BloodConstants.Default), 1_000);
        table.Add($"saturation at an oxygen content", $"{content.WallMs * 1e6:F0} ns", $"{content.AllocatedBytes:F0}", $"root finding");
        GC.KeepAlive(sum);
        table.Print();
    }

    private static Cannula First(CannulaFamily family) => DeviceCatalogue.BuiltIn.Cannulae.First(cannula => cannula.Family == family);

    private static DepthWindows Windows(PlanningContext context, Cannula cannula, VenousEntry entry, ZoneRule[] zones) =>
        DepthWindows.Of(cannula, entry, zones, context.Zones, context.Landmarks, context.LengthOutsideMm, context.Rows)
        ?? throw new InvalidOperationException($"{cannula.Id} has no ports for its rules.");

    private static void OneByOne(
        PlanningContext context, Cannula cannula, VenousEntry entry, ZoneRule[] zones, double[] low, double[] high)
    {
        Array.Clear(low);
        Array.Fill(high, cannula.InsertableLengthMm - context.LengthOutsideMm);
        ReadOnlySpan<double> skin = context.Landmarks.Skin(entry);
        foreach (ZoneRule rule in zones)
        {
            PortExtent port = PortExtent.Of(cannula, rule)!.Value;
            ReadOnlySpan<double> from = context.Zones.From(rule);
            ReadOnlySpan<double> to = context.Zones.To(rule);
            for (int i = 0; i < low.Length; i++)
            {
                (double least, double most) = DepthWindows.Depths(skin[i], from[i], to[i], port, entry.Direction);
                low[i] = Math.Max(low[i], least);
                high[i] = Math.Min(high[i], most);
            }
        }
    }
}
