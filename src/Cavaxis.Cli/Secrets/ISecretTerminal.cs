namespace Cavaxis.Cli.Secrets;

/// <summary>A terminal at which a person types a secret unseen.</summary>
public interface ISecretTerminal
{
    /// <summary>Asks for a secret and shows nothing of what is typed.</summary>
    /// <param name="question">What is asked for.</param>
    /// <returns>What was typed; null where the person gave up.</returns>
    string? Ask(string question);
}
