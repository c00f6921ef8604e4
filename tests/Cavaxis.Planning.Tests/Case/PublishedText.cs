namespace Cavaxis.Planning.Tests.Case;

/// <summary>
/// Compares a published file under docs with what the types give. With CAVAXIS_WRITE_DOCS=1 in the environment it writes
/// the file instead, and the change shows in the version history.
/// </summary>
public static class PublishedText
{
    public static void Check(string name, Func<string, string> expected)
    {
        string path = Path.Combine(RepositoryFolder.Docs, name);
        string found = File.Exists(path) ? File.ReadAllText(path) : string.Empty;
        string wanted = expected(found);
        if (Environment.GetEnvironmentVariable("CAVAXIS_WRITE_DOCS") == "1")
        {
            File.WriteAllText(path, wanted);
            found = wanted;
        }

        Assert.Equal(wanted, found);
    }

    /// <summary>The text with the part between two marks replaced.</summary>
    public static string Between(string text, string start, string end, string part)
    {
        int from = text.IndexOf(start, StringComparison.Ordinal);
        int to = text.IndexOf(end, StringComparison.Ordinal);
        Assert.True(from >= 0 && to > from, $"The marks {start} and {end} are missing.");
        return string.Concat(text.AsSpan(0, from + start.Length), "\n", part, text.AsSpan(to));
    }
}
