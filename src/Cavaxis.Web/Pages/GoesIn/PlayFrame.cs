namespace Cavaxis.Web.Pages.GoesIn;

/// <summary>One moment for the drawing.</summary>
/// <param name="Phase">Part of the insertion.</param>
/// <param name="Start">Its first point among all points of the play.</param>
/// <param name="Count">How many points it has.</param>
/// <param name="Wire">How deep the wire lies, mm.</param>
/// <param name="Introducer">How deep the introducer lies, mm.</param>
/// <param name="Cannula">How deep the cannula lies, mm.</param>
/// <param name="Words">The moment in words.</param>
public sealed record PlayFrame(string Phase, int Start, int Count, double Wire, double Introducer, double Cannula, string Words);
