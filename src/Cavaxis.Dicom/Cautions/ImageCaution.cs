namespace Cavaxis.Dicom.Cautions;

/// <summary>Something in a file that does not stop reading it, but that whoever measures in it must know.</summary>
/// <param name="Field">What it is about, such as <c>(0020,000E) Series Instance UID</c>.</param>
/// <param name="Found">What was found.</param>
/// <param name="Meaning">What follows from it.</param>
/// <param name="Remedy">What can be done.</param>
public sealed record ImageCaution(string Field, string Found, string Meaning, string Remedy);
