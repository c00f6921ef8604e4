namespace Cavaxis.Arteries.Tree;

/// <summary>What the end of an artery supplies.</summary>
public enum ArterialTerritory
{
    /// <summary>Heart muscle.</summary>
    Heart,

    /// <summary>Right half of the brain.</summary>
    BrainRight,

    /// <summary>Left half of the brain.</summary>
    BrainLeft,

    /// <summary>Right side of face and scalp.</summary>
    FaceRight,

    /// <summary>Left side of face and scalp.</summary>
    FaceLeft,

    /// <summary>Right arm and hand.</summary>
    ArmRight,

    /// <summary>Left arm and hand.</summary>
    ArmLeft,

    /// <summary>Chest wall and spine.</summary>
    ChestWall,

    /// <summary>Stomach, liver, spleen and gut.</summary>
    Gut,

    /// <summary>Right kidney.</summary>
    KidneyRight,

    /// <summary>Left kidney.</summary>
    KidneyLeft,

    /// <summary>Right side of the pelvis.</summary>
    PelvisRight,

    /// <summary>Left side of the pelvis.</summary>
    PelvisLeft,

    /// <summary>Right leg below the groin.</summary>
    LegRight,

    /// <summary>Left leg below the groin.</summary>
    LegLeft,
}
