using System.Reflection;
using Cavaxis.Planning.Json;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Planning.Rules;

/// <summary>Reads a rule book and holds the built-in one.</summary>
public static class RuleBookReader
{
    private const string Resource = "Cavaxis.Planning.rulebook.json";
    private static readonly Lazy<RuleBook> Embedded = new(ReadEmbedded);

    /// <summary>The built-in rule book.</summary>
    public static RuleBook BuiltIn => Embedded.Value;

    /// <summary>JSON Schema of a rule book.</summary>
    /// <returns>The schema as text.</returns>
    public static string Schema() => SchemaWriter.Input<RuleBook>("Cavaxis rule book");

    /// <summary>Reads a rule book from its bytes.</summary>
    /// <param name="utf8">UTF-8 JSON.</param>
    /// <param name="name">Name for faults of the whole file.</param>
    /// <returns>The rule book.</returns>
    /// <exception cref="InputFaultException">Every fault of the file.</exception>
    public static RuleBook Read(ReadOnlySpan<byte> utf8, string name = "rule book")
    {
        RuleBook book = Parse(utf8, name);
        if (RuleBookComparison.Loosened(book).Count > 0 && (book.ChangedBy is null || book.ChangeReason is null))
        {
            throw new InputFaultException(new InputFault(
                FaultCode.MissingField,
                "changedBy, changeReason",
                "(nothing)",
                "who changed the rule book and why, because it is looser than the built-in one",
                $"Fill in both, or tighten: {string.Join("; ", RuleBookComparison.Loosened(book))}."));
        }

        return book;
    }

    private static RuleBook Parse(ReadOnlySpan<byte> utf8, string name)
    {
        FaultLedger ledger = new(name);
        PositionedValue? root = PositionedJson.Read(utf8, ledger);
        RuleBook? book = root is null ? null : RecordBinder<RuleBook>.Bind(root, ledger);
        if (book is not null && ledger.IsClean)
        {
            Check(book, ledger);
        }

        return ledger.IsClean && book is not null ? book : throw new InputFaultException(ledger.Sorted());
    }

    private static void Check(RuleBook book, FaultLedger ledger)
    {
        foreach (LimitName limit in Enum.GetValues<LimitName>())
        {
            int count = book.Limits.Count(rule => rule.Name == limit);
            if (count != 1)
            {
                ledger.Add(
                    count == 0 ? FaultCode.MissingField : FaultCode.DuplicateField, "limits", JsonName.Of(limit.ToString()),
                    "every limit exactly once", "Copy the missing limit from the built-in rule book, or drop the second.", ledger.PlaceOf("limits"));
            }
        }

        foreach (IGrouping<string, string> group in book.Zones.Select(zone => zone.Id)
            .Concat(book.Findings.Select(finding => finding.Id)).GroupBy(id => id, StringComparer.Ordinal).Where(g => g.Count() > 1))
        {
            ledger.Add(
                FaultCode.DuplicateField, "zones, findings", InputFault.Shown(group.Key), "every id once", "Give each rule its own id.", ledger.PlaceOf("zones"));
        }

        for (int i = 0; i < book.Zones.Count; i++)
        {
            ZoneRule zone = book.Zones[i];
            if (zone.Part != PortPart.Tip && zone.Port is null)
            {
                ledger.Add(
                    FaultCode.MissingField, $"zones[{i}].port", "(nothing)", "the name of a hole group, unless the part is the tip",
                    "Name the port; without one no device could ever meet the rule.", ledger.PlaceOf($"zones[{i}]"));
            }
        }

        for (int i = 0; i < book.Criteria.Count; i++)
        {
            CriterionRule criterion = book.Criteria[i];
            if (criterion.Worst == criterion.Best || book.Criteria.Take(i).Any(other => other.Name == criterion.Name))
            {
                ledger.Add(
                    FaultCode.Contradiction, $"criteria[{i}]", JsonName.Of(criterion.Name.ToString()),
                    "each criterion once, with worst and best apart", "Correct the scale or drop the repetition.", ledger.PlaceOf($"criteria[{i}]"));
            }
        }
    }

    private static RuleBook ReadEmbedded()
    {
        using Stream stream = Assembly.GetExecutingAssembly().GetManifestResourceStream(Resource)
            ?? throw new InvalidOperationException($"The assembly lacks its resource {Resource}.");
        using MemoryStream memory = new();
        stream.CopyTo(memory);
        return Parse(memory.ToArray(), Resource);
    }
}
