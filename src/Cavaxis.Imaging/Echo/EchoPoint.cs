using Cavaxis.Anatomy.Space;

namespace Cavaxis.Imaging.Echo;

/// <summary>A single scatterer, such as a thread of a test object.</summary>
/// <param name="Place">Where, mm.</param>
/// <param name="Strength">Amplitude against that of the scatterers in 1 mm³ of soft tissue.</param>
public sealed record EchoPoint(Vector3D Place, double Strength);
