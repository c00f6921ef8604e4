using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using System.Text.RegularExpressions;
using NSec.Cryptography;

namespace Cavaxis.Records.Passwords;

/// <summary>
/// Argon2id (RFC 9106) by the library libsodium: 19 MiB, 2 passes, 1 lane unless told otherwise, the least that common guidance on storing
/// passwords names for it (from memory). Kept as <c>$argon2id$v=19$m=…,t=…,p=1$salt$hash</c>, the form that other programs read too.
/// </summary>
public sealed partial class Argon2PasswordHasher : IPasswordHasher
{
    private const int SaltBytes = 16;
    private const int HashBytes = 32;

    /// <summary>A text in the store may be anything: no check of it may take a gigabyte or a minute.</summary>
    private const int MostKiB = 262_144;

    private const int MostPasses = 16;

    private readonly int memoryKiB;
    private readonly int passes;

    /// <summary>A hasher of a cost.</summary>
    /// <param name="memoryKiB">Memory, KiB, from 8 to 262 144.</param>
    /// <param name="passes">Passes over it, from 1 to 16.</param>
    public Argon2PasswordHasher(int memoryKiB = 19_456, int passes = 2)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(memoryKiB, 8);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(memoryKiB, MostKiB);
        ArgumentOutOfRangeException.ThrowIfLessThan(passes, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(passes, MostPasses);
        (this.memoryKiB, this.passes) = (memoryKiB, passes);
        NoOnes = Text(memoryKiB, passes, RandomNumberGenerator.GetBytes(SaltBytes), RandomNumberGenerator.GetBytes(HashBytes));
    }

    /// <inheritdoc/>
    public string NoOnes { get; }

    /// <inheritdoc/>
    public string Hash(string password)
    {
        byte[] salt = RandomNumberGenerator.GetBytes(SaltBytes);
        return Text(memoryKiB, passes, salt, Derive(password, salt, memoryKiB, passes));
    }

    /// <inheritdoc/>
    public bool Matches(string password, string hash) =>
        Read(hash) is (int memory, int times, byte[] salt, byte[] kept) && CryptographicOperations.FixedTimeEquals(Derive(password, salt, memory, times), kept);

    /// <inheritdoc/>
    public bool IsOutdated(string hash) => Read(hash) is not (int memory, int times, _, _) || memory != memoryKiB || times != passes;

    private static byte[] Derive(string password, byte[] salt, int memoryKiB, int passes)
    {
        ArgumentNullException.ThrowIfNull(password);
        Argon2Parameters cost = new() { DegreeOfParallelism = 1, MemorySize = memoryKiB, NumberOfPasses = passes };
        byte[] secret = Encoding.UTF8.GetBytes(password);
        try
        {
            return PasswordBasedKeyDerivationAlgorithm.Argon2id(cost).DeriveBytes(secret, salt, HashBytes);
        }
        finally
        {
            CryptographicOperations.ZeroMemory(secret);
        }
    }

    private static string Text(int memoryKiB, int passes, byte[] salt, byte[] hash) => string.Create(
        CultureInfo.InvariantCulture, $"$argon2id$v=19$m={memoryKiB},t={passes},p=1${Convert.ToBase64String(salt).TrimEnd('=')}${Convert.ToBase64String(hash).TrimEnd('=')}");

    private static (int MemoryKiB, int Passes, byte[] Salt, byte[] Hash)? Read(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        Match parts = Form().Match(text);
        if (!parts.Success)
        {
            return null;
        }

        int memory = int.Parse(parts.Groups[1].ValueSpan, CultureInfo.InvariantCulture);
        int times = int.Parse(parts.Groups[2].ValueSpan, CultureInfo.InvariantCulture);
        return memory is >= 8 and <= MostKiB && times is >= 1 and <= MostPasses
            ? (memory, times, Convert.FromBase64String(parts.Groups[3].Value + "=="), Convert.FromBase64String(parts.Groups[4].Value + "="))
            : null;
    }

    [GeneratedRegex(@"\A\$argon2id\$v=19\$m=([0-9]{1,6}),t=([0-9]{1,2}),p=1\$([A-Za-z0-9+/]{22})\$([A-Za-z0-9+/]{43})\z", RegexOptions.CultureInvariant)]
    private static partial Regex Form();
}
