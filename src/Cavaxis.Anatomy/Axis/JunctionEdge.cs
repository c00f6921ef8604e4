namespace Cavaxis.Anatomy.Axis;

/// <summary>
/// Which edge a person took as the cavo-atrial junction. Published distances differ by one to three centimetres mostly
/// because of this choice, so a measurement is stored with it and carried over to the model's own edge.
/// </summary>
public enum JunctionEdge
{
    /// <summary>Not said. The measurement keeps its value and gains the spread between the definitions.</summary>
    Unknown,

    /// <summary>Superior: where the SVC wall meets the upper border of the right atrial appendage. The model's own
    /// superior edge.</summary>
    AppendageBorder,

    /// <summary>Superior: the crista terminalis as seen in the bicaval ultrasound view.</summary>
    CristaTerminalis,

    /// <summary>Superior: the first CT slice that shows the right atrium.</summary>
    FirstAtrialSlice,

    /// <summary>Inferior: the rim of the eustachian valve, the lower edge. The model's own inferior edge.</summary>
    EustachianRim,

    /// <summary>Inferior: the edge of the atrial myocardium, on average 17.6 mm higher.</summary>
    MyocardialEdge,
}
