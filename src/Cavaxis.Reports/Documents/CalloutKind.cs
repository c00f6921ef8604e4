namespace Cavaxis.Reports.Documents;

/// <summary>How grave a callout is. Each kind has its own word and sign besides its colour.</summary>
public enum CalloutKind
{
    /// <summary>The plan must not go on as it stands.</summary>
    Stop,

    /// <summary>Harm is likely if unheeded.</summary>
    Warning,

    /// <summary>To be watched or checked.</summary>
    Caution,

    /// <summary>Good to know.</summary>
    Information,
}
