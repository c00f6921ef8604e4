namespace Cavaxis.Course.Explanations.Knowledge;

/// <summary>Where the blood of the pump returns, which decides what can go wrong and what a sign means.</summary>
public enum SupportKind
{
    /// <summary>To a vein.</summary>
    VenoVenous,

    /// <summary>To an artery.</summary>
    VenoArterial,

    /// <summary>To both.</summary>
    VenoArterialVenous,
}
