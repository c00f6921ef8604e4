namespace Cavaxis.Cli.ImageVerbs;

/// <summary>The calibre at one place of a traced axis.</summary>
/// <param name="ArcMm">Length along the centreline from its upper end, mm.</param>
/// <param name="DiameterMm">Diameter of the circle of the same area, mm.</param>
/// <param name="OpenShare">Share of the directions in which no wall was seen.</param>
public sealed record AxisDiameterRow(double ArcMm, double DiameterMm, double OpenShare);
