using Cavaxis.Cli.Output;
using Cavaxis.Cli.Secrets;
using Spectre.Console.Cli;

namespace Cavaxis.Cli.RecordVerbs;

/// <summary>A verb that someone signed in does.</summary>
/// <typeparam name="T">What it takes.</typeparam>
/// <param name="output">Where results go.</param>
/// <param name="secrets">Gives passwords.</param>
public abstract class PersonCommand<T>(CommandOutput output, SecretReader secrets) : AsyncCommand<T>
    where T : PersonSettings
{
    /// <summary>Where results go.</summary>
    protected CommandOutput Output => output;

    /// <summary>Gives passwords.</summary>
    protected SecretReader Secrets => secrets;

    /// <inheritdoc/>
    public sealed override async Task<int> ExecuteAsync(CommandContext context, T settings, CancellationToken cancellationToken)
    {
        ArgumentNullException.ThrowIfNull(settings);
        await using RecordDesk desk = await RecordDesk.SignInAsync(settings, secrets);
        await DoAsync(desk, settings);
        return (int)ExitCode.Done;
    }

    /// <summary>Does the verb.</summary>
    /// <param name="desk">The record with who acts.</param>
    /// <param name="settings">The options.</param>
    /// <returns>When it is done.</returns>
    private protected abstract Task DoAsync(RecordDesk desk, T settings);
}
