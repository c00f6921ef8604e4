using Cavaxis.Course.Events;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Course.Imports;

/// <summary>What a file of monitor or circuit data holds. Nothing of it is in a record until a person has seen the faults and accepted the rows that are good.</summary>
/// <param name="FileName">Name of the file, printable.</param>
/// <param name="FileSha256">SHA-256 of its bytes in small hexadecimal, by which the same file coming twice is known.</param>
/// <param name="RowsRead">Rows that were read, good or bad; the header and empty lines do not count.</param>
/// <param name="Good">The rows that are good, in the order of the file.</param>
/// <param name="Faults">What is wrong, with line and number of the column; the first <see cref="MostFaults"/>.</param>
/// <param name="FaultCount">How many faults there are in all.</param>
public sealed record ObservationImport(
    string FileName, string FileSha256, int RowsRead, IReadOnlyList<ImportRow> Good, IReadOnlyList<InputFault> Faults, int FaultCount)
{
    /// <summary>Most faults that are listed one by one.</summary>
    public const int MostFaults = 500;

    /// <summary>A good row as an event; the time of the row is the time at which the event occurred.</summary>
    /// <param name="row">One of <see cref="Good"/>.</param>
    /// <returns>The event.</returns>
    public Observed EventOf(ImportRow row)
    {
        ArgumentNullException.ThrowIfNull(row);
        return new Observed { Readings = row.Readings, Import = new ImportOrigin { FileSha256 = FileSha256, Rows = Good.Count, Line = row.Line, FileName = FileName } };
    }
}
