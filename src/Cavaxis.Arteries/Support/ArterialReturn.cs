using Cavaxis.Arteries.Scaling;
using Cavaxis.Devices.Cannulae;

namespace Cavaxis.Arteries.Support;

/// <summary>How the pump's blood enters an artery.</summary>
/// <param name="Artery">By which artery.</param>
/// <param name="Cannula">The arterial cannula.</param>
/// <param name="SideGraft">True where it returns into a tube sewn to the artery and fills none of its lumen.</param>
/// <param name="DistalPerfusion">The distal perfusion cannula in the superficial femoral artery, fed from the return line; null for none.</param>
public sealed record ArterialReturn(AccessArtery Artery, Cannula Cannula, bool SideGraft = false, Cannula? DistalPerfusion = null)
{
    /// <summary>True where the return is by a femoral artery.</summary>
    public bool IsFemoral => Artery is AccessArtery.FemoralRight or AccessArtery.FemoralLeft;

    /// <summary>R or L, as the segments of the table end.</summary>
    public string SideLetter => Artery is AccessArtery.FemoralRight or AccessArtery.AxillaryRight ? "R" : "L";

    /// <summary>Identifier of the segment that it enters.</summary>
    public string EntrySegment => IsFemoral ? $"femoral_{SideLetter}_I" : "axillary_" + SideLetter;
}
