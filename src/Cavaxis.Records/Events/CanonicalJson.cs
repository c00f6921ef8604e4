using System.Buffers;
using System.Text;
using System.Text.Json;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Records.Events;

/// <summary>
/// A JSON object in the one form that RFC 8785 gives it: names in the order of their UTF-16 units, no blanks, shortest numbers.
/// What is hashed is these bytes. Two texts that mean the same are the same bytes; 7.40 becomes 7.4.
/// </summary>
public sealed class CanonicalJson : IEquatable<CanonicalJson>
{
    /// <summary>Largest payload, bytes.</summary>
    public const int LargestBytes = 4 * 1024 * 1024;

    private const int Deepest = 64;
    private const string Field = "payload";

    /// <summary>Beyond it a double no longer holds every whole number (RFC 7493 section 2.2).</summary>
    private const double LargestWhole = 9007199254740992;

    private readonly byte[] bytes;

    private CanonicalJson(byte[] bytes) => this.bytes = bytes;

    /// <summary>The bytes, UTF-8.</summary>
    public ReadOnlyMemory<byte> Bytes => bytes;

    /// <summary>The text.</summary>
    public string Text => Encoding.UTF8.GetString(bytes);

    /// <summary>Brings a text into the one form.</summary>
    /// <param name="json">A JSON object.</param>
    /// <returns>The object.</returns>
    /// <exception cref="InputFaultException">Too large, not JSON, no object, a name twice, a number that would not be kept, half a character.</exception>
    public static CanonicalJson Of(string json)
    {
        ArgumentNullException.ThrowIfNull(json);
        try
        {
            return Of(new UTF8Encoding(false, true).GetBytes(json));
        }
        catch (EncoderFallbackException)
        {
            throw Refused(FaultCode.WrongEncoding, "half a character (a lone surrogate)", "whole Unicode characters", "Enter the text again.");
        }
    }

    /// <summary>Brings bytes into the one form.</summary>
    /// <param name="json">A JSON object, UTF-8.</param>
    /// <returns>The object.</returns>
    /// <exception cref="InputFaultException">Too large, not JSON, no object, a name twice, a number that would not be kept, half a character.</exception>
    public static CanonicalJson Of(ReadOnlyMemory<byte> json)
    {
        if (json.Length > LargestBytes)
        {
            throw Refused(FaultCode.FileTooLarge, "larger than 4 MiB", "at most 4 MiB", "Shorten the notes or split the entry.");
        }

        try
        {
            using JsonDocument document = JsonDocument.Parse(json, new JsonDocumentOptions { MaxDepth = Deepest, AllowDuplicateProperties = false });
            if (document.RootElement.ValueKind != JsonValueKind.Object)
            {
                throw Refused(FaultCode.WrongKind, "no JSON object", "an object in braces", "Put the entry in braces: { … }.");
            }

            ArrayBufferWriter<byte> output = new(json.Length);
            Write(document.RootElement, output);
            return new CanonicalJson(output.WrittenSpan.ToArray());
        }
        catch (JsonException)
        {
            throw Refused(FaultCode.MalformedText, "not JSON", "JSON text (RFC 8259), each name once, at most 64 levels deep", "Check commas, quotes and braces.");
        }
        catch (InvalidOperationException)
        {
            throw Refused(FaultCode.WrongEncoding, "half a character (a lone surrogate)", "whole Unicode characters", "Enter the text again.");
        }
    }

    /// <summary>Takes bytes that are in the one form already, as a store keeps them.</summary>
    /// <param name="kept">The bytes.</param>
    /// <returns>The object; null where they are not in that form.</returns>
    internal static CanonicalJson? Kept(byte[] kept)
    {
        try
        {
            CanonicalJson read = Of(kept);
            return read.bytes.AsSpan().SequenceEqual(kept) ? read : null;
        }
        catch (InputFaultException)
        {
            return null;
        }
    }

    /// <summary>Takes bytes of an event whose hash holds without looking at them again.</summary>
    internal static CanonicalJson Trusted(byte[] kept) => new(kept);

    /// <inheritdoc/>
    public bool Equals(CanonicalJson? other) => other is not null && bytes.AsSpan().SequenceEqual(other.bytes);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as CanonicalJson);

    /// <inheritdoc/>
    public override int GetHashCode()
    {
        HashCode hash = default;
        hash.AddBytes(bytes);
        return hash.ToHashCode();
    }

    /// <inheritdoc/>
    public override string ToString() => Text;

    private static void Write(JsonElement element, ArrayBufferWriter<byte> output)
    {
        switch (element.ValueKind)
        {
            case JsonValueKind.Object:
                output.Write("{"u8);
                bool first = true;
                foreach (JsonProperty property in element.EnumerateObject().OrderBy(static p => p.Name, StringComparer.Ordinal))
                {
                    output.Write(first ? [] : ","u8);
                    first = false;
                    WriteText(property.Name, output);
                    output.Write(":"u8);
                    Write(property.Value, output);
                }

                output.Write("}"u8);
                break;
            case JsonValueKind.Array:
                output.Write("["u8);
                bool start = true;
                foreach (JsonElement item in element.EnumerateArray())
                {
                    output.Write(start ? [] : ","u8);
                    start = false;
                    Write(item, output);
                }

                output.Write("]"u8);
                break;
            case JsonValueKind.String:
                WriteText(element.GetString()!, output);
                break;
            case JsonValueKind.Number:
                output.Write(Encoding.ASCII.GetBytes(CanonicalNumber.Of(Number(element))));
                break;
            default:
                output.Write(Encoding.ASCII.GetBytes(element.GetRawText()));
                break;
        }
    }

    private static double Number(JsonElement element)
    {
        double value = element.GetDouble();
        string text = element.GetRawText();
        bool whole = text.AsSpan().IndexOfAny('.', 'e', 'E') < 0;
        return double.IsFinite(value) && (!whole || Math.Abs(value) < LargestWhole || text.TrimStart('-') == "9007199254740992")
            ? value
            : throw Refused(FaultCode.OutOfRange, InputFault.Shown(text), "a number that a double holds; whole numbers up to 2^53", "Write a longer number as text in quotes.");
    }

    private static void WriteText(string text, ArrayBufferWriter<byte> output)
    {
        StringBuilder escaped = new(text.Length + 2);
        escaped.Append('"');
        foreach (char letter in text)
        {
            _ = letter switch
            {
                '"' => escaped.Append("\\\""),
                '\\' => escaped.Append("\\\\"),
                '\b' => escaped.Append("\\b"),
                '\f' => escaped.Append("\\f"),
                '\n' => escaped.Append("\\n"),
                '\r' => escaped.Append("\\r"),
                '\t' => escaped.Append("\\t"),
                < ' ' => escaped.Append("\\u00").Append(Convert.ToHexStringLower([(byte)letter])),
                _ => escaped.Append(letter),
            };
        }

        escaped.Append('"');
        output.Write(Encoding.UTF8.GetBytes(escaped.ToString()));
    }

    private static InputFaultException Refused(FaultCode code, string value, string accepted, string remedy) =>
        new(new InputFault(code, Field, value, accepted, remedy));
}
