namespace Cavaxis.Course.GasExchange;

/// <summary>Where the blood was drawn that stands for true mixed venous blood. None of them is it.</summary>
public enum VenousSite
{
    /// <summary>Drainage blood a while after the sweep was turned off, so that what returns is venous too.</summary>
    DrainageWithSweepOff,

    /// <summary>A catheter in the upper cava, above the returned blood.</summary>
    UpperCava,

    /// <summary>The pulmonary artery. On veno-venous support it holds returned blood.</summary>
    PulmonaryArtery,
}
