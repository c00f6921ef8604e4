namespace Cavaxis.Web.Entry;

/// <summary>Fields that belong together under one name, such as one vessel on one side.</summary>
/// <param name="Name">Name; empty where the fields stand alone.</param>
/// <param name="Fields">The fields.</param>
public sealed record EntryRow(string Name, IReadOnlyList<EntryField> Fields);
