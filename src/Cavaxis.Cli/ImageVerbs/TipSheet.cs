using Cavaxis.Imaging.Tips;
using Cavaxis.Quantities;

namespace Cavaxis.Cli.ImageVerbs;

/// <summary>Where the tip lies, as <c>image tip</c> tells it. Lengths along the axis in mm, positive towards the feet.</summary>
/// <param name="Seen">The part that was seen.</param>
/// <param name="PartFromTipMm">Its distance from the tip along the device.</param>
/// <param name="FromLandmarks">The tip against each landmark.</param>
/// <param name="Zones">Share of each zone.</param>
/// <param name="StraightMm">Against the landmark measured from, were the device to run straight through the atrium.</param>
/// <param name="AlongAxisMm">The same along the stiff way.</param>
/// <param name="AlongWallMm">The same along the free wall.</param>
/// <param name="InPlaneMm">What the picture shows without its tilt.</param>
/// <param name="BeyondSkinDepthMm">Tip by what was seen less tip by the depth at the skin; null where no depth was given.</param>
/// <param name="Anatomies">How many were drawn.</param>
/// <param name="Seed">With which seed.</param>
/// <param name="Remarks">What has to be known with the numbers.</param>
public sealed record TipSheet(
    string Seen, double PartFromTipMm, IReadOnlyList<LandmarkDistance> FromLandmarks, IReadOnlyList<ZoneShare> Zones,
    Estimate StraightMm, Estimate AlongAxisMm, Estimate AlongWallMm, Estimate InPlaneMm, Estimate? BeyondSkinDepthMm, int Anatomies, int Seed, IReadOnlyList<string> Remarks);
