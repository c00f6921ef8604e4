namespace Cavaxis.Reports.AxisDrawings;

/// <summary>Where a port looks in the patient.</summary>
public enum PortFacing
{
    /// <summary>All round.</summary>
    AllRound,

    /// <summary>Along the cannula: the open end.</summary>
    End,

    /// <summary>Toward the tricuspid valve.</summary>
    TowardTricuspid,

    /// <summary>Away from the tricuspid valve.</summary>
    AwayFromTricuspid,

    /// <summary>To one side, which side is not known.</summary>
    Unknown,
}
