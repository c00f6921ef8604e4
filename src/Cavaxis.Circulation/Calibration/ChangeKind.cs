namespace Cavaxis.Circulation.Calibration;

/// <summary>How a number is changed.</summary>
public enum ChangeKind
{
    /// <summary>To a new value, whatever it was.</summary>
    Set,

    /// <summary>By an amount in the unit of the table, added to what it was.</summary>
    Add,

    /// <summary>By a factor on what it was.</summary>
    Multiply,
}
