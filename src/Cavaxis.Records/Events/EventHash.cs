using System.Buffers.Binary;

namespace Cavaxis.Records.Events;

/// <summary>A SHA-256 value (FIPS 180-4).</summary>
public sealed class EventHash : IEquatable<EventHash>
{
    /// <summary>Bytes of a hash.</summary>
    public const int Length = 32;

    private readonly byte[] bytes;

    private EventHash(byte[] bytes) => this.bytes = bytes;

    /// <summary>What the first event has before it: 32 zero bytes.</summary>
    public static EventHash Genesis { get; } = new(new byte[Length]);

    /// <summary>64 small hexadecimal digits.</summary>
    public string Hex => Convert.ToHexStringLower(bytes);

    /// <summary>The bytes.</summary>
    public ReadOnlySpan<byte> Bytes => bytes;

    /// <summary>A hash from its bytes.</summary>
    /// <param name="bytes">32 bytes.</param>
    /// <returns>The hash.</returns>
    /// <exception cref="ArgumentException">Not 32 bytes.</exception>
    public static EventHash Of(ReadOnlySpan<byte> bytes) => bytes.Length == Length
        ? new EventHash(bytes.ToArray())
        : throw new ArgumentException("A hash has 32 bytes.", nameof(bytes));

    /// <summary>A hash from its digits.</summary>
    /// <param name="hex">The text.</param>
    /// <returns>The hash; null where the text is not 64 hexadecimal digits.</returns>
    public static EventHash? Parse(string hex)
    {
        ArgumentNullException.ThrowIfNull(hex);
        return hex.Length == 2 * Length && hex.All(char.IsAsciiHexDigit) ? new EventHash(Convert.FromHexString(hex)) : null;
    }

    /// <inheritdoc/>
    public bool Equals(EventHash? other) => other is not null && bytes.AsSpan().SequenceEqual(other.bytes);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as EventHash);

    /// <inheritdoc/>
    public override int GetHashCode() => BinaryPrimitives.ReadInt32LittleEndian(bytes);

    /// <inheritdoc/>
    public override string ToString() => Hex;
}
