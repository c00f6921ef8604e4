namespace Cavaxis.Imaging.Echo;

/// <summary>The two-way beam over neighbouring lines at one depth, 1/√mm.</summary>
/// <param name="Half">Neighbours on each side.</param>
/// <param name="Re">Real parts, from the farthest left.</param>
/// <param name="Im">Imaginary parts.</param>
internal sealed record LateralKernel(int Half, float[] Re, float[] Im);
