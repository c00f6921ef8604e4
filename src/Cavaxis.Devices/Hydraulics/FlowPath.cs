using Cavaxis.Devices.Cannulae;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Devices.Hydraulics;

/// <summary>A lumen cut into stretches, changes of bore and rows of holes, from its outermost opening to the hub.</summary>
internal sealed class FlowPath
{
    private FlowPath(PathStep[] steps, int groupCount) => (Steps, GroupCount) = (steps, groupCount);

    /// <summary>Steps from the tip to the hub; the first is always a row.</summary>
    internal PathStep[] Steps { get; }

    /// <summary>Number of hole groups.</summary>
    internal int GroupCount { get; }

    /// <summary>Cuts a lumen. The stretch between the tip and the outermost opening carries no flow and is left out.</summary>
    /// <exception cref="InputFaultException">The lumen has no segment or no opening, or a number in it is unusable.</exception>
    internal static FlowPath Of(Lumen lumen)
    {
        ArgumentNullException.ThrowIfNull(lumen);
        Check(lumen);
        HoleRow[] rows = HoleRow.FromTip(lumen.HoleGroups);
        List<PathStep> steps = new(rows.Length + (2 * lumen.Segments.Count) + rows.Length);
        int segment = lumen.Segments.Count - 1;
        double segmentEnd = lumen.Segments[segment].LengthMm * 1e-3;
        double here = Math.Max(0, rows[0].FromTipM);
        while (segment > 0 && here > segmentEnd)
        {
            segment--;
            segmentEnd += lumen.Segments[segment].LengthMm * 1e-3;
        }

        foreach (HoleRow row in rows)
        {
            here = Advance(Math.Max(here, row.FromTipM));
            TubeSegment bore = lumen.Segments[segment];
            double area = bore.AreaMm2 * 1e-6;
            steps.Add(new PathStep(PathStepKind.Row, 0, bore.InnerDiameterMm * 1e-3, area, area, row));
        }

        Advance(double.PositiveInfinity);
        return new FlowPath([.. steps], lumen.HoleGroups.Count);

        double Advance(double to)
        {
            while (true)
            {
                TubeSegment bore = lumen.Segments[segment];
                double stop = Math.Min(to, segmentEnd);
                if (stop > here)
                {
                    double area = bore.AreaMm2 * 1e-6;
                    steps.Add(new PathStep(PathStepKind.Run, stop - here, bore.InnerDiameterMm * 1e-3, area, area, default));
                    here = stop;
                }

                if (to <= segmentEnd || segment == 0)
                {
                    return here;
                }

                TubeSegment next = lumen.Segments[--segment];
                segmentEnd += next.LengthMm * 1e-3;
                if (next.AreaMm2 != bore.AreaMm2)
                {
                    steps.Add(new PathStep(
                        PathStepKind.Change, 0, next.InnerDiameterMm * 1e-3, next.AreaMm2 * 1e-6, bore.AreaMm2 * 1e-6, default));
                }
            }
        }
    }

    private static void Check(Lumen lumen)
    {
        if (lumen.Segments.Count == 0 || lumen.HoleGroups.Count == 0)
        {
            throw new InputFaultException(new InputFault(
                FaultCode.WrongLength, "lumen", "(nothing)", "at least one segment and one hole group", "Describe the bore and its openings."));
        }

        foreach (TubeSegment segment in lumen.Segments)
        {
            Require.InRange(segment.LengthMm, 0.01, 2000, "segment.lengthMm", "Give the length of the stretch.");
            Require.InRange(segment.InnerDiameterMm, 0.2, 30, "segment.innerDiameterMm", "Give the inner diameter of the stretch.");
            Require.InRange(segment.AreaMm2, 0.03, 710, "segment.areaMm2", "Give the cross-section of the stretch.");
        }

        foreach (HoleGroup group in lumen.HoleGroups)
        {
            Require.InRange(group.FromTipMm, 0, 2000, "holeGroup.fromTipMm", "Give the distance of the holes from the tip.");
            Require.InRange(group.SpanMm, 0, 2000, "holeGroup.spanMm", "Give the length of the group.");
            Require.InRange(group.Count, 1, 500, "holeGroup.count", "Give the number of holes.");
            Require.InRange(group.DiameterMm, 0.1, 30, "holeGroup.diameterMm", "Give the diameter of one hole.");
        }
    }
}
