using System.Globalization;
using Cavaxis.Bedside.Images;
using Cavaxis.Cli.Output;

namespace Cavaxis.Cli.RecordVerbs;

/// <summary>A record that was backed up or restored, with its images.</summary>
/// <param name="Anchor">The line that proves everything up to now.</param>
/// <param name="Events">Number of events.</param>
/// <param name="Images">How many images went along.</param>
/// <param name="ImageTrouble">Each that the record names and that was missing or altered.</param>
public sealed record RecordCopy(string Anchor, long Events, int Images, IReadOnlyList<string> ImageTrouble)
{
    /// <summary>Of what was copied.</summary>
    /// <param name="anchor">The events.</param>
    /// <param name="stock">The images.</param>
    /// <returns>Both.</returns>
    internal static RecordCopy Of(RecordAnchor anchor, ImageStock stock) => new(anchor.Anchor, anchor.Events, stock.Whole, stock.Trouble);

    /// <summary>Exit code: something was found where an image did not go along.</summary>
    internal int Code => ImageTrouble.Count == 0 ? (int)ExitCode.Done : (int)ExitCode.StopFound;

    /// <summary>Tells it.</summary>
    /// <param name="output">Where to.</param>
    /// <param name="words">What was done with the events.</param>
    internal void Write(CommandOutput output, string words)
    {
        output.Wrapped(string.Empty, words);
        if (Images > 0 || ImageTrouble.Count > 0)
        {
            output.Wrapped(string.Empty, string.Create(CultureInfo.InvariantCulture, $"Images: {Images} copied, each checked against its hash.{(ImageTrouble.Count > 0 ? string.Create(CultureInfo.InvariantCulture, $" {ImageTrouble.Count} did NOT go along:") : string.Empty)}"));
        }

        foreach (string line in ImageTrouble)
        {
            output.Wrapped("  ", line);
        }

        output.Line(Anchor);
    }
}
