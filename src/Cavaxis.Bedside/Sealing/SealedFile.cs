using System.Buffers.Binary;
using System.IO.Compression;
using System.Security.Cryptography;
using Cavaxis.Quantities.Faults;
using NSec.Cryptography;

namespace Cavaxis.Bedside.Sealing;

/// <summary>
/// Seals bytes with a passphrase and opens them again: Argon2id derives the key, XChaCha20-Poly1305 seals, the header is authenticated along; both from the library
/// libsodium through NSec. What is sealed is deflated and padded to a power of two, so that the length of the file tells little.
/// </summary>
public static class SealedFile
{
    /// <summary>Largest contents before deflating, bytes; more is never inflated either.</summary>
    public const int MostContents = 48 * 1024 * 1024;

    /// <summary>Largest file, bytes.</summary>
    public const int MostFile = SealHeader.Length + MostPadded + TagLength;

    private const int MostPadded = 64 * 1024 * 1024;
    private const int LeastPadded = 16 * 1024;
    private const int LengthBytes = 4;
    private const int TagLength = 16;

    private static readonly AeadAlgorithm Algorithm = AeadAlgorithm.XChaCha20Poly1305;

    /// <summary>SHA-256 of a file, small hexadecimal.</summary>
    /// <param name="file">The file.</param>
    /// <returns>64 digits.</returns>
    public static string HashOf(ReadOnlySpan<byte> file) => Convert.ToHexStringLower(SHA256.HashData(file));

    /// <summary>Seals contents.</summary>
    /// <param name="kind">What they are.</param>
    /// <param name="contents">The bytes.</param>
    /// <param name="passphrase">The passphrase.</param>
    /// <param name="cost">Cost of the key; null for the usual one.</param>
    /// <returns>The file.</returns>
    /// <exception cref="InputFaultException">The passphrase is not one that is taken.</exception>
    /// <exception cref="SealFaultException">The contents are too large.</exception>
    public static byte[] Seal(SealKind kind, ReadOnlySpan<byte> contents, string passphrase, SealCost? cost = null)
    {
        string words = PassphraseRule.Require(passphrase);
        if (contents.Length > MostContents)
        {
            throw TooLarge();
        }

        return SealDeflated(kind, Deflated(contents), words, cost ?? SealCost.Usual);
    }

    /// <summary>Opens a file.</summary>
    /// <param name="kind">What it must be.</param>
    /// <param name="file">The file.</param>
    /// <param name="passphrase">The passphrase; whatever was typed.</param>
    /// <returns>The contents.</returns>
    /// <exception cref="SealFaultException">It cannot be opened; nothing of it was given out.</exception>
    public static byte[] Open(SealKind kind, ReadOnlySpan<byte> file, string passphrase)
    {
        ArgumentNullException.ThrowIfNull(passphrase);
        SealHeader header = SealHeader.Read(file, kind, MostPadded + TagLength);
        using SealKey key = SealKey.Derive(passphrase.Trim(' '), header.Salt, header.Cost);
        return Open(key, header, file);
    }

    /// <summary>Opens a file whose key is derived.</summary>
    internal static byte[] Open(SealKey key, SealHeader header, ReadOnlySpan<byte> file)
    {
        // Both are computed whatever the first says: no clock tells which of them failed.
        bool committed = CryptographicOperations.FixedTimeEquals(key.Commitment, header.Commitment);
        byte[]? padded = Algorithm.Decrypt(key.Key, header.Nonce, file[..SealHeader.Length], file[SealHeader.Length..]);
        if (!committed || padded is null)
        {
            throw new SealFaultException(new SealFault(
                SealFaultCode.NotOpened, "another passphrase, or a file that was changed", "the passphrase that was agreed, and the file as it was written", "Type it again; if it still does not open, have the file sent again."));
        }

        int length = padded.Length < LengthBytes ? -1 : BinaryPrimitives.ReadInt32BigEndian(padded);
        return length >= 0 && length <= padded.Length - LengthBytes ? Inflated(padded.AsSpan(LengthBytes, length)) : throw Unreadable();
    }

    /// <summary>Seals what is deflated already.</summary>
    internal static byte[] SealDeflated(SealKind kind, byte[] deflated, string words, SealCost cost)
    {
        byte[] padded = new byte[PaddedLength(deflated.Length + LengthBytes)];
        BinaryPrimitives.WriteInt32BigEndian(padded, deflated.Length);
        deflated.CopyTo(padded, LengthBytes);
        byte[] salt = RandomNumberGenerator.GetBytes(SealHeader.SaltLength);
        using SealKey key = SealKey.Derive(words, salt, cost);
        byte[] header = new SealHeader(kind, cost, salt, RandomNumberGenerator.GetBytes(SealHeader.NonceLength), key.Commitment, padded.Length + TagLength).ToBytes();
        byte[] body = Algorithm.Encrypt(key.Key, header.AsSpan(36, SealHeader.NonceLength), header, padded);
        CryptographicOperations.ZeroMemory(padded);
        return [.. header, .. body];
    }

    /// <summary>The next power of two from 16 KiB on.</summary>
    internal static int PaddedLength(int length)
    {
        int padded = LeastPadded;
        while (padded < length)
        {
            padded = padded < MostPadded ? padded * 2 : throw TooLarge();
        }

        return padded;
    }

    /// <summary>Deflates.</summary>
    internal static byte[] Deflated(ReadOnlySpan<byte> contents)
    {
        using MemoryStream target = new();
        using (DeflateStream deflate = new(target, CompressionLevel.Optimal, leaveOpen: true))
        {
            deflate.Write(contents);
        }

        return target.ToArray();
    }

    /// <summary>Inflates piece by piece and stops at the ceiling: what a hostile file would grow to is never made.</summary>
    private static byte[] Inflated(ReadOnlySpan<byte> deflated)
    {
        using MemoryStream source = new(deflated.ToArray());
        using DeflateStream inflate = new(source, CompressionMode.Decompress);
        using MemoryStream target = new();
        byte[] piece = new byte[64 * 1024];
        try
        {
            for (int read = inflate.Read(piece); read > 0; read = inflate.Read(piece))
            {
                if (target.Length + read > MostContents)
                {
                    throw TooLarge();
                }

                target.Write(piece, 0, read);
            }
        }
        catch (InvalidDataException)
        {
            throw Unreadable();
        }

        return target.ToArray();
    }

    private static SealFaultException TooLarge() => new(new SealFault(
        SealFaultCode.TooLarge, "contents beyond what is read", FormattableString.Invariant($"at most {MostContents} bytes"), "Leave attachments out."));

    private static SealFaultException Unreadable() => new(new SealFault(
        SealFaultCode.UnreadableContents, "contents that are not of the form", "what this program writes", "Ask for the file again, made with this program."));
}
