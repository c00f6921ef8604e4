using Cavaxis.Records.Events;

namespace Cavaxis.Records.Chain;

/// <summary>Names read once and used for every row that has them: many rows have few names.</summary>
internal sealed class EventNames
{
    private readonly Dictionary<string, StreamName> streams = new(StringComparer.Ordinal);
    private readonly Dictionary<string, EventKind> kinds = new(StringComparer.Ordinal);
    private readonly Dictionary<string, Identifier> people = new(StringComparer.Ordinal);

    /// <summary>The stream of a text.</summary>
    /// <param name="text">As kept.</param>
    /// <returns>The name.</returns>
    public StreamName Stream(string text) => Once(streams, text, StreamName.Of);

    /// <summary>The kind of a text.</summary>
    /// <param name="text">As kept.</param>
    /// <returns>The kind.</returns>
    public EventKind Kind(string text) => Once(kinds, text, EventKind.Of);

    /// <summary>The person of a text.</summary>
    /// <param name="text">As kept.</param>
    /// <returns>The name.</returns>
    public Identifier Who(string text) => Once(people, text, static t => Identifier.Of(t, "who"));

    private static T Once<T>(Dictionary<string, T> known, string text, Func<string, T> read)
    {
        if (!known.TryGetValue(text, out T? name))
        {
            known[text] = name = read(text);
        }

        return name;
    }
}
