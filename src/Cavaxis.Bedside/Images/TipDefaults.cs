namespace Cavaxis.Bedside.Images;

/// <summary>What is taken for finding a tip where nobody says another; one place for the command line and the workspace.</summary>
public static class TipDefaults
{
    /// <summary>Standard deviation of a distance on a picture, mm (assumption of this project).</summary>
    public const double DistanceSdMm = 3;

    /// <summary>Standard deviation of how far a wire reaches beyond the tip, mm (assumption of this project).</summary>
    public const double WireSdMm = 5;

    /// <summary>Standard deviation of a depth at the skin by the marks, mm (assumption of this project).</summary>
    public const double DepthSdMm = 3;

    /// <summary>Anatomies that are drawn.</summary>
    public const int Anatomies = 4000;

    /// <summary>With which seed.</summary>
    public const int Seed = 1;
}
