namespace Cavaxis.EndToEnd.Tests.Workspace;

/// <summary>Words as they are found on paper.</summary>
internal static class PaperText
{
    /// <summary>Without spaces, and with the letters of ligatures apart: paper has "fi" as one sign.</summary>
    public static string Bare(string words) => string.Concat(words.Where(static c => !char.IsWhiteSpace(c)))
        .Replace("\uFB03", "ffi", StringComparison.Ordinal).Replace("\uFB00", "ff", StringComparison.Ordinal)
        .Replace("\uFB01", "fi", StringComparison.Ordinal).Replace("\uFB02", "fl", StringComparison.Ordinal);
}
