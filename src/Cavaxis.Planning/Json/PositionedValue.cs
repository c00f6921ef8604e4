using System.Globalization;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Planning.Json;

/// <summary>A JSON value with the place it stands at.</summary>
public sealed class PositionedValue
{
    private PositionedValue(JsonKind kind, TextPlace place) => (Kind, Place) = (kind, place);

    /// <summary>Kind of the value.</summary>
    public JsonKind Kind { get; }

    /// <summary>Where its first character stands.</summary>
    public TextPlace Place { get; }

    /// <summary>Content of a text; a number, flag or null as written; empty for lists and objects.</summary>
    public string Text { get; private init; } = string.Empty;

    /// <summary>The number; infinite where the digits written are beyond a double. Zero for other kinds.</summary>
    public double Number { get; private init; }

    /// <summary>The flag; false for other kinds.</summary>
    public bool Flag { get; private init; }

    /// <summary>True when a fault has been reported for this value already, so that its content must not be judged again.</summary>
    public bool IsFaulty { get; private init; }

    /// <summary>Entries of a list; empty for other kinds.</summary>
    public IReadOnlyList<PositionedValue> Items { get; private init; } = [];

    /// <summary>Fields of an object in the order written, each name once; empty for other kinds.</summary>
    public IReadOnlyList<PositionedMember> Members { get; private init; } = [];

    /// <summary>The value as a fault shows it: short, printable, telling its kind.</summary>
    public string Shown => Kind switch
    {
        JsonKind.Text => $"\"{InputFault.Shown(Text)}\"",
        JsonKind.List => string.Create(CultureInfo.InvariantCulture, $"a list of {Items.Count}"),
        JsonKind.Object => string.Create(CultureInfo.InvariantCulture, $"an object of {Members.Count} {(Members.Count == 1 ? "field" : "fields")}"),
        _ => InputFault.Shown(Text),
    };

    internal static PositionedValue OfNull(TextPlace place) => new(JsonKind.Null, place) { Text = "null" };

    internal static PositionedValue OfFlag(bool flag, TextPlace place) =>
        new(JsonKind.Flag, place) { Text = flag ? "true" : "false", Flag = flag };

    internal static PositionedValue OfNumber(double number, string written, TextPlace place, bool faulty) =>
        new(JsonKind.Number, place) { Text = written, Number = number, IsFaulty = faulty };

    internal static PositionedValue OfText(string text, TextPlace place, bool faulty) =>
        new(JsonKind.Text, place) { Text = text, IsFaulty = faulty };

    internal static PositionedValue OfList(IReadOnlyList<PositionedValue> items, TextPlace place) =>
        new(JsonKind.List, place) { Items = items };

    internal static PositionedValue OfObject(IReadOnlyList<PositionedMember> members, TextPlace place) =>
        new(JsonKind.Object, place) { Members = members };
}
