namespace Cavaxis.Web.Shelf;

/// <summary>One line of a patient's history.</summary>
/// <param name="Number">Number of the version.</param>
/// <param name="SavedAt">When it was saved.</param>
/// <param name="Change">What was changed.</param>
public sealed record VersionNote(long Number, DateTimeOffset SavedAt, string Change);
