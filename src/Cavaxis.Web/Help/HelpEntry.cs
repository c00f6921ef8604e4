namespace Cavaxis.Web.Help;

/// <summary>The explanation of one number that the workspace shows.</summary>
/// <param name="Key">What pages call it by.</param>
/// <param name="Title">Its name.</param>
/// <param name="Explanation">What it is, in plain words.</param>
/// <param name="Equation">How it is computed.</param>
/// <param name="Source">Where equation and numbers come from, and how sure that is.</param>
/// <param name="Page">Page of docs/models that has the whole of it.</param>
/// <param name="Quote">Words of that page, which keep explanation and page together.</param>
public sealed record HelpEntry(string Key, string Title, string Explanation, string Equation, string Source, string Page, string Quote);
