using Cavaxis.Devices.Cannulae;

namespace Cavaxis.Devices.Hydraulics;

/// <summary>Holes at one place along the bore, in SI units. A long group is cut into several rows.</summary>
/// <param name="FromTipM">Distance from the tip.</param>
/// <param name="Group">Index of the group in the lumen's order.</param>
/// <param name="AreaM2">Open area of the row.</param>
/// <param name="DiameterM">Diameter of one hole.</param>
/// <param name="Axial">True for the open end of the tip.</param>
internal readonly record struct HoleRow(double FromTipM, int Group, double AreaM2, double DiameterM, bool Axial)
{
    // Four rows resolve the pressure along a group; more change the shares by less than the hole tolerance.
    private const int MostRowsPerGroup = 4;

    /// <summary>All rows of a lumen from the tip to the hub, the open end first.</summary>
    internal static HoleRow[] FromTip(IReadOnlyList<HoleGroup> groups)
    {
        List<HoleRow> rows = [];
        for (int g = 0; g < groups.Count; g++)
        {
            HoleGroup group = groups[g];
            double area = group.Count * Math.PI * group.DiameterMm * group.DiameterMm / 4 * 1e-6;
            int count = group.Facing == HoleFacing.End || group.SpanMm <= 0 ? 1 : Math.Min(group.Count, MostRowsPerGroup);
            for (int r = 0; r < count; r++)
            {
                double place = group.FromTipMm + (group.SpanMm * (((r + 0.5) / count) - 0.5));
                rows.Add(new HoleRow(place * 1e-3, g, area / count, group.DiameterMm * 1e-3, group.Facing == HoleFacing.End));
            }
        }

        return [.. rows.OrderBy(row => row.Axial ? double.NegativeInfinity : row.FromTipM)];
    }
}
