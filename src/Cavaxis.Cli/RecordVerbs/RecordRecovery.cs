using System.Globalization;
using Cavaxis.Cli.Output;
using Cavaxis.Records.Keeping;

namespace Cavaxis.Cli.RecordVerbs;

/// <summary>What was recovered, as JSON and words.</summary>
/// <param name="Whole">True where every event was there and an anchor says that there were no more.</param>
/// <param name="Kept">Events in the new record.</param>
/// <param name="BrokenAt">Place of the first break; null for none.</param>
/// <param name="Loose">Events beyond the break that hold together in themselves; a person decides what to enter again.</param>
/// <param name="Lost">Places that held an event that cannot be given.</param>
/// <param name="EndIsKnown">True where an anchor tells how many there were.</param>
public sealed record RecordRecovery(bool Whole, long Kept, long? BrokenAt, IReadOnlyList<EventSheet> Loose, IReadOnlyList<string> Lost, bool EndIsKnown)
{
    /// <summary>Of a report.</summary>
    /// <param name="report">The report.</param>
    /// <returns>The same for people.</returns>
    public static RecordRecovery Of(RecoveryReport report)
    {
        ArgumentNullException.ThrowIfNull(report);
        return new(
            report.Break is null && report.Loose.Count == 0 && report.Lost.Count == 0, report.Kept.Position, report.Break?.Position,
            [.. report.Loose.Select(EventSheet.Of)], [.. report.Lost.Select(static r => r.ToString())], report.EndIsKnown);
    }

    /// <summary>Writes it in words.</summary>
    /// <param name="output">Where to.</param>
    /// <param name="place">Where the new record is.</param>
    /// <param name="keeper">Who has a password there.</param>
    public void Write(CommandOutput output, string place, string keeper)
    {
        ArgumentNullException.ThrowIfNull(output);
        output.Wrapped(string.Empty, string.Create(CultureInfo.InvariantCulture, $"{Kept} events recovered to {place}; {keeper} has the new password, everyone else needs one (`people password`)."));
        if (BrokenAt is long place0)
        {
            output.Wrapped(string.Empty, string.Create(CultureInfo.InvariantCulture, $"The damaged chain is first broken at event {place0}."));
        }

        if (Lost.Count > 0)
        {
            output.Wrapped("Lost places: ", string.Join(", ", Lost));
        }

        if (Loose.Count > 0)
        {
            output.Wrapped(string.Empty, string.Create(CultureInfo.InvariantCulture, $"{Loose.Count} events beyond the break hold together but nothing links them; they are not in the new record. --json prints them."));
        }

        if (!EndIsKnown)
        {
            output.Wrapped(string.Empty, "No line kept elsewhere was given: events cut off at the end would not be noticed.");
        }
    }
}
