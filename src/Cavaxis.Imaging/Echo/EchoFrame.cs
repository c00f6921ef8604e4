using Cavaxis.Imaging.Frames;

namespace Cavaxis.Imaging.Echo;

/// <summary>A synthetic picture that can be measured on.</summary>
/// <param name="Image">The picture, grey.</param>
/// <param name="Region">Its calibration, as a file would state it.</param>
/// <param name="Grid">Where its pixels lie.</param>
/// <param name="Beams">The echoes that it was made from.</param>
public sealed record EchoFrame(ImageFrame Image, CalibratedRegion Region, PictureGrid Grid, BeamEcho Beams);
