using Cavaxis.Anatomy.Body;
using Cavaxis.Planning.Configurations;
using Cavaxis.Quantities;

namespace Cavaxis.Planning.Plans;

/// <summary>One cannula of a plan: which, where, how wide for its vessel, and what pressure it costs.</summary>
/// <param name="Role">What it does.</param>
/// <param name="DeviceId">Identifier in the catalogue.</param>
/// <param name="Description">In words.</param>
/// <param name="OuterDiameterFrench">Size, French.</param>
/// <param name="InsertableLengthCm">Insertable length, cm.</param>
/// <param name="Route">Vessel it enters.</param>
/// <param name="Side">Side of the body.</param>
/// <param name="VesselDiameterMm">Inner diameter of the vessel; measured or from the population.</param>
/// <param name="CannulaToVessel">Outer diameter over vessel diameter.</param>
/// <param name="ProbabilityRatioAcceptable">Probability that the ratio is at most the caution limit.</param>
/// <param name="FlowLPerMin">Flow through it.</param>
/// <param name="PressureDropMmHg">Pressure it costs at that flow with this patient's blood.</param>
/// <param name="ReturnPressureDropMmHg">For a dual-lumen cannula, the pressure of its return lumen.</param>
/// <param name="HoleShares">Share of the flow through each drainage hole group, or return group, by name.</param>
/// <param name="Fit">Fit along the axis; null for arterial cannulae, which do not reach it.</param>
public sealed record PlacedCannula(
    CannulaRole Role,
    string DeviceId,
    string Description,
    double OuterDiameterFrench,
    double InsertableLengthCm,
    AccessRoute Route,
    BodySide Side,
    Estimate VesselDiameterMm,
    Estimate CannulaToVessel,
    double ProbabilityRatioAcceptable,
    double FlowLPerMin,
    Estimate PressureDropMmHg,
    Estimate? ReturnPressureDropMmHg,
    IReadOnlyList<HoleShare> HoleShares,
    CannulaFit? Fit);
