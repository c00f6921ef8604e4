namespace Cavaxis.Reports.AxisDrawings;

/// <summary>Where a cannula enters; sides are the patient's own.</summary>
public enum EntrySite
{
    /// <summary>Right internal jugular vein.</summary>
    RightNeck,

    /// <summary>Left internal jugular vein.</summary>
    LeftNeck,

    /// <summary>Right femoral vein.</summary>
    RightGroin,

    /// <summary>Left femoral vein.</summary>
    LeftGroin,
}
