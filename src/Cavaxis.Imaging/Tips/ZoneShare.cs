using Cavaxis.Quantities;

namespace Cavaxis.Imaging.Tips;

/// <summary>How often the tip lies in a zone.</summary>
/// <param name="Zone">The zone.</param>
/// <param name="Share">Share of the sampled anatomies and errors, 0 to 1; its interval is that of counting.</param>
public sealed record ZoneShare(AxisZone Zone, Estimate Share);
