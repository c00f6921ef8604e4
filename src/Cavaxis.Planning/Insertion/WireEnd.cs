namespace Cavaxis.Planning.Insertion;

/// <summary>Where the tip of the wire comes to lie.</summary>
public enum WireEnd
{
    /// <summary>Upper SVC or the veins of the neck above it.</summary>
    UpperSvc,

    /// <summary>IVC below the hepatic veins.</summary>
    DeepIvc,

    /// <summary>Hepatic vein.</summary>
    HepaticVein,

    /// <summary>Right ventricle.</summary>
    RightVentricle,

    /// <summary>In the atrium or the veins beside it although longer than the way there: it has looped.</summary>
    AtrialLoop,

    /// <summary>Appendage of the right atrium.</summary>
    Appendage,

    /// <summary>Azygos vein.</summary>
    Azygos,

    /// <summary>On its way, stretched out: it was fed too little.</summary>
    Short,

    /// <summary>Renal, iliac or femoral vein, or a vein of the neck on a way down.</summary>
    OtherVein,

    /// <summary>The computation did not come to rest.</summary>
    NotComputed,
}
