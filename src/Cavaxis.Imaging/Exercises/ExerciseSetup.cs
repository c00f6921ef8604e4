using Cavaxis.Imaging.Echo;

namespace Cavaxis.Imaging.Exercises;

/// <summary>What an exercise is rendered from.</summary>
/// <param name="Scene">Scene with a device.</param>
/// <param name="Plane">Where the probe stands.</param>
/// <param name="Probe">The probe.</param>
/// <param name="Display">The display.</param>
internal sealed record ExerciseSetup(EchoScene Scene, ScanPlane Plane, Probe Probe, EchoDisplay Display);
