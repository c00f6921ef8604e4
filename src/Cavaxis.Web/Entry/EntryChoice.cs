namespace Cavaxis.Web.Entry;

/// <summary>One of the answers that a field offers.</summary>
/// <param name="Value">What is saved.</param>
/// <param name="Words">What people read.</param>
public sealed record EntryChoice(string Value, string Words);
