namespace Cavaxis.Planning.Rapid;

/// <summary>What a question is answered with.</summary>
public enum QuestionKind
{
    /// <summary>Yes or no.</summary>
    YesNo,

    /// <summary>A number.</summary>
    Number,

    /// <summary>One of several words.</summary>
    Word,
}
