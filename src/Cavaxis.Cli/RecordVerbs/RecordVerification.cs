using System.Globalization;
using Cavaxis.Bedside.Images;
using Cavaxis.Cli.Output;
using Cavaxis.Records.Chain;

namespace Cavaxis.Cli.RecordVerbs;

/// <summary>What verifying found, as JSON and words.</summary>
/// <param name="Whole">True where every event holds.</param>
/// <param name="Events">Number of events that hold, from the first.</param>
/// <param name="Hash">Hash of the last of them.</param>
/// <param name="AnchorChecked">True where a line kept elsewhere was passed to check against.</param>
/// <param name="BrokenAt">Place of the first break; null for none.</param>
/// <param name="BrokenHow">Kind of the break; null for none.</param>
/// <param name="Words">What was found there.</param>
/// <param name="Damage">What the store says of its own file.</param>
/// <param name="NobodySignedIn">True where the record is too damaged to sign in to.</param>
/// <param name="Images">How many images it names; null where it is too damaged to say.</param>
/// <param name="ImageTrouble">Each of them that is missing or was altered.</param>
public sealed record RecordVerification(
    bool Whole, long Events, string Hash, bool AnchorChecked, long? BrokenAt, BreakKind? BrokenHow, string? Words, IReadOnlyList<string> Damage, bool NobodySignedIn,
    int? Images, IReadOnlyList<string> ImageTrouble)
{
    /// <summary>Of a report.</summary>
    /// <param name="report">The report.</param>
    /// <param name="anchored">Whether an anchor was given.</param>
    /// <param name="images">The images; null where no one could sign in.</param>
    /// <returns>The same for people.</returns>
    public static RecordVerification Of(ChainReport report, bool anchored, ImageStock? images)
    {
        ArgumentNullException.ThrowIfNull(report);
        return new(report.IsWhole, report.Intact.Position, report.Intact.Hash.Hex, anchored, report.Break?.Position, report.Break?.Kind, report.Break?.Words, report.Damage, images is null, images?.Named, images?.Trouble ?? []);
    }

    /// <summary>Writes it in words.</summary>
    /// <param name="output">Where to.</param>
    public void Write(CommandOutput output)
    {
        ArgumentNullException.ThrowIfNull(output);
        output.Wrapped(string.Empty, Whole
            ? string.Create(CultureInfo.InvariantCulture, $"Whole: {Events} events, last hash {Hash}.")
            : string.Create(CultureInfo.InvariantCulture, $"ALTERED OR DAMAGED. {Events} events hold from the first on."));
        if (BrokenAt is long place)
        {
            output.Wrapped(string.Empty, string.Create(CultureInfo.InvariantCulture, $"First broken at event {place} ({BrokenHow}): {Words}"));
        }

        foreach (string line in Damage)
        {
            output.Wrapped("  ", line);
        }

        output.Wrapped(string.Empty, AnchorChecked
            ? "Checked against the line kept elsewhere."
            : "No line kept elsewhere was given (--anchor FILE): a chain written anew as a whole, or cut off at its end, is found only against one.");
        if (NobodySignedIn)
        {
            output.Wrapped(string.Empty, "The record takes no sign-in in this state; who asked was not checked, and neither were the images.");
        }
        else if (ImageTrouble.Count > 0)
        {
            output.Wrapped(string.Empty, string.Create(CultureInfo.InvariantCulture, $"OF {Images} IMAGES {ImageTrouble.Count} ARE MISSING OR ALTERED:"));
            foreach (string line in ImageTrouble)
            {
                output.Wrapped("  ", line);
            }
        }
        else if (Images > 0)
        {
            output.Wrapped(string.Empty, string.Create(CultureInfo.InvariantCulture, $"All {Images} images lie beside it as they were taken in."));
        }

        if (!Whole)
        {
            output.Wrapped(string.Empty, "Next: keep the file as it is, `record recover` the intact part into a new file, or `record restore` a backup.");
        }
    }
}
