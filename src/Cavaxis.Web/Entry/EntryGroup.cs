namespace Cavaxis.Web.Entry;

/// <summary>A part of the entry that is asked for together.</summary>
/// <param name="Key">What addresses call it.</param>
/// <param name="Title">Heading.</param>
/// <param name="Meaning">What it holds.</param>
/// <param name="Rows">Its fields in rows.</param>
public sealed record EntryGroup(string Key, string Title, string Meaning, IReadOnlyList<EntryRow> Rows)
{
    /// <summary>All fields of all rows.</summary>
    public IEnumerable<EntryField> Fields => Rows.SelectMany(static r => r.Fields);
}
