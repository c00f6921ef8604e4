namespace Cavaxis.Planning.Configurations;

/// <summary>Where the pump gives its blood back.</summary>
public enum SupportKind
{
    /// <summary>Into a vein only.</summary>
    VenoVenous,

    /// <summary>Into an artery only.</summary>
    VenoArterial,

    /// <summary>Into an artery and a vein.</summary>
    VenoArterioVenous,
}
