using System.Globalization;
using Cavaxis.Quantities.Faults;
using Cavaxis.Records.Events;

namespace Cavaxis.Records.Chain;

/// <summary>
/// The end of a chain as one line to print, file or read out. Whoever holds the whole file can compute a new chain over changed
/// events; they cannot make it pass a line that is kept elsewhere.
/// </summary>
/// <param name="Head">The end of the chain at that moment.</param>
/// <param name="TakenAt">When the line was taken, UTC.</param>
public sealed record ChainAnchor(ChainHead Head, DateTimeOffset TakenAt)
{
    private const string Word = "cavaxis-anchor-1";

    /// <summary>The line: word, number of events, hash, time.</summary>
    public string Line => string.Create(
        CultureInfo.InvariantCulture, $"{Word} {Head.Position} {Head.Hash.Hex} {TakenAt.ToUniversalTime():yyyy-MM-dd'T'HH:mm:ss'Z'}");

    /// <summary>Reads a line.</summary>
    /// <param name="line">The line; blanks around it do no harm.</param>
    /// <returns>The anchor.</returns>
    /// <exception cref="InputFaultException">Not such a line.</exception>
    public static ChainAnchor Parse(string line)
    {
        ArgumentNullException.ThrowIfNull(line);
        string[] parts = line.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries);
        return parts.Length == 4 && parts[0] == Word
            && long.TryParse(parts[1], NumberStyles.None, CultureInfo.InvariantCulture, out long position)
            && EventHash.Parse(parts[2]) is EventHash hash
            && DateTimeOffset.TryParseExact(parts[3], "yyyy-MM-dd'T'HH:mm:ss'Z'", CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal, out DateTimeOffset time)
            ? new ChainAnchor(new ChainHead(position, hash), time)
            : throw new InputFaultException(new InputFault(
                FaultCode.MalformedText, "anchor", InputFault.Shown(line), "the four words of a line that this program printed", "Copy the whole line."));
    }

    /// <inheritdoc/>
    public override string ToString() => Line;
}
