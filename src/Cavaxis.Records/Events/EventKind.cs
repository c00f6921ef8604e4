using System.Text.RegularExpressions;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Records.Events;

/// <summary>What happened: words in small letters joined by points, such as <c>observation.saturation</c>.</summary>
public sealed partial record EventKind
{
    private EventKind(string text) => Text = text;

    /// <summary>Takes an event back as entered in error; its payload carries the reason.</summary>
    public static EventKind Withdrawn { get; } = new("record.withdrawn");

    /// <summary>The words.</summary>
    public string Text { get; }

    /// <summary>Takes a text as a kind.</summary>
    /// <param name="text">The text.</param>
    /// <returns>The kind.</returns>
    /// <exception cref="InputFaultException">Not of the accepted form.</exception>
    public static EventKind Of(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return text.Length <= 64 && Form().IsMatch(text)
            ? new EventKind(text)
            : throw new InputFaultException(new InputFault(
                FaultCode.WrongLength, "kind", InputFault.Shown(text), "two or more words of a-z, 0-9 and '-' joined by points, at most 64 letters", "Name it like observation.saturation."));
    }

    /// <inheritdoc/>
    public override string ToString() => Text;

    [GeneratedRegex(@"\A[a-z][a-z0-9-]*(\.[a-z][a-z0-9-]*)+\z", RegexOptions.CultureInvariant)]
    private static partial Regex Form();
}
