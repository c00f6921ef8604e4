using System.Collections.Immutable;
using Cavaxis.Quantities;

namespace Cavaxis.Imaging.Tips;

/// <summary>Where the tip lies along the axis of the cavae, as far as what was seen tells.</summary>
/// <param name="Question">What was known.</param>
/// <param name="FromLandmarks">The tip against each landmark inside the body.</param>
/// <param name="FeatureBelowSeenLandmarkMm">The feature against the landmark it was measured from, along the axis, mm; positive towards the feet.</param>
/// <param name="Zones">Every zone that has a share, from the head down.</param>
/// <param name="StraightMm">The tip against the landmark measured from, mm, were the device to run straight through the atrium.</param>
/// <param name="AlongAxisMm">The same along the stiff way.</param>
/// <param name="AlongWallMm">The same along the free wall.</param>
/// <param name="InPlaneMm">The same by the given course, were the line measured to lie in the plane of the picture: what the picture shows without further thought.</param>
/// <param name="BeyondSkinDepthMm">Tip by what was seen less tip by the depth at the skin, mm along the axis; null where no depth was given.</param>
/// <param name="Remarks">What has to be known with the numbers.</param>
public sealed record TipPlacement(
    TipQuestion Question,
    ImmutableArray<LandmarkDistance> FromLandmarks,
    Estimate FeatureBelowSeenLandmarkMm,
    ImmutableArray<ZoneShare> Zones,
    Estimate StraightMm,
    Estimate AlongAxisMm,
    Estimate AlongWallMm,
    Estimate InPlaneMm,
    Estimate? BeyondSkinDepthMm,
    ImmutableArray<string> Remarks)
{
    /// <summary>The tip against the landmark that was measured from.</summary>
    public LandmarkDistance FromSeenLandmark => FromLandmarks.First(d => d.Landmark == Question.Seen.Landmark);
}
