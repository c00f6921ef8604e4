using System.Security.Cryptography;
using System.Text;
using NSec.Cryptography;

namespace Cavaxis.Bedside.Sealing;

/// <summary>A key derived from a passphrase, and a commitment to it from the same derivation.</summary>
internal sealed class SealKey : IDisposable
{
    private const int KeyLength = 32;

    private SealKey(Key key, byte[] commitment) => (Key, Commitment) = (key, commitment);

    /// <summary>The key, held by the library and wiped with it.</summary>
    public Key Key { get; }

    /// <summary>32 bytes that tell nothing of the key and differ for every other passphrase.</summary>
    public byte[] Commitment { get; }

    /// <summary>Derives.</summary>
    public static SealKey Derive(string words, byte[] salt, SealCost cost)
    {
        byte[] secret = Encoding.UTF8.GetBytes(words);
        byte[]? derived = null;
        try
        {
            Argon2Parameters parameters = new() { DegreeOfParallelism = 1, MemorySize = cost.MemoryKiB, NumberOfPasses = cost.Passes };
            derived = PasswordBasedKeyDerivationAlgorithm.Argon2id(parameters).DeriveBytes(secret, salt, KeyLength + SealHeader.CommitmentLength);
            return new SealKey(Key.Import(AeadAlgorithm.XChaCha20Poly1305, derived.AsSpan(0, KeyLength), KeyBlobFormat.RawSymmetricKey), derived[KeyLength..]);
        }
        finally
        {
            CryptographicOperations.ZeroMemory(secret);
            CryptographicOperations.ZeroMemory(derived);
        }
    }

    /// <inheritdoc/>
    public void Dispose() => Key.Dispose();
}
