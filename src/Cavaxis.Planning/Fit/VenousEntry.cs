using Cavaxis.Anatomy.Body;
using Cavaxis.Planning.Configurations;

namespace Cavaxis.Planning.Fit;

/// <summary>Where a cannula enters the venous axis, and so in which direction it runs.</summary>
/// <param name="Route">Jugular or femoral vein.</param>
/// <param name="Side">Side of the body.</param>
internal readonly record struct VenousEntry(AccessRoute Route, BodySide Side)
{
    /// <summary>+1 when depth leads towards the feet (from the neck), −1 when it leads towards the head (from the groin).</summary>
    public int Direction => Route == AccessRoute.Jugular ? 1 : -1;

    /// <summary>True for the two routes that reach the cavo-atrial axis.</summary>
    public static bool Reaches(AccessRoute route) => route is AccessRoute.Jugular or AccessRoute.FemoralVein;
}
