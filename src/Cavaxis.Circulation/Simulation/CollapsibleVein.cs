namespace Cavaxis.Circulation.Simulation;

/// <summary>The veins of the model that can fall in.</summary>
public enum CollapsibleVein
{
    /// <summary>Superior cava.</summary>
    SuperiorCava,

    /// <summary>Inferior cava above the diaphragm.</summary>
    ThoracicInferiorCava,

    /// <summary>Inferior cava below the diaphragm.</summary>
    AbdominalInferiorCava,
}
