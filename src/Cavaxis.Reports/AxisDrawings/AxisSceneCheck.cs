namespace Cavaxis.Reports.AxisDrawings;

/// <summary>Refuses scenes that cannot be drawn truly.</summary>
internal static class AxisSceneCheck
{
    private const double GapMm = 0.5;
    private const double FarthestMm = 3000;

    /// <summary>Checks a scene.</summary>
    /// <param name="scene">The scene.</param>
    /// <exception cref="ArgumentException">The trunk has gaps or a wrong order, or a number cannot be drawn.</exception>
    internal static void Check(AxisScene scene)
    {
        ArgumentNullException.ThrowIfNull(scene);
        CheckTrunk(scene.Segments);
        foreach (AxisLandmark landmark in scene.Landmarks)
        {
            CheckSpread(landmark.PositionMm, landmark.Name);
        }

        foreach (SkinEntry entry in scene.Entries)
        {
            CheckSpread(entry.PositionMm, entry.Name);
        }

        if (scene.Tricuspid is TricuspidOpening valve)
        {
            CheckNumber(valve.CentreMm, -FarthestMm, "tricuspid centre");
            CheckNumber(valve.DiameterMm, 0, "tricuspid diameter");
            CheckNumber(valve.DistanceMm, 0, "tricuspid distance");
        }

        foreach (SceneCannula cannula in scene.Cannulae)
        {
            CheckSpread(cannula.TipMm, cannula.Name);
            CheckNumber(cannula.OuterDiameterMm, double.Epsilon, cannula.Name);
            if (cannula.TipZone is PortZone tipZone)
            {
                CheckSpread(new Spread((tipZone.LowMm + tipZone.HighMm) / 2, tipZone.LowMm, tipZone.HighMm), cannula.Name);
            }

            foreach (ScenePort port in cannula.Ports)
            {
                CheckSpread(port.PositionMm, port.Name);
                CheckNumber(port.SpanMm, 0, port.Name);
                if (port.Zone is PortZone zone)
                {
                    CheckSpread(new Spread((zone.LowMm + zone.HighMm) / 2, zone.LowMm, zone.HighMm), port.Name);
                }
            }
        }
    }

    private static void CheckTrunk(IReadOnlyList<AxisSegment> segments)
    {
        bool ordered = segments.Select(s => s.Kind).SequenceEqual(segments.Select(s => s.Kind).Order())
            && segments.Select(s => s.Kind).Distinct().Count() == 3
            && segments.Count(s => s.Kind == SegmentKind.RightAtrium) == 1;
        if (!ordered)
        {
            throw new ArgumentException("The trunk is one or more superior caval segments, one atrium, one or more inferior caval segments.");
        }

        for (int i = 0; i < segments.Count; i++)
        {
            AxisSegment s = segments[i];
            CheckSpread(s.LumenDiameterMm, s.Name);
            CheckNumber(s.LumenDiameterMm.Low, double.Epsilon, s.Name);
            CheckNumber(s.TopMm, -FarthestMm, s.Name);
            CheckNumber(s.BottomMm, s.TopMm + 1, s.Name);
            CheckNumber(s.LateralTopMm, -FarthestMm, s.Name);
            CheckNumber(s.LateralBottomMm, -FarthestMm, s.Name);
            if (i > 0 && Math.Abs(segments[i - 1].BottomMm - s.TopMm) > GapMm)
            {
                throw new ArgumentException($"Segment {s.Name} does not start where the one above it ends.");
            }
        }
    }

    private static void CheckSpread(Spread spread, string name)
    {
        CheckNumber(spread.Median, -FarthestMm, name);
        CheckNumber(spread.Low, -FarthestMm, name);
        CheckNumber(spread.High, spread.Low, name);
    }

    private static void CheckNumber(double value, double low, string name)
    {
        if (!(value >= low && value <= FarthestMm))
        {
            throw new ArgumentException(FormattableString.Invariant($"{name}: {value} mm cannot be drawn; accepted are {low} to {FarthestMm} mm."));
        }
    }
}
