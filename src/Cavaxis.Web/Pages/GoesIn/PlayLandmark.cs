namespace Cavaxis.Web.Pages.GoesIn;

/// <summary>A named place in the drawing.</summary>
/// <param name="Name">Its name.</param>
/// <param name="X">To the patient's left, mm.</param>
/// <param name="Y">To the patient's back, mm.</param>
/// <param name="Z">To the patient's head, mm.</param>
public sealed record PlayLandmark(string Name, double X, double Y, double Z);
