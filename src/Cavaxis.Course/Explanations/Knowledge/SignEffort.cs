namespace Cavaxis.Course.Explanations.Knowledge;

/// <summary>What it takes to observe something.</summary>
public enum SignEffort
{
    /// <summary>A look at a display or the patient.</summary>
    Look,

    /// <summary>A sample of blood or a simple manoeuvre.</summary>
    Sample,

    /// <summary>Imaging or an invasive line.</summary>
    Imaging,
}
