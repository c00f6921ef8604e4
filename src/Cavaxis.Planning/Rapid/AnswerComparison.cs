namespace Cavaxis.Planning.Rapid;

/// <summary>How an answer is held against a limit.</summary>
public enum AnswerComparison
{
    /// <summary>The answer is yes.</summary>
    Is,

    /// <summary>The answer is no.</summary>
    IsNot,

    /// <summary>Below the limit.</summary>
    LessThan,

    /// <summary>At the limit or below.</summary>
    AtMost,

    /// <summary>Above the limit.</summary>
    MoreThan,

    /// <summary>At the limit or above.</summary>
    AtLeast,

    /// <summary>From the one limit to the other, both included.</summary>
    Between,

    /// <summary>One of the words.</summary>
    OneOf,
}
