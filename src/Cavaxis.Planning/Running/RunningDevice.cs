using Cavaxis.Devices.Cannulae;
using Cavaxis.Planning.Case;

namespace Cavaxis.Planning.Running;

/// <summary>A cannula of the running circuit.</summary>
/// <param name="Cannula">The device.</param>
/// <param name="Role">What it does, in the words of the case file.</param>
/// <param name="Lying">What the case says about where it lies; null for a device that was assumed.</param>
/// <param name="Field">Its place in the case file.</param>
internal sealed record RunningDevice(Cannula Cannula, string Role, RunningCannula? Lying, string Field);
