using System.Globalization;
using System.Text;
using Cavaxis.Quantities.Faults;
using Cavaxis.Records.Passwords;
using Konscious.Security.Cryptography;

namespace Cavaxis.Records.Tests.Passwords;

public class Argon2PasswordHasherTests
{
    /// <summary>RFC 9106 section 5.3 (from memory): the other library computes what the standard prints, so it may judge ours.</summary>
    [Fact]
    public void The_library_that_is_compared_with_computes_the_test_vector_of_RFC_9106()
    {
        using Argon2id other = new(Enumerable.Repeat((byte)1, 32).ToArray())
        {
            Salt = Enumerable.Repeat((byte)2, 16).ToArray(),
            KnownSecret = Enumerable.Repeat((byte)3, 8).ToArray(),
            AssociatedData = Enumerable.Repeat((byte)4, 12).ToArray(),
            DegreeOfParallelism = 4,
            Iterations = 3,
            MemorySize = 32,
        };
        Assert.Equal("0d640df58d78766c08c037a34a8b53c9d01ef0452d75b65eb52520e96b01e659", Convert.ToHexStringLower(other.GetBytes(32)));
    }

    [Theory]
    [InlineData("correct horse battery", 8, 1)]
    [InlineData("Größe € 😀 zwölf", 64, 3)]
    [InlineData("correct horse battery", 19_456, 2)]
    public void A_hash_is_the_Argon2id_that_another_library_computes(string password, int memoryKiB, int passes)
    {
        string text = new Argon2PasswordHasher(memoryKiB, passes).Hash(password);
        string[] parts = text.Split('$');
        Assert.Equal(["", "argon2id", "v=19", string.Create(CultureInfo.InvariantCulture, $"m={memoryKiB},t={passes},p=1")], parts[..4]);
        using Argon2id other = new(Encoding.UTF8.GetBytes(password))
        {
            Salt = Convert.FromBase64String(parts[4] + "=="),
            DegreeOfParallelism = 1,
            Iterations = passes,
            MemorySize = memoryKiB,
        };
        Assert.Equal(Convert.ToBase64String(other.GetBytes(32)).TrimEnd('='), parts[5]);
    }

    [Fact]
    public void A_password_matches_its_own_hash_only_and_no_two_hashes_are_the_same()
    {
        Argon2PasswordHasher hasher = new(8, 1);
        string hash = hasher.Hash("correct horse battery");
        Assert.True(hasher.Matches("correct horse battery", hash));
        Assert.False(hasher.Matches("correct horse batterx", hash));
        Assert.False(hasher.Matches(string.Empty, hash));
        Assert.NotEqual(hash, hasher.Hash("correct horse battery"));
        Assert.False(hasher.Matches("correct horse battery", hasher.NoOnes));
    }

    [Fact]
    public void A_hash_of_another_cost_still_matches_and_is_told_as_outdated()
    {
        string old = new Argon2PasswordHasher(8, 1).Hash("correct horse battery");
        Argon2PasswordHasher now = new(16, 2);
        Assert.True(now.Matches("correct horse battery", old));
        Assert.True(now.IsOutdated(old));
        Assert.False(now.IsOutdated(now.Hash("correct horse battery")));
    }

    [Theory]
    [InlineData("")]
    [InlineData("plain")]
    [InlineData("$argon2id$v=19$m=999999,t=2,p=1$AAAAAAAAAAAAAAAAAAAAAA$AAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAA")]
    [InlineData("$argon2id$v=19$m=8,t=99,p=1$AAAAAAAAAAAAAAAAAAAAAA$AAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAA")]
    [InlineData("$argon2i$v=19$m=8,t=1,p=1$AAAAAAAAAAAAAAAAAAAAAA$AAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAA")]
    [InlineData("$argon2id$v=19$m=8,t=1,p=1$AAAAAAAAAAAAAAAAAAAAAA$")]
    public void A_text_that_is_no_hash_or_would_cost_too_much_matches_nothing(string text)
    {
        Argon2PasswordHasher hasher = new(8, 1);
        Assert.False(hasher.Matches("correct horse battery", text));
        Assert.True(hasher.IsOutdated(text));
    }

    [Theory]
    [InlineData("tiny", "too short")]
    [InlineData("aaaaaaaaaaaabbb", "the same few characters over and over")]
    [InlineData("xxANNAxxyyzzww", "one that holds the sign-in name")]
    public void A_weak_password_is_refused_and_never_repeated(string password, string why)
    {
        InputFault fault = Assert.Throws<InputFaultException>(() => PasswordRule.Require(password, "anna")).Faults[0];
        Assert.Equal(("password", why), (fault.Field, fault.Value));
        Assert.DoesNotContain(password, fault.ToString(), StringComparison.OrdinalIgnoreCase);
    }
}
