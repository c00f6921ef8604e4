namespace Cavaxis.Planning.Rapid;

/// <summary>What a source says with a criterion.</summary>
public enum SelectionKind
{
    /// <summary>The source took patients of whom it holds.</summary>
    Include,

    /// <summary>The source refused patients of whom it holds.</summary>
    Exclude,

    /// <summary>The source began only when it held: too early before, never too late.</summary>
    NotBefore,

    /// <summary>Part of another criterion; says nothing alone.</summary>
    Part,

    /// <summary>To be known; no source takes or refuses by it.</summary>
    Context,
}
