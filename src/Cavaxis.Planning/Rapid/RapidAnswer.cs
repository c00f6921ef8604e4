namespace Cavaxis.Planning.Rapid;

/// <summary>An answer to one question: yes or no, a number, or a word. What is unknown has no answer.</summary>
public sealed record RapidAnswer
{
    private RapidAnswer(string question, bool? yes, NumberRange? number, string? word) => (Question, Yes, Number, Word) = (question, yes, number, word);

    /// <summary>Name of the question.</summary>
    public string Question { get; }

    /// <summary>Yes or no; null for the other kinds.</summary>
    public bool? Yes { get; }

    /// <summary>What is known of the number; null for the other kinds.</summary>
    public NumberRange? Number { get; }

    /// <summary>The word; null for the other kinds.</summary>
    public string? Word { get; }

    /// <summary>Yes or no.</summary>
    /// <param name="question">Name of the question.</param>
    /// <param name="yes">The answer.</param>
    /// <returns>The answer.</returns>
    public static RapidAnswer Of(string question, bool yes) => new(question, yes, null, null);

    /// <summary>A number.</summary>
    /// <param name="question">Name of the question.</param>
    /// <param name="number">What is known of it.</param>
    /// <returns>The answer.</returns>
    public static RapidAnswer Of(string question, NumberRange number) => new(question, null, number, null);

    /// <summary>A word.</summary>
    /// <param name="question">Name of the question.</param>
    /// <param name="word">The word.</param>
    /// <returns>The answer.</returns>
    public static RapidAnswer Of(string question, string word) => new(question, null, null, word);
}
