namespace Cavaxis.Records.Events;

/// <summary>A SHA-256 value (FIPS 180-4), kept as 64 small hexadecimal digits.</summary>
public sealed record EventHash
{
    /// <summary>Bytes of a hash.</summary>
    public const int Length = 32;

    private EventHash(string hex) => Hex = hex;

    /// <summary>What the first event has before it: 32 zero bytes.</summary>
    public static EventHash Genesis { get; } = new(new string('0', 2 * Length));

    /// <summary>The digits.</summary>
    public string Hex { get; }

    /// <summary>A hash from its bytes.</summary>
    /// <param name="bytes">32 bytes.</param>
    /// <returns>The hash.</returns>
    /// <exception cref="ArgumentException">Not 32 bytes.</exception>
    public static EventHash Of(ReadOnlySpan<byte> bytes) => bytes.Length == Length
        ? new EventHash(Convert.ToHexStringLower(bytes))
        : throw new ArgumentException("A hash has 32 bytes.", nameof(bytes));

    /// <summary>A hash from its digits.</summary>
    /// <param name="hex">The text.</param>
    /// <returns>The hash; null where the text is not 64 hexadecimal digits.</returns>
    public static EventHash? Parse(string hex)
    {
        ArgumentNullException.ThrowIfNull(hex);
        return hex.Length == 2 * Length && hex.All(char.IsAsciiHexDigit) ? new EventHash(hex.ToLowerInvariant()) : null;
    }

    /// <summary>The bytes.</summary>
    /// <returns>32 bytes.</returns>
    public byte[] ToBytes() => Convert.FromHexString(Hex);

    /// <inheritdoc/>
    public override string ToString() => Hex;
}
