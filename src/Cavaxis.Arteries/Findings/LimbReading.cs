using Cavaxis.Anatomy.Body;
using Cavaxis.Quantities;

namespace Cavaxis.Arteries.Findings;

/// <summary>Blood flow of one leg against its need.</summary>
/// <param name="Side">Which leg.</param>
/// <param name="HasCannula">True for the leg below the arterial cannula.</param>
/// <param name="Supply">Finding with what is in place.</param>
/// <param name="FlowMlPerMin">Flow with what is in place, with its interval, mL/min.</param>
/// <param name="NeedMlPerMin">Flow below which the leg is taken to be in want, with its spread between people, mL/min.</param>
/// <param name="WithoutPerfusionMlPerMin">Flow past the cannula without a distal perfusion cannula, mL/min; null where there is no cannula.</param>
/// <param name="WithPerfusionMlPerMin">Flow with the distal perfusion cannula that is in place or, where none is, a 7 Fr one, mL/min; null where there is no cannula.</param>
/// <param name="PerfusionCannulaMlPerMin">Flow through that distal perfusion cannula, mL/min; null where there is no cannula.</param>
/// <param name="CannulaOverArtery">Outer diameter of the cannula over inner diameter of the artery; null where there is no cannula.</param>
/// <param name="ArteryDiameterMm">Inner diameter of the common femoral artery, with origin and spread, mm.</param>
/// <param name="InWords">The finding as a sentence with its numbers.</param>
public sealed record LimbReading(
    BodySide Side,
    bool HasCannula,
    LimbSupply Supply,
    Estimate FlowMlPerMin,
    Estimate NeedMlPerMin,
    double? WithoutPerfusionMlPerMin,
    double? WithPerfusionMlPerMin,
    double? PerfusionCannulaMlPerMin,
    double? CannulaOverArtery,
    Estimate ArteryDiameterMm,
    string InWords);
