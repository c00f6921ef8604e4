namespace Cavaxis.Reports.AxisDrawings;

/// <summary>What a landmark is; some have a shape of their own.</summary>
public enum LandmarkKind
{
    /// <summary>No shape of its own: a label and its band.</summary>
    Other,

    /// <summary>A junction: a plane drawn across the lumen.</summary>
    Junction,

    /// <summary>Middle of the tricuspid annulus; the opening is given in <see cref="TricuspidOpening"/>.</summary>
    TricuspidValve,

    /// <summary>Diaphragm: an arch beside the vein.</summary>
    Diaphragm,

    /// <summary>Right hepatic vein: a branch to the patient's right.</summary>
    HepaticVein,

    /// <summary>Renal veins: branches to both sides.</summary>
    RenalVeins,
}
