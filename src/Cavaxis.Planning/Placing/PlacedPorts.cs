using Cavaxis.Planning.Configurations;
using Cavaxis.Planning.Plans;
using Cavaxis.Quantities;

namespace Cavaxis.Planning.Placing;

/// <summary>Where the ports of one cannula come to lie at a depth and a turn.</summary>
/// <param name="Place">Depth and turn.</param>
/// <param name="TipBelowScajMm">Position of the tip, mm below the superior cavo-atrial junction, over the sampled anatomies.</param>
/// <param name="Ports">Tip and ports with their zones, one for each zone rule.</param>
public sealed record PlacedPorts(CannulaPlace Place, Estimate TipBelowScajMm, IReadOnlyList<PortPosition> Ports)
{
    /// <summary>Which cannula.</summary>
    public CannulaRole Role => Place.Role;
}
