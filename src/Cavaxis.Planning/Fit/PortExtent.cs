using Cavaxis.Devices.Cannulae;
using Cavaxis.Planning.Rules;

namespace Cavaxis.Planning.Fit;

/// <summary>The stretch of a cannula that a zone rule speaks of.</summary>
/// <param name="MiddleFromTipMm">Distance of its middle from the tip.</param>
/// <param name="HalfSpanMm">Half its length; zero for a point.</param>
internal readonly record struct PortExtent(double MiddleFromTipMm, double HalfSpanMm)
{
    /// <summary>Name in a rule for all drainage holes of a cannula taken together.</summary>
    public const string EveryHole = "every hole";

    /// <summary>Finds the stretch of a cannula that a rule speaks of.</summary>
    /// <param name="cannula">The cannula.</param>
    /// <param name="rule">The rule.</param>
    /// <returns>The stretch, or null when the cannula has no such port.</returns>
    public static PortExtent? Of(Cannula cannula, ZoneRule rule)
    {
        if (rule.Part == PortPart.Tip)
        {
            return new PortExtent(0, 0);
        }

        double nearest = double.PositiveInfinity;
        double farthest = double.NegativeInfinity;
        foreach (Lumen lumen in cannula.Lumens)
        {
            foreach (HoleGroup group in lumen.HoleGroups)
            {
                bool meant = rule.Port == EveryHole
                    ? lumen.Purpose == LumenPurpose.Drainage
                    : string.Equals(group.Name, rule.Port, StringComparison.Ordinal);
                if (meant)
                {
                    nearest = Math.Min(nearest, group.FromTipMm - (group.SpanMm / 2));
                    farthest = Math.Max(farthest, group.FromTipMm + (group.SpanMm / 2));
                }
            }
        }

        if (nearest > farthest)
        {
            return null;
        }

        double middle = (nearest + farthest) / 2;
        return new PortExtent(middle, rule.Part == PortPart.Whole ? (farthest - nearest) / 2 : 0);
    }
}
