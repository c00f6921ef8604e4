using System.Security.Cryptography;
using System.Text;
using Cavaxis.Dicom.Identity;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Dicom.Tests.Identity;

public sealed class IdentityKeyTests
{
    private static readonly byte[] Secret = Encoding.ASCII.GetBytes("an invented key, 32 bytes long..");

    // HMAC-SHA-256 by the platform's own library; below 2.25 a UUID as one decimal number (PS3.5 B.2).
    [Fact]
    public void Replacements_follow_from_the_key_and_the_old_identifier_alone()
    {
        IdentityKey key = new(Secret);
        Assert.Equal(Convert.ToHexString(HMACSHA256.HashData(Secret, "person:INV-0042"u8.ToArray()))[..16], key.Person("INV-0042"));
        Assert.Equal(key.Uid("1.2.3"), new IdentityKey(Secret).Uid("1.2.3"));
        Assert.NotEqual(key.Uid("1.2.3"), key.Uid("1.2.4"));
        Assert.NotEqual(key.Uid("1.2.3"), IdentityKey.Forgotten().Uid("1.2.3"));
        for (int i = 0; i < 200; i++)
        {
            Assert.Matches(@"^2\.25\.[1-9][0-9]{30,38}$", key.Uid($"1.2.{i}"));
        }
    }

    [Fact]
    public void A_short_key_is_refused() => Assert.Equal("key", Assert.Throws<InputFaultException>(() => new IdentityKey(new byte[15])).Faults[0].Field);
}
