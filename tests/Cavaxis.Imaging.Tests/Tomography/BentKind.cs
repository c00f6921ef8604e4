namespace Cavaxis.Imaging.Tests.Tomography;

/// <summary>What is peculiar about a made-up chest.</summary>
internal enum BentKind
{
    /// <summary>Even contrast.</summary>
    Even,

    /// <summary>Blood with and without contrast side by side in the SVC, mixed on the way down.</summary>
    Jet,

    /// <summary>A stream of contrast that winds down the SVC.</summary>
    Winding,

    /// <summary>Blood without contrast from the legs beside blood with contrast from the kidneys.</summary>
    UnmixedBelow,

    /// <summary>A pacing lead along the wall, with streaks, and lime in the wall of the aorta beside the SVC.</summary>
    LeadAndLime,

    /// <summary>Little contrast and fluid in place of the right lung.</summary>
    Effusion,

    /// <summary>A hepatic vein that opens below the atrium, and a pulmonary artery behind the SVC.</summary>
    Branches,
}
