namespace Cavaxis.Web.Pages.GoesIn;

/// <summary>The wire of one sampled anatomy among all points of them.</summary>
/// <param name="Start">Its first point.</param>
/// <param name="Count">How many points it has.</param>
/// <param name="Astray">True where it does not end in its usual place.</param>
public sealed record PlayLine(int Start, int Count, bool Astray);
