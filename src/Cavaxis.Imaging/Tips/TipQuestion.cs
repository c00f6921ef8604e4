using Cavaxis.Anatomy.Lumens;
using Cavaxis.Quantities;

namespace Cavaxis.Imaging.Tips;

/// <summary>What is known when the tip is asked for.</summary>
/// <param name="Feature">The part of the device that was seen.</param>
/// <param name="Seen">Where it was seen.</param>
/// <param name="Entry">Where the device enters: from the neck the tip lies on the side of the feet, from the groin on that of the head.</param>
/// <param name="Course">The way the device takes through the atrium.</param>
/// <param name="SkinDepthMm">Depth of the tip from the skin by the marks, mm, for comparison; null where unknown.</param>
/// <param name="BodyScale">Height over 170 cm, at most 1: steps between edges of a junction shrink with it.</param>
public sealed record TipQuestion(
    SeenFeature Feature, SeenDistance Seen, SkinSite Entry, DeviceCourse Course = DeviceCourse.Unknown, Estimate? SkinDepthMm = null, double BodyScale = 1);
