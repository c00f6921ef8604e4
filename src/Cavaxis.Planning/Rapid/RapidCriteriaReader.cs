using System.Reflection;
using Cavaxis.Planning.Json;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Planning.Rapid;

/// <summary>Reads a file of criteria and holds the built-in one.</summary>
public static class RapidCriteriaReader
{
    private const string Resource = "Cavaxis.Planning.rapid-criteria.json";
    private static readonly Lazy<RapidCriteria> Embedded = new(ReadEmbedded);

    /// <summary>The built-in criteria.</summary>
    public static RapidCriteria BuiltIn => Embedded.Value;

    /// <summary>JSON Schema of a file of criteria.</summary>
    /// <returns>The schema as text.</returns>
    public static string Schema() => SchemaWriter.Input<RapidCriteria>("Cavaxis rapid criteria");

    /// <summary>Reads a file of criteria from its bytes.</summary>
    /// <param name="utf8">UTF-8 JSON.</param>
    /// <param name="name">Name for faults of the whole file.</param>
    /// <returns>The criteria.</returns>
    /// <exception cref="InputFaultException">Every fault of the file.</exception>
    public static RapidCriteria Read(ReadOnlySpan<byte> utf8, string name = "rapid criteria")
    {
        RapidCriteria criteria = Parse(utf8, name);
        IReadOnlyList<string> changes = RapidCriteriaComparison.Changes(criteria);
        return changes.Count == 0 || (criteria.ChangedBy is not null && criteria.ChangeReason is not null)
            ? criteria
            : throw new InputFaultException(new InputFault(
                FaultCode.MissingField, "changedBy, changeReason", "(nothing)", "who changed the criteria and why, because they differ from the built-in ones",
                $"Fill in both. Changed: {string.Join("; ", changes.Take(5))}{(changes.Count > 5 ? "; and more" : string.Empty)}."));
    }

    private static RapidCriteria Parse(ReadOnlySpan<byte> utf8, string name)
    {
        FaultLedger ledger = new(name);
        PositionedValue? root = PositionedJson.Read(utf8, ledger);
        RapidCriteria? criteria = root is null ? null : RecordBinder<RapidCriteria>.Bind(root, ledger);
        if (criteria is not null && ledger.IsClean)
        {
            new RapidCriteriaCheck(criteria, ledger).All();
        }

        return ledger.IsClean && criteria is not null ? criteria : throw new InputFaultException(ledger.Sorted());
    }

    private static RapidCriteria ReadEmbedded()
    {
        using Stream stream = Assembly.GetExecutingAssembly().GetManifestResourceStream(Resource)
            ?? throw new InvalidOperationException($"The assembly lacks its resource {Resource}.");
        using MemoryStream memory = new();
        stream.CopyTo(memory);
        return Parse(memory.ToArray(), Resource);
    }
}
