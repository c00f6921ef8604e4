using Cavaxis.Records.Faults;
using Microsoft.Data.Sqlite;

namespace Cavaxis.Records.Engines;

/// <summary>Turns what SQLite refuses into a fault that a person can act on. Result codes: SQLite documentation, "Result and Error Codes".</summary>
internal static class SqliteFault
{
    private const int Error = 1;
    private const int Busy = 5;
    private const int Locked = 6;
    private const int ReadOnly = 8;
    private const int InputOutput = 10;
    private const int Corrupt = 11;
    private const int Full = 13;
    private const int CannotOpen = 14;
    private const int Constraint = 19;
    private const int NotADatabase = 26;

    /// <summary>The fault for a refusal.</summary>
    /// <param name="refusal">What SQLite said; null for none.</param>
    /// <returns>The exception to throw in its place; null for null and for what only a mistake in this program can raise.</returns>
    public static StoreFaultException? Of(SqliteException? refusal)
    {
        StoreFault? fault = refusal?.SqliteErrorCode switch
        {
            Error => new(StoreFaultCode.NotAStore, "the tables are not those of a store, or the list of tables is damaged", "a file that this program made", "Name another file, recover this one or restore a backup."),
            Busy or Locked => new(StoreFaultCode.Busy, "another program holds the file", "a file that no other program has locked for long", "Close the other program and try again."),
            ReadOnly => new(StoreFaultCode.ReadOnly, "the file may not be written", "a file and folder you may write to", "Check permissions."),
            InputOutput => new(StoreFaultCode.DiskFailed, "the disk did not take or give the data", "a disk with room that can be read and written", "Check room and disk; all that was acknowledged is kept."),
            Corrupt => new(StoreFaultCode.Damaged, "the file is damaged", "a file as this program wrote it", "Put the file aside, verify it, recover the intact part or restore a backup."),
            Full => new(StoreFaultCode.DiskFull, "no room is left on the disk", "room on the disk", "Make room and enter the last value again; all that was acknowledged is kept."),
            CannotOpen => new(StoreFaultCode.CannotOpen, "the file cannot be opened", "a folder that exists and that you may write to", "Check the path."),
            Constraint => new(StoreFaultCode.AppendOnly, "an event would be changed, deleted or put out of order", "new events at the end", "Enter a correction as a new event."),
            NotADatabase => new(StoreFaultCode.NotAStore, "the file is no database, or its first page is damaged", "a file that this program made", "Name another file, recover this one or restore a backup."),
            _ => null,
        };
        return fault is null ? null : new StoreFaultException(fault, refusal);
    }
}
