namespace Cavaxis.Course.Patients;

/// <summary>A file from which readings were taken into the record.</summary>
/// <param name="FileSha256">Its SHA-256 in small hexadecimal.</param>
/// <param name="FileName">Its name as first given; null where none was.</param>
/// <param name="RowsStanding">Rows of it that stand in the record.</param>
/// <param name="RowsDeclared">Rows that were taken in, by what the first of them says.</param>
/// <param name="From">Time of its first row.</param>
/// <param name="To">Time of its last row.</param>
public sealed record ImportedFile(string FileSha256, string? FileName, int RowsStanding, int RowsDeclared, DateTimeOffset From, DateTimeOffset To);
