using System.Globalization;
using System.Numerics;
using System.Security.Cryptography;
using System.Text;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Dicom.Identity;

/// <summary>
/// A secret from which replacements follow (HMAC-SHA-256): the same person and the same series get the same replacement, and only who
/// holds the key and the old identifier can tell that they belong together.
/// </summary>
public sealed class IdentityKey
{
    /// <summary>Fewest bytes of a key.</summary>
    public const int Shortest = 16;

    private readonly byte[] secret;

    /// <summary>A key.</summary>
    /// <param name="secret">At least <see cref="Shortest"/> bytes.</param>
    /// <exception cref="InputFaultException">It is too short.</exception>
    public IdentityKey(ReadOnlySpan<byte> secret)
    {
        if (secret.Length < Shortest)
        {
            throw new InputFaultException(new InputFault(
                FaultCode.WrongLength,
                "key",
                string.Create(CultureInfo.InvariantCulture, $"{secret.Length} bytes"),
                string.Create(CultureInfo.InvariantCulture, $"{Shortest} bytes or more"),
                "Give a longer secret, such as 32 random bytes, and keep it apart from the images."));
        }

        this.secret = secret.ToArray();
    }

    /// <summary>A key that nobody keeps: what is replaced with it leads back to nobody.</summary>
    public static IdentityKey Forgotten() => new(RandomNumberGenerator.GetBytes(32));

    /// <summary>Another unique identifier for one of a file: below 2.25, from a UUID (PS3.5 B.2).</summary>
    /// <param name="uid">The old one.</param>
    /// <returns>The new one, at most 44 characters.</returns>
    public string Uid(string uid)
    {
        byte[] bytes = Hash("uid", uid)[..16];
        bytes[6] = (byte)((bytes[6] & 0x0F) | 0x80);
        bytes[8] = (byte)((bytes[8] & 0x3F) | 0x80);
        return $"2.25.{new BigInteger(bytes, isUnsigned: true, isBigEndian: true).ToString(CultureInfo.InvariantCulture)}";
    }

    /// <summary>What stands for a person: 16 letters and digits.</summary>
    /// <param name="patientId">Patient ID of the file.</param>
    public string Person(string patientId) => Convert.ToHexString(Hash("person", patientId)[..8]);

    private byte[] Hash(string kind, string text) => HMACSHA256.HashData(secret, Encoding.UTF8.GetBytes($"{kind}:{text}"));
}
