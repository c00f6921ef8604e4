using Cavaxis.Anatomy.Body;
using Cavaxis.Arteries.Scaling;
using Cavaxis.Arteries.Support;
using Cavaxis.Quantities;

namespace Cavaxis.Arteries.Limb;

/// <summary>What the judgement of a leg rests on.</summary>
/// <param name="Side">Which leg.</param>
/// <param name="Return">How the pump returns; null without support.</param>
/// <param name="PumpFlowLPerMin">Pump flow, L/min.</param>
/// <param name="RootPa">Mean pressure at the aortic root under support, Pa.</param>
/// <param name="WaveFlowMlPerMin">Flow of this leg in the full computation with waves, with what is in place, mL/min.</param>
/// <param name="MassKg">Body mass, kg.</param>
/// <param name="WithDiameter">The tree with another diameter (mm) of the access artery of this leg.</param>
/// <param name="ArteryMm">Diameter of the common femoral artery of this leg.</param>
public sealed record LegInputs(
    BodySide Side,
    ArterialReturn? Return,
    double PumpFlowLPerMin,
    double RootPa,
    double WaveFlowMlPerMin,
    double MassKg,
    Func<double, PatientTree> WithDiameter,
    Estimate ArteryMm);
