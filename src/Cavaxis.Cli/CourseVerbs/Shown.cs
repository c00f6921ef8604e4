using Cavaxis.Cli.Output;
using Cavaxis.Cli.PackVerbs;

namespace Cavaxis.Cli.CourseVerbs;

/// <summary>What a verb of the course shows, for programs and for people.</summary>
/// <param name="Json">For programs.</param>
/// <param name="Lines">For people: lines that may be set in by blanks.</param>
internal sealed record Shown(object Json, IReadOnlyList<string> Lines)
{
    /// <summary>Prints it.</summary>
    /// <param name="output">Where to.</param>
    /// <param name="json">Whether as JSON.</param>
    public void Print(CommandOutput output, bool json)
    {
        if (json)
        {
            output.Json(Json);
            return;
        }

        // What someone wrote into a record must not steer the terminal of whoever reads it.
        foreach (string line in Lines)
        {
            string text = line.TrimStart(' ');
            output.Wrapped(line[..^text.Length], SafeText.Of(text));
        }
    }
}
