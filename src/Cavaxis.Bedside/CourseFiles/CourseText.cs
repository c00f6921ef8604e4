namespace Cavaxis.Bedside.CourseFiles;

/// <summary>An export as text.</summary>
/// <param name="Text">The text.</param>
/// <param name="Count">Resources of a bundle, or rows of a table.</param>
/// <param name="Unread">Entries that could not be read and are not in it.</param>
public sealed record CourseText(string Text, int Count, int Unread);
