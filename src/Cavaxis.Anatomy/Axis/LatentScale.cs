namespace Cavaxis.Anatomy.Axis;

/// <summary>The scale on which a dimension is taken as Gaussian.</summary>
public enum LatentScale
{
    /// <summary>The natural logarithm is Gaussian: always positive, spread relative to size.</summary>
    Logarithmic,

    /// <summary>The value itself is Gaussian: angles, fractions and differences that may be negative.</summary>
    Plain,
}
