namespace Cavaxis.Reports.Charts;

/// <summary>One place of an uncertainty band.</summary>
/// <param name="X">Along the horizontal axis, in its unit.</param>
/// <param name="Low">Lower edge, in the unit of the vertical axis.</param>
/// <param name="High">Upper edge, in the unit of the vertical axis.</param>
public readonly record struct BandPoint(double X, double Low, double High);
