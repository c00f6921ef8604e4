namespace Cavaxis.Web.Pages.GoesIn;

/// <summary>What the drawing script is told of a play besides its points.</summary>
/// <param name="Name">What tells this play from others.</param>
/// <param name="Radius">Outer radius of the cannula, mm.</param>
/// <param name="Fed">The moment at which the wire lies.</param>
/// <param name="Wrong">The moment from which on it goes wrong; null where it does not.</param>
/// <param name="Astray">What goes wrong, in words.</param>
/// <param name="Frames">The moments.</param>
/// <param name="Landmarks">Named places.</param>
/// <param name="Sampled">Wires of the sampled anatomies.</param>
public sealed record PlayHead(
    string Name,
    double Radius,
    int Fed,
    int? Wrong,
    string Astray,
    IReadOnlyList<PlayFrame> Frames,
    IReadOnlyList<PlayLandmark> Landmarks,
    IReadOnlyList<PlayLine> Sampled);
