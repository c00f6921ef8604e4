namespace Cavaxis.Arteries.Tree;

/// <summary>Organs and limbs that the result speaks of, in the order in which it lists them.</summary>
public enum ArterialOrgan
{
    /// <summary>Heart muscle, by both coronary arteries.</summary>
    Heart,

    /// <summary>Right half of the brain, by the right internal carotid and vertebral artery.</summary>
    BrainRight,

    /// <summary>Left half of the brain, by the left internal carotid and vertebral artery.</summary>
    BrainLeft,

    /// <summary>Right hand, by the right radial artery.</summary>
    HandRight,

    /// <summary>Left hand, by the left radial artery.</summary>
    HandLeft,

    /// <summary>Stomach, liver, spleen and gut.</summary>
    Gut,

    /// <summary>Right kidney.</summary>
    KidneyRight,

    /// <summary>Left kidney.</summary>
    KidneyLeft,

    /// <summary>Right leg below the groin.</summary>
    LegRight,

    /// <summary>Left leg below the groin.</summary>
    LegLeft,
}
