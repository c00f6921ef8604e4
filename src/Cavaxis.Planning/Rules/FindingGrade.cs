namespace Cavaxis.Planning.Rules;

/// <summary>How grave a finding is.</summary>
public enum FindingGrade
{
    /// <summary>To bear in mind.</summary>
    Caution,

    /// <summary>To be resolved or accepted by a named person before the procedure.</summary>
    Warning,

    /// <summary>The plan must not go ahead as it is.</summary>
    Stop,
}
