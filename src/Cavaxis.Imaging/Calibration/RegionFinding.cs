namespace Cavaxis.Imaging.Calibration;

/// <summary>One thing found about a region.</summary>
/// <param name="Region">Number of the region in the file, from 1.</param>
/// <param name="Flaw">What.</param>
/// <param name="Words">For people: what was found and what follows.</param>
public sealed record RegionFinding(int Region, RegionFlaw Flaw, string Words);
