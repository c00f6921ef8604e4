namespace Cavaxis.Imaging.Echo;

/// <summary>How a surface answers.</summary>
/// <param name="Reflection">Part of the pressure that it throws back as a mirror.</param>
/// <param name="Rough">Scattered amplitude of 1 mm² against that of 1 mm³ of tissue: what is seen also where the mirror looks away.</param>
/// <param name="RingMm">Way between echoes thrown to and fro, as depth, mm; 0 for none.</param>
/// <param name="RingFirst">Amplitude of the first of them against the surface's own.</param>
/// <param name="RingDecay">Amplitude of each further one against that before it.</param>
/// <param name="Rings">Number of them.</param>
/// <param name="RingsWhereFar">True where the far side rings (a lumen), false where the near side does (a wall, a wire).</param>
internal sealed record SurfaceFinish(
    double Reflection, double Rough, double RingMm = 0, double RingFirst = 0, double RingDecay = 0, int Rings = 0, bool RingsWhereFar = false);
