using Cavaxis.Planning.Json;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Planning.Case;

/// <summary>Reads a case file and reports everything wrong with it at once.</summary>
public static class CaseFileReader
{
    /// <summary>Largest case file read, bytes (4 MiB).</summary>
    public const int LargestFileBytes = PositionedJson.LargestBytes;

    /// <summary>Title of the published schema, docs/case.schema.json.</summary>
    public const string SchemaTitle = "Cavaxis case";

    private const string VersionField = "cavaxisCase";

    /// <summary>Reads a case.</summary>
    /// <param name="utf8">The bytes of the file.</param>
    /// <param name="name">Name of the file, shown where the whole file is meant.</param>
    /// <returns>The case, free of faults.</returns>
    /// <exception cref="InputFaultException">The bytes are not a usable case; carries every fault, sorted by place.</exception>
    public static CaseFile Read(ReadOnlySpan<byte> utf8, string name = "case file")
    {
        FaultLedger ledger = new(InputFault.Shown(name));
        PositionedValue? root = PositionedJson.Read(utf8, ledger);
        if (root is null || IsOtherVersion(root, ledger))
        {
            throw new InputFaultException(ledger.Sorted());
        }

        CaseFile file = RecordBinder<CaseFile>.Bind(root, ledger);
        CaseConsistency.Check(file, ledger);
        return ledger.IsClean ? file : throw new InputFaultException(ledger.Sorted());
    }

    /// <summary>Reads a case from a stream, at most one byte beyond <see cref="LargestFileBytes"/>.</summary>
    /// <param name="stream">A readable stream; left open.</param>
    /// <param name="name">Name of the file, shown where the whole file is meant.</param>
    /// <returns>The case, free of faults.</returns>
    /// <exception cref="InputFaultException">The stream cannot be read, is too large or is not a usable case.</exception>
    public static CaseFile ReadStream(Stream stream, string name)
    {
        ArgumentNullException.ThrowIfNull(stream);
        using MemoryStream bytes = new();
        byte[] chunk = new byte[64 * 1024];
        try
        {
            int wanted;
            int got;
            do
            {
                wanted = (int)Math.Min(chunk.Length, LargestFileBytes + 1 - bytes.Length);
                got = stream.Read(chunk, 0, wanted);
                bytes.Write(chunk, 0, got);
            }
            while (got > 0 && bytes.Length <= LargestFileBytes);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new InputFaultException(new InputFault(
                FaultCode.UnreadableFile, InputFault.Shown(name), "unreadable", "a file that can be read to its end",
                "Check the disk or connection and the permissions, then try again."));
        }

        if (bytes.Length > LargestFileBytes)
        {
            FaultLedger ledger = new(InputFault.Shown(name));
            PositionedJson.AddTooLarge(ledger, "larger than that");
            throw new InputFaultException(ledger.Sorted());
        }

        return Read(bytes.GetBuffer().AsSpan(0, (int)bytes.Length), name);
    }

    /// <summary>The schema of the case file, as docs/case.schema.json publishes it.</summary>
    public static string Schema() => SchemaWriter.Input<CaseFile>(SchemaTitle);

    // Another version may call everything else differently, so nothing else in the file is judged.
    private static bool IsOtherVersion(PositionedValue root, FaultLedger ledger)
    {
        PositionedValue? version = root.Members.FirstOrDefault(static m => m.Name == VersionField)?.Value;
        if (version is not { Kind: JsonKind.Number, IsFaulty: false } || version.Number.Equals(CaseFile.CurrentVersion) || !double.IsInteger(version.Number))
        {
            return false;
        }

        ledger.Add(
            FaultCode.UnsupportedVersion, VersionField, version.Shown, NumberWords.Of(CaseFile.CurrentVersion),
            "Use a program that reads this version, or rewrite the case in the accepted one.", version.Place);
        return true;
    }
}
