using Cavaxis.Cli.Output;

namespace Cavaxis.Cli.RecordVerbs;

/// <summary>That a change was done and kept.</summary>
/// <param name="Done">What was done.</param>
public sealed record VerbDone(string Done)
{
    /// <summary>Tells it.</summary>
    /// <param name="output">Where to.</param>
    /// <param name="json">Whether as JSON.</param>
    /// <param name="done">What was done.</param>
    public static void Tell(CommandOutput output, bool json, string done)
    {
        ArgumentNullException.ThrowIfNull(output);
        if (json)
        {
            output.Json(new VerbDone(done));
        }
        else
        {
            output.Wrapped(string.Empty, done);
        }
    }
}
