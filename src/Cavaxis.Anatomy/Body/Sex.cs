namespace Cavaxis.Anatomy.Body;

/// <summary>Sex as the published size tables use it.</summary>
public enum Sex
{
    /// <summary>Female.</summary>
    Female,

    /// <summary>Male.</summary>
    Male,
}
