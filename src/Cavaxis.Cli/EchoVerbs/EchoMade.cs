namespace Cavaxis.Cli.EchoVerbs;

/// <summary>What <c>echo</c> has made.</summary>
/// <param name="Title">Title of the scene; may be empty.</param>
/// <param name="Invented">Whether the scene says that it is invented.</param>
/// <param name="Files">Files written.</param>
/// <param name="Frames">Frames made.</param>
/// <param name="WidthPixels">Columns.</param>
/// <param name="HeightPixels">Rows.</param>
/// <param name="MmPerPixel">From pixel to pixel, both ways.</param>
/// <param name="FaceColumn">Column of the middle of the probe's face.</param>
/// <param name="FaceRow">Its row: depth is counted from there.</param>
/// <param name="AxialResolutionMm">Width of the pulse at half amplitude.</param>
/// <param name="LateralResolutionMm">Width of the beam at half amplitude at the focus.</param>
/// <param name="SliceThicknessMm">Thickness of the slice at half amplitude at the focus.</param>
/// <param name="Caution">Words that every screen shows.</param>
public sealed record EchoMade(
    string Title, bool Invented, IReadOnlyList<string> Files, int Frames, int WidthPixels, int HeightPixels, double MmPerPixel, double FaceColumn, double FaceRow,
    double AxialResolutionMm, double LateralResolutionMm, double SliceThicknessMm, string Caution);
