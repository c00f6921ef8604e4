namespace Cavaxis.Imaging.Echo;

/// <summary>What is looked at.</summary>
/// <param name="Seed">Seed of every scatterer; the same scene and seed give the same picture.</param>
/// <param name="Surroundings">What lies about the device.</param>
/// <param name="Device">The device; null for none.</param>
/// <param name="Points">Single scatterers; empty for none.</param>
public sealed record EchoScene(ulong Seed, Surroundings Surroundings, DeviceAssembly? Device, IReadOnlyList<EchoPoint> Points);
