namespace Cavaxis.Cli.SheetVerbs;

/// <summary>A file that was written, as JSON.</summary>
/// <param name="File">Its path as given.</param>
/// <param name="Bytes">Its size.</param>
/// <param name="Count">Entries of the record for a sheet or report, resources for a bundle, rows for a table.</param>
/// <param name="Unread">Entries that could not be read, for a table courses with such entries; the file says so, or leaves them out.</param>
public sealed record SheetWritten(string File, int Bytes, long Count, int Unread);
