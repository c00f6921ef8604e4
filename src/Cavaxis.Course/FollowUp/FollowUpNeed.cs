namespace Cavaxis.Course.FollowUp;

/// <summary>What calls for an examination after support.</summary>
public enum FollowUpNeed
{
    /// <summary>A cannula was taken out of a vein.</summary>
    VenousCannula,

    /// <summary>A cannula was taken out of an artery.</summary>
    ArterialCannula,

    /// <summary>An examination found a thrombus.</summary>
    ThrombusFound,
}
