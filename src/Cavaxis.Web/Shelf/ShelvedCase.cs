namespace Cavaxis.Web.Shelf;

/// <summary>One patient on the shelf, as the list shows it.</summary>
/// <param name="Id">Identifier, as it stands in addresses.</param>
/// <param name="Title">Title of the newest version; empty where the case has none.</param>
/// <param name="Invented">True when the case says that it is invented.</param>
/// <param name="Version">Number of the newest version.</param>
/// <param name="SavedAt">When that version was saved.</param>
public sealed record ShelvedCase(string Id, string Title, bool Invented, long Version, DateTimeOffset SavedAt);
