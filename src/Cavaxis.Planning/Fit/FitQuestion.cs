using Cavaxis.Anatomy.Body;
using Cavaxis.Devices.Cannulae;
using Cavaxis.Planning.Configurations;

namespace Cavaxis.Planning.Fit;

/// <summary>Asks whether one cannula fits, apart from any plan.</summary>
/// <param name="Cannula">The cannula.</param>
/// <param name="Configuration">The configuration whose zones count.</param>
/// <param name="Role">Its role there; it decides the route.</param>
/// <param name="Side">Side of the body.</param>
/// <param name="HeightCm">Height of the patient, for zones that shrink with it.</param>
/// <param name="LengthOutsideMm">Part of the insertable length left outside the skin.</param>
public sealed record FitQuestion(
    Cannula Cannula, ConfigurationKind Configuration, CannulaRole Role, BodySide Side, double HeightCm, double LengthOutsideMm)
{
    /// <summary>A change laid on every anatomy.</summary>
    public AnatomyShift Shift { get; init; }
}
