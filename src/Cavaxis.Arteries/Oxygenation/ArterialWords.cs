using Cavaxis.Arteries.Tree;

namespace Cavaxis.Arteries.Oxygenation;

/// <summary>Names of organs in words, and the ends of arteries that feed them.</summary>
public static class ArterialWords
{
    /// <summary>Name of an organ.</summary>
    /// <param name="organ">Which.</param>
    /// <returns>Words without an article.</returns>
    public static string Of(ArterialOrgan organ) => organ switch
    {
        ArterialOrgan.Heart => "heart muscle",
        ArterialOrgan.BrainRight => "brain, right",
        ArterialOrgan.BrainLeft => "brain, left",
        ArterialOrgan.HandRight => "right hand",
        ArterialOrgan.HandLeft => "left hand",
        ArterialOrgan.Gut => "gut and liver",
        ArterialOrgan.KidneyRight => "right kidney",
        ArterialOrgan.KidneyLeft => "left kidney",
        ArterialOrgan.LegRight => "right leg",
        ArterialOrgan.LegLeft => "left leg",
        _ => throw new ArgumentOutOfRangeException(nameof(organ), organ, "Not an organ."),
    };

    /// <summary>Whether the end of a segment feeds an organ.</summary>
    /// <param name="organ">The organ.</param>
    /// <param name="segment">The segment.</param>
    /// <returns>True where it does.</returns>
    public static bool Feeds(ArterialOrgan organ, ArterySegment segment)
    {
        ArgumentNullException.ThrowIfNull(segment);
        return organ switch
        {
            ArterialOrgan.Heart => segment.Territory == ArterialTerritory.Heart,
            ArterialOrgan.BrainRight => segment.Territory == ArterialTerritory.BrainRight,
            ArterialOrgan.BrainLeft => segment.Territory == ArterialTerritory.BrainLeft,
            ArterialOrgan.HandRight => segment.Name == "radial_R",
            ArterialOrgan.HandLeft => segment.Name == "radial_L",
            ArterialOrgan.Gut => segment.Territory == ArterialTerritory.Gut,
            ArterialOrgan.KidneyRight => segment.Territory == ArterialTerritory.KidneyRight,
            ArterialOrgan.KidneyLeft => segment.Territory == ArterialTerritory.KidneyLeft,
            ArterialOrgan.LegRight => segment.Territory == ArterialTerritory.LegRight,
            ArterialOrgan.LegLeft => segment.Territory == ArterialTerritory.LegLeft,
            _ => false,
        };
    }
}
