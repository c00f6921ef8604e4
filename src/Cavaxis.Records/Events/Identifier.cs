using System.Text.RegularExpressions;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Records.Events;

/// <summary>A name that stands in the record for a person or a thing: 1 to 64 plain letters, digits, points, dashes and underscores.</summary>
public sealed partial record Identifier
{
    private Identifier(string text) => Text = text;

    /// <summary>The name.</summary>
    public string Text { get; }

    /// <summary>Takes a text as a name.</summary>
    /// <param name="text">The text.</param>
    /// <param name="field">What the name is for, in faults.</param>
    /// <returns>The name.</returns>
    /// <exception cref="InputFaultException">Not of the accepted form.</exception>
    public static Identifier Of(string text, string field = "identifier")
    {
        ArgumentNullException.ThrowIfNull(text);
        return IsOne(text)
            ? new Identifier(text)
            : throw new InputFaultException(new InputFault(
                FaultCode.WrongLength, field, InputFault.Shown(text), "1 to 64 letters a-z A-Z, digits, '.', '_' or '-', the first a letter or digit", "Use such a name."));
    }

    /// <summary>True for a text of the accepted form.</summary>
    /// <param name="text">The text.</param>
    /// <returns>Whether it is one.</returns>
    public static bool IsOne(string text) => Form().IsMatch(text);

    /// <inheritdoc/>
    public override string ToString() => Text;

    [GeneratedRegex(@"\A[A-Za-z0-9][A-Za-z0-9._-]{0,63}\z", RegexOptions.CultureInvariant)]
    private static partial Regex Form();
}
