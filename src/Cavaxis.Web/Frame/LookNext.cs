namespace Cavaxis.Web.Frame;

/// <summary>A next step that one can click.</summary>
/// <param name="Words">What to look at, and why.</param>
/// <param name="Address">Where it leads: an address of this workspace.</param>
public sealed record LookNext(string Words, string Address);
