namespace Cavaxis.Circulation.Calibration;

/// <summary>The scale on which a parameter is searched and on which its belief is normal.</summary>
public enum ScaleKind
{
    /// <summary>Logarithm: positive numbers.</summary>
    Logarithm,

    /// <summary>Logit: shares between zero and one.</summary>
    Logit,
}
