namespace Cavaxis.Course.Outcomes;

/// <summary>Kind of support, as outcomes are counted.</summary>
public enum SupportKind
{
    /// <summary>Veno-venous.</summary>
    VenoVenous,

    /// <summary>Veno-arterial with a beating heart.</summary>
    VenoArterial,

    /// <summary>Veno-arterial begun during resuscitation.</summary>
    Resuscitation,

    /// <summary>Return into artery and vein.</summary>
    VenoArterialVenous,
}
