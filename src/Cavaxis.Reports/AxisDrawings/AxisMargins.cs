using Cavaxis.Devices.Cannulae;
using Cavaxis.Reports.Drawings;

namespace Cavaxis.Reports.AxisDrawings;

/// <summary>Gathers what is written beside the axis: anatomy on the left, cannulae on the right.</summary>
internal static class AxisMargins
{
    /// <summary>Landmarks, and entries on the patient's right.</summary>
    internal static IReadOnlyList<MarginEntry> Left(AxisScene scene, AxisFrame frame, AxisTrunk trunk, AnatomyPainter anatomy) =>
    [
        .. scene.Landmarks.Select(l => new MarginEntry(
            [l.Name, AxisWords.Position(l.PositionMm, scene.ZeroName)],
            l.PositionMm,
            new Point(anatomy.LeftWall(l.PositionMm.Median), frame.ClampedY(l.PositionMm.Median)),
            Colour.Ink,
            Hatch.Level)),
        .. Entries(scene, trunk, EntrySite.RightNeck, EntrySite.RightGroin),
    ];

    /// <summary>Ports and tips, and entries on the patient's left.</summary>
    internal static IReadOnlyList<MarginEntry> Right(AxisScene scene, AxisTrunk trunk, CannulaPainter painter)
    {
        var entries = new List<MarginEntry>();
        for (int i = 0; i < scene.Cannulae.Count; i++)
        {
            SceneCannula cannula = scene.Cannulae[i];
            entries.Add(new MarginEntry(
                [
                    $"{cannula.Name}: tip",
                    AxisWords.Position(cannula.TipMm, scene.ZeroName),
                    .. cannula.TipZone is PortZone tipZone ? new[] { AxisWords.Verdict(tipZone) } : [],
                ],
                cannula.TipMm,
                painter.At(i, cannula.TipMm.Median),
                Colour.Ink,
                Hatch.Crossed,
                Zone: cannula.TipZone));
            foreach (ScenePort port in cannula.Ports)
            {
                bool drains = port.Purpose == LumenPurpose.Drainage;
                entries.Add(new MarginEntry(
                    [
                        port.Name,
                        $"{(drains ? "drains" : "returns")}; {AxisWords.Facing(port.Facing)}",
                        AxisWords.Position(port.PositionMm, scene.ZeroName),
                        .. port.Zone is PortZone zone ? new[] { AxisWords.Verdict(zone) } : [],
                    ],
                    port.PositionMm,
                    painter.At(i, port.PositionMm.Median),
                    CannulaPainter.Tone(port.Purpose),
                    drains ? Hatch.Rising : Hatch.Falling,
                    port.SpanMm,
                    port.Zone));
            }
        }

        entries.AddRange(Entries(scene, trunk, EntrySite.LeftNeck, EntrySite.LeftGroin));
        return entries;
    }

    private static IEnumerable<MarginEntry> Entries(AxisScene scene, AxisTrunk trunk, params EntrySite[] sites) => scene.Entries
        .Where(e => sites.Contains(e.Site))
        .Select(e =>
        {
            double outer = trunk.OuterEnd(e.Site, e.PositionMm.Median);
            double inner = e.Site is EntrySite.RightNeck or EntrySite.LeftNeck ? outer + 1 : outer - 1;
            bool beyond = Math.Abs(outer - e.PositionMm.Median) > 1e-6;
            string position = AxisWords.Position(e.PositionMm, scene.ZeroName);
            return new MarginEntry(
                beyond ? [e.Name, position, "beyond the break, not to scale"] : [e.Name, position],
                e.PositionMm,
                trunk.Way(e.Site, outer, inner)[0],
                Colour.Muted,
                Hatch.Level);
        });
}
