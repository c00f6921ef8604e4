using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using System.Text.Unicode;
using Cavaxis.Course.Observations;
using Cavaxis.Quantities.Faults;
using CsvHelper;

namespace Cavaxis.Course.Imports;

/// <summary>
/// Reads files of monitor and circuit data: a header with <c>time</c> and keys of <see cref="QuantityTable"/>, then a row a time. Separated by commas with
/// decimal points, or by semicolons with decimal commas or points. An empty cell was not read. A row with a bad cell is not good; its faults say why.
/// </summary>
public static class ObservationCsv
{
    /// <summary>Largest file, bytes.</summary>
    public const int LargestBytes = 16 * 1024 * 1024;

    /// <summary>Most rows.</summary>
    public const int MostRows = 200_000;

    private const int LongestRow = 20_000;

    /// <summary>Reads a file. It never throws for what is in it: everything wrong is a fault.</summary>
    /// <param name="file">The bytes.</param>
    /// <param name="name">Name of the file.</param>
    /// <param name="offset">Offset from UTC of times that give none, such as that of the monitor's clock; null where there are none.</param>
    /// <returns>Rows and faults.</returns>
    public static ObservationImport Read(ReadOnlySpan<byte> file, string name, TimeSpan? offset = null)
    {
        ArgumentNullException.ThrowIfNull(name);
        string shown = InputFault.Shown(name);
        string hash = Convert.ToHexStringLower(SHA256.HashData(file));
        FaultCounter faults = new();
        List<ImportRow> good = [];
        int rows = 0;
        if (Text(file, shown, faults) is string text)
        {
            rows = Rows(text, shown, offset, good, faults);
        }

        // A file that ran over its bounds is not to be taken in by half.
        return new ObservationImport(shown, hash, rows, rows > MostRows ? [] : good, faults.Kept, faults.Count);
    }

    private static string? Text(ReadOnlySpan<byte> file, string name, FaultCounter faults)
    {
        if (file.Length > LargestBytes)
        {
            faults.Add(new InputFault(FaultCode.FileTooLarge, name, string.Create(CultureInfo.InvariantCulture, $"{file.Length} bytes"), "at most 16 MiB", "Split the file, or thin out its rows."));
            return null;
        }

        if (file.StartsWith(Encoding.UTF8.Preamble))
        {
            file = file[Encoding.UTF8.Preamble.Length..];
        }

        if (!Utf8.IsValid(file) || file.Contains((byte)0))
        {
            faults.Add(new InputFault(FaultCode.WrongEncoding, name, "other bytes", "UTF-8 text", "Save the file as CSV in UTF-8."));
            return null;
        }

        if (file.Trim(" \t\r\n"u8).IsEmpty)
        {
            faults.Add(new InputFault(FaultCode.MissingField, name, "empty", "a header and rows", "Check that the right file was given."));
            return null;
        }

        return Encoding.UTF8.GetString(file);
    }

    private static int Rows(string text, string name, TimeSpan? offset, List<ImportRow> good, FaultCounter faults)
    {
        char separator = Separator(text);
        using CsvReader reader = CsvReader.FromText(text, new CsvReaderOptions
        {
            HasHeader = false,
            Separator = separator,
            MalformedData = CsvMalformedDataHandling.Throw,
            SkipEmptyLines = true,
            TrimWhitespace = true,
            TrackLineNumbers = true,
            MaxRecordSize = LongestRow,
        });
        ImportHeader? header = null;
        int rows = 0;
        int line = 1;
        try
        {
            while (reader.Read())
            {
                string[] cells = reader.Current.ToArray();
                line = (int)reader.LineNumber;
                if (header is null)
                {
                    header = ImportHeader.Of(cells, faults);
                    if (header is null)
                    {
                        return rows;
                    }
                }
                else if (++rows > MostRows)
                {
                    faults.Add(new InputFault(FaultCode.FileTooLarge, name, $"more than {MostRows} rows", $"at most {MostRows} rows", "Split the file, or thin out its rows.", line, 1));
                    return rows;
                }
                else if (Row(cells, header, separator, offset, line, faults) is ImportRow row)
                {
                    good.Add(row);
                }
            }
        }
        catch (CsvFormatException fault)
        {
            faults.Add(new InputFault(
                FaultCode.MalformedText, name, "text that is no table", "separated values, quotes in pairs, rows of at most 20 000 characters",
                "Correct the quotes in this line; nothing behind it was read.", Math.Max(line, (int)fault.LineNumber), 1));
        }

        return rows;
    }

    private static char Separator(string text)
    {
        int end = text.AsSpan().IndexOfAny('\r', '\n');
        return (end < 0 ? text : text[..end]).Contains(';', StringComparison.Ordinal) ? ';' : ',';
    }

    private static ImportRow? Row(string[] cells, ImportHeader header, char separator, TimeSpan? offset, int line, FaultCounter faults)
    {
        if (cells.Length != header.Quantities.Count)
        {
            faults.Add(new InputFault(
                FaultCode.MalformedText, "row", string.Create(CultureInfo.InvariantCulture, $"{cells.Length} cells"),
                string.Create(CultureInfo.InvariantCulture, $"{header.Quantities.Count} cells, as the header has"), "Give each column a cell, empty where nothing was read.", line, 1));
            return null;
        }

        int before = faults.Count;
        DateTimeOffset? at = TimeCell.Of(cells[header.Time], offset, out bool needsOffset);
        if (at is null)
        {
            faults.Add(new InputFault(
                FaultCode.MalformedText, "time", CellWords.Shown(cells[header.Time]), needsOffset ? "a time with its offset from UTC, such as 2031-02-03T04:05:06+01:00" : "date and time (ISO 8601), such as 2031-02-03T04:05:06+01:00",
                needsOffset ? "Give the offset of the file's clock." : "Write year, month, day, T, hours, minutes.", line, header.Time + 1));
        }

        List<Reading> readings = [];
        for (int i = 0; i < cells.Length; i++)
        {
            if (header.Quantities[i] is QuantityDefinition of && cells[i].Length > 0 && Value(cells[i], of, separator, line, i + 1, faults) is double value)
            {
                readings.Add(Reading.Of(of.Quantity, value));
            }
        }

        if (faults.Count == before && readings.Count == 0)
        {
            faults.Add(new InputFault(FaultCode.MissingField, "row", "(nothing)", "at least one reading", "Remove the row.", line, 1));
        }

        return faults.Count == before ? new ImportRow(line, at!.Value, readings) : null;
    }

    private static double? Value(string cell, QuantityDefinition of, char separator, int line, int column, FaultCounter faults)
    {
        string point = separator == ';' ? cell.Replace(',', '.') : cell;
        if (!double.TryParse(point, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double value) || !double.IsFinite(value))
        {
            faults.Add(new InputFault(
                FaultCode.WrongKind, of.Key, CellWords.Shown(cell), separator == ';' ? "a number with a decimal comma or point" : "a number with a decimal point",
                "Write a bare number, or leave the cell empty where nothing was read.", line, column));
            return null;
        }

        if (QuantityTable.Check(of.Quantity, value, of.Key) is InputFault fault)
        {
            faults.Add(fault with { Line = line, Column = column });
            return null;
        }

        return value;
    }
}
