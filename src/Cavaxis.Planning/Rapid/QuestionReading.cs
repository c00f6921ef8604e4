namespace Cavaxis.Planning.Rapid;

/// <summary>One question and in how many sources its answer matters. A source that states several limits counts once in each column.</summary>
/// <param name="Name">Name by which it is answered.</param>
/// <param name="Asks">What is asked.</param>
/// <param name="Answer">The answer in words, or "unknown".</param>
/// <param name="Accepted">What it takes.</param>
/// <param name="TakenBy">Sources that took such patients.</param>
/// <param name="RefusedBy">Sources that refuse by it.</param>
/// <param name="NotTakenBy">Sources whose entry it does not meet.</param>
/// <param name="TooEarlyFor">Sources that would still wait.</param>
/// <param name="OpenIn">Sources for which it is open.</param>
/// <param name="AskedBy">Sources that ask it.</param>
/// <param name="AgainstFromMemoryOnly">True where everything that speaks against was remembered and not read; true also where nothing does.</param>
public sealed record QuestionReading(
    string Name, string Asks, string Answer, string Accepted, int TakenBy, int RefusedBy, int NotTakenBy, int TooEarlyFor, int OpenIn, int AskedBy, bool AgainstFromMemoryOnly)
{
    /// <summary>True where this answer alone makes a source refuse or not take the patient.</summary>
    public bool Decisive => RefusedBy + NotTakenBy > 0;
}
