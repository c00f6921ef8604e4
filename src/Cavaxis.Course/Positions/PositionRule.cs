using Cavaxis.Quantities;

namespace Cavaxis.Course.Positions;

/// <summary>How far a cannula may have shifted before the record says so.</summary>
/// <param name="Key">Short stable name.</param>
/// <param name="Limit">Shift beyond which it is told.</param>
/// <param name="Unit">Unit of the shift.</param>
/// <param name="Rationale">Why.</param>
/// <param name="Source">Where the limit comes from.</param>
public sealed record PositionRule(string Key, double Limit, string Unit, string Rationale, Source Source)
{
    /// <summary>Shift of the depth at the skin.</summary>
    public static PositionRule Depth { get; } = new(
        "depth-shift", 1, "cm",
        "Marks are read to about half a centimetre, so a centimetre is the least shift that is not the reading itself; ports shift by as much as the mark does.",
        new Source("common practice, no source", Certainty.CommonPractice));

    /// <summary>Turn of a dual-lumen return port.</summary>
    public static PositionRule Turn { get; } = new(
        "turn-shift", 20, "°",
        "Practice holds that a turned return port recirculates; one flow simulation found little effect of 30 to 60°. Told early, since looking is cheap.",
        new Source("common practice, no source", Certainty.CommonPractice));
}
