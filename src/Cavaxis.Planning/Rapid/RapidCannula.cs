using Cavaxis.Anatomy.Body;
using Cavaxis.Planning.Configurations;
using Cavaxis.Quantities;

namespace Cavaxis.Planning.Rapid;

/// <summary>One cannula of the rapid plan. Intervals hold the small, the middle and the large body that the patient may have.</summary>
/// <param name="Role">What it does.</param>
/// <param name="DeviceId">Identifier in the catalogue.</param>
/// <param name="Description">In words.</param>
/// <param name="OuterDiameterFrench">Size, French.</param>
/// <param name="Route">Vessel it enters.</param>
/// <param name="Side">Side of the body.</param>
/// <param name="VesselSeen">True where somebody looked at this vessel.</param>
/// <param name="VesselDiameterMm">Inner diameter of the vessel.</param>
/// <param name="CannulaToVessel">Outer diameter over vessel diameter.</param>
/// <param name="DepthCm">Depth from the skin; null for arterial cannulae, whose depth follows their length.</param>
/// <param name="FlowLPerMin">Flow through it.</param>
public sealed record RapidCannula(
    CannulaRole Role, string DeviceId, string Description, double OuterDiameterFrench, AccessRoute Route, BodySide Side, bool VesselSeen,
    Estimate VesselDiameterMm, Estimate CannulaToVessel, Estimate? DepthCm, double FlowLPerMin);
