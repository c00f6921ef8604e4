namespace Cavaxis.Bedside.Sealing;

/// <summary>What a sealed file is.</summary>
public enum SealKind
{
    /// <summary>A question with the course so far.</summary>
    Pack = 1,

    /// <summary>An answer to one.</summary>
    Answer = 2,
}
