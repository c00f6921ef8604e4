namespace Cavaxis.Planning.Rules;

/// <summary>Landmarks that a zone can be told by, from the head down.</summary>
public enum Landmark
{
    /// <summary>Confluence of the brachiocephalic veins: the upper end of the SVC.</summary>
    BrachiocephalicConfluence,

    /// <summary>Superior cavo-atrial junction.</summary>
    Scaj,

    /// <summary>Middle of the tricuspid annulus, carried over to the caval line.</summary>
    TricuspidCentre,

    /// <summary>Inferior cavo-atrial junction.</summary>
    Icaj,

    /// <summary>Upper edge of the right hepatic vein.</summary>
    HepaticVein,

    /// <summary>Right renal vein.</summary>
    RenalVein,

    /// <summary>Confluence of the common iliac veins.</summary>
    IliacConfluence,
}
