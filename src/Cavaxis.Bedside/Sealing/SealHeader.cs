using System.Buffers.Binary;

namespace Cavaxis.Bedside.Sealing;

/// <summary>
/// The first 100 bytes of a sealed file, open to read and authenticated: 8 magic, 2 version, 1 kind, 1 way of sealing, 4 memory KiB, 4 passes, 16 salt, 24 nonce, 32 commitment to
/// the key, 8 length of the rest. Numbers have the most significant byte first.
/// </summary>
/// <param name="Kind">What the file is.</param>
/// <param name="Cost">Cost of the key.</param>
/// <param name="Salt">16 bytes of chance.</param>
/// <param name="Nonce">24 bytes of chance.</param>
/// <param name="Commitment">32 bytes from the same derivation as the key: a file opens with one passphrase only.</param>
/// <param name="SealedLength">Bytes behind the header.</param>
internal sealed record SealHeader(SealKind Kind, SealCost Cost, byte[] Salt, byte[] Nonce, byte[] Commitment, long SealedLength)
{
    public const int Length = 100;
    public const int SaltLength = 16;
    public const int NonceLength = 24;
    public const int CommitmentLength = 32;
    public const ushort Version = 1;

    /// <summary>Argon2id with one lane, then XChaCha20-Poly1305.</summary>
    private const byte Way = 1;

    private static ReadOnlySpan<byte> Magic => "cvxpack\n"u8;

    /// <summary>The bytes.</summary>
    public byte[] ToBytes()
    {
        byte[] bytes = new byte[Length];
        Magic.CopyTo(bytes);
        BinaryPrimitives.WriteUInt16BigEndian(bytes.AsSpan(8), Version);
        bytes[10] = (byte)Kind;
        bytes[11] = Way;
        BinaryPrimitives.WriteInt32BigEndian(bytes.AsSpan(12), Cost.MemoryKiB);
        BinaryPrimitives.WriteInt32BigEndian(bytes.AsSpan(16), Cost.Passes);
        Salt.CopyTo(bytes.AsSpan(20));
        Nonce.CopyTo(bytes.AsSpan(36));
        Commitment.CopyTo(bytes.AsSpan(60));
        BinaryPrimitives.WriteInt64BigEndian(bytes.AsSpan(92), SealedLength);
        return bytes;
    }

    /// <summary>Reads the header of a file and refuses what need not be opened: all of it before a key is derived.</summary>
    public static SealHeader Read(ReadOnlySpan<byte> file, SealKind kind, long mostSealed)
    {
        if (file.Length < 8 ? !Magic.StartsWith(file) || file.IsEmpty : !file.StartsWith(Magic))
        {
            throw Refused(SealFaultCode.NotAPack, "no pack or answer of this program", "a file that `pack make` or `pack answer` wrote", "Check that it is the right file.");
        }

        if (file.Length < Length)
        {
            throw Cut();
        }

        ushort version = BinaryPrimitives.ReadUInt16BigEndian(file[8..]);
        if (version != Version || file[11] != Way)
        {
            throw Refused(SealFaultCode.UnsupportedVersion, FormattableString.Invariant($"version {version}, way {file[11]}"), "version 1, way 1", "Open it with the program that made it, or a later one.");
        }

        if (file[10] != (byte)kind)
        {
            throw Refused(
                SealFaultCode.NotAPack, kind == SealKind.Pack ? "no pack, perhaps an answer" : "no answer, perhaps a pack", kind == SealKind.Pack ? "a pack" : "an answer", "Take the other file.");
        }

        SealCost cost = new(BinaryPrimitives.ReadInt32BigEndian(file[12..]), BinaryPrimitives.ReadInt32BigEndian(file[16..]));
        if (!cost.IsWithinBounds)
        {
            throw Refused(
                SealFaultCode.CostOutOfBounds, FormattableString.Invariant($"{cost.MemoryKiB} KiB, {cost.Passes} passes"),
                FormattableString.Invariant($"{SealCost.LeastMemoryKiB} to {SealCost.MostMemoryKiB} KiB, {SealCost.FewestPasses} to {SealCost.MostPasses} passes"), "Do not trust this file; ask for it again.");
        }

        long length = BinaryPrimitives.ReadInt64BigEndian(file[92..]);
        if (length > mostSealed)
        {
            throw Refused(SealFaultCode.TooLarge, "a length beyond what is read", FormattableString.Invariant($"at most {mostSealed} bytes"), "Ask for a pack with fewer attachments.");
        }

        return length == file.Length - Length ? new SealHeader(kind, cost, file[20..36].ToArray(), file[36..60].ToArray(), file[60..92].ToArray(), length) : throw Cut();
    }

    private static SealFaultException Cut() => Refused(SealFaultCode.WrongLength, "a file that is shorter or longer than it says", "the whole file as it was written", "Have it sent again.");

    private static SealFaultException Refused(SealFaultCode code, string found, string accepted, string remedy) => new(new SealFault(code, found, accepted, remedy));
}
