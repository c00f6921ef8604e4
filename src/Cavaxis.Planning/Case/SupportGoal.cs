namespace Cavaxis.Planning.Case;

/// <summary>What the support is for.</summary>
public enum SupportGoal
{
    /// <summary>The lungs fail, the heart does not.</summary>
    GasExchange,

    /// <summary>The heart fails, the lungs do not.</summary>
    Circulation,

    /// <summary>Heart and lungs fail.</summary>
    Both,

    /// <summary>Circulatory arrest under resuscitation.</summary>
    Arrest,
}
