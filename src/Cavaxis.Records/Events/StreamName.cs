using System.Text.RegularExpressions;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Records.Events;

/// <summary>Whose events: an area and an identifier, such as <c>patient/3f2a…</c>.</summary>
public sealed partial record StreamName
{
    private StreamName(string area, Identifier id) => (Area, Id) = (area, id);

    /// <summary>Kind of thing, such as "patient" or "person".</summary>
    public string Area { get; }

    /// <summary>Which one.</summary>
    public Identifier Id { get; }

    /// <summary>The name as it is kept: area, slash, identifier.</summary>
    public string Text => $"{Area}/{Id.Text}";

    /// <summary>A stream of an area.</summary>
    /// <param name="area">1 to 24 small letters and dashes.</param>
    /// <param name="id">Which one.</param>
    /// <returns>The name.</returns>
    /// <exception cref="InputFaultException">The area is not of the accepted form.</exception>
    public static StreamName In(string area, Identifier id)
    {
        ArgumentNullException.ThrowIfNull(area);
        ArgumentNullException.ThrowIfNull(id);
        return AreaForm().IsMatch(area) ? new StreamName(area, id) : throw Refused(area);
    }

    /// <summary>Takes a text as a name.</summary>
    /// <param name="text">Area, slash, identifier.</param>
    /// <returns>The name.</returns>
    /// <exception cref="InputFaultException">Not of the accepted form.</exception>
    public static StreamName Of(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        int slash = text.IndexOf('/', StringComparison.Ordinal);
        return IsOne(text) ? new StreamName(text[..slash], Identifier.Of(text[(slash + 1)..])) : throw Refused(text);
    }

    /// <summary>True for a text of the accepted form.</summary>
    /// <param name="text">The text.</param>
    /// <returns>Whether it is one.</returns>
    public static bool IsOne(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        int slash = text.IndexOf('/', StringComparison.Ordinal);
        return slash > 0 && AreaForm().IsMatch(text[..slash]) && Identifier.IsOne(text[(slash + 1)..]);
    }

    /// <inheritdoc/>
    public override string ToString() => Text;

    private static InputFaultException Refused(string text) => new(new InputFault(
        FaultCode.WrongLength, "stream", InputFault.Shown(text), "area/identifier, the area 1 to 24 letters a-z or '-'", "Use such a name, as in patient/a1."));

    [GeneratedRegex(@"\A[a-z][a-z-]{0,23}\z", RegexOptions.CultureInvariant)]
    private static partial Regex AreaForm();
}
