using System.Buffers.Binary;
using System.Diagnostics;
using System.Text;
using Cavaxis.Bedside.Sealing;
using Cavaxis.Quantities.Faults;
using CsCheck;
using NSec.Cryptography;

namespace Cavaxis.Bedside.Tests.Sealing;

public class SealedFileTests
{
    private const string Words = "gravel lantern under seven quiet boats";
    private static readonly byte[] Contents = Encoding.UTF8.GetBytes("""{"question":"why"}""");
    private static readonly byte[] File = SealedFile.Seal(SealKind.Pack, Contents, Words, SealCost.Least);

    [Fact]
    public void What_was_sealed_opens_with_the_same_passphrase_and_blanks_at_its_ends_do_not_count()
    {
        Assert.Equal(Contents, SealedFile.Open(SealKind.Pack, File, Words));
        Assert.Equal(Contents, SealedFile.Open(SealKind.Pack, File, $"  {Words} "));
    }

    [Fact]
    public void Any_contents_come_back() => Gen.Byte.Array[0, 40_000].Sample(
        contents => SealedFile.Open(SealKind.Answer, SealedFile.Seal(SealKind.Answer, contents, Words, SealCost.Least), Words).AsSpan().SequenceEqual(contents), iter: 12);

    [Fact]
    public void The_key_is_that_of_another_library_and_the_seal_that_of_the_standard_form()
    {
        // Argon2id by a managed library of others; the cipher takes nonce, associated data and text exactly as the layout says.
        using Konscious.Security.Cryptography.Argon2id other = new(Encoding.UTF8.GetBytes(Words)) { Salt = File[20..36], DegreeOfParallelism = 1, MemorySize = SealCost.Least.MemoryKiB, Iterations = SealCost.Least.Passes };
        byte[] derived = other.GetBytes(64);
        Assert.Equal(File[60..92], derived[32..]);
        using Key key = Key.Import(AeadAlgorithm.XChaCha20Poly1305, derived.AsSpan(0, 32), KeyBlobFormat.RawSymmetricKey);
        Assert.NotNull(AeadAlgorithm.XChaCha20Poly1305.Decrypt(key, File.AsSpan(36, 24), File.AsSpan(0, 100), File.AsSpan(100)));
    }

    [Fact]
    public void Every_byte_of_the_sealed_part_that_is_flipped_is_found()
    {
        SealHeader header = SealHeader.Read(File, SealKind.Pack, SealedFile.MostFile);
        using SealKey key = SealKey.Derive(Words, header.Salt, header.Cost);
        byte[] changed = [.. File];
        for (int i = SealHeader.Length; i < File.Length; i++)
        {
            changed[i] ^= (byte)(1 << (i % 8));
            Assert.Equal(SealFaultCode.NotOpened, Assert.Throws<SealFaultException>(() => SealedFile.Open(key, header, changed)).Fault.Code);
            changed[i] = File[i];
        }
    }

    [Fact]
    public void Every_byte_of_the_header_that_is_flipped_is_found()
    {
        for (int i = 0; i < SealHeader.Length; i++)
        {
            byte[] changed = [.. File];
            changed[i] ^= 1;
            SealFaultCode code = CodeOf(changed);
            SealFaultCode expected = i switch
            {
                < 8 or 10 => SealFaultCode.NotAPack,
                < 12 => SealFaultCode.UnsupportedVersion,
                < 15 or (> 15 and < 20) => code is SealFaultCode.CostOutOfBounds ? code : SealFaultCode.NotOpened,
                15 => SealFaultCode.NotOpened,
                < 92 => SealFaultCode.NotOpened,
                _ => code is SealFaultCode.TooLarge ? code : SealFaultCode.WrongLength,
            };
            Assert.True(expected == code, $"byte {i}: {code}");
        }
    }

    [Fact]
    public void Any_changed_file_gives_a_typed_fault_and_no_contents() => Gen.Select(Gen.Int[0, 2], Gen.Int[0, File.Length - 1], Gen.Byte, Gen.Int[1, 500]).Sample(
        (way, at, value, many) =>
        {
            byte[] changed = way switch
            {
                0 => File[..at],
                1 => [.. File, .. Enumerable.Repeat(value, many)],
                _ => [.. File[..at], (byte)(File[at] ^ (value | 1)), .. File[(at + 1)..]],
            };
            return Enum.IsDefined(CodeOf(changed));
        }, iter: 60);

    [Theory]
    [InlineData(0, SealFaultCode.NotAPack)]
    [InlineData(1, SealFaultCode.WrongLength)]
    [InlineData(8, SealFaultCode.WrongLength)]
    [InlineData(99, SealFaultCode.WrongLength)]
    [InlineData(100, SealFaultCode.WrongLength)]
    [InlineData(101, SealFaultCode.WrongLength)]
    [InlineData(8_000, SealFaultCode.WrongLength)]
    [InlineData(-1, SealFaultCode.WrongLength)]
    public void A_file_cut_off_anywhere_is_told_before_a_key_is_derived(int length, SealFaultCode expected)
    {
        byte[] cut = length < 0 ? File[..^1] : File[..length];
        Stopwatch watch = Stopwatch.StartNew();
        Assert.Equal(expected, CodeOf(cut));
        Assert.Equal(SealFaultCode.WrongLength, CodeOf([.. File, 0]));
        Assert.True(watch.ElapsedMilliseconds < 2_000);
    }

    [Fact]
    public void Another_passphrase_and_a_changed_file_are_told_in_the_same_words()
    {
        byte[] changed = [.. File];
        changed[^1] ^= 1;
        SealFault other = Assert.Throws<SealFaultException>(() => SealedFile.Open(SealKind.Pack, File, Words + "s")).Fault;
        Assert.Equal(other, Assert.Throws<SealFaultException>(() => SealedFile.Open(SealKind.Pack, changed, Words)).Fault);
        Assert.Equal(other, Assert.Throws<SealFaultException>(() => SealedFile.Open(SealKind.Pack, File, string.Empty)).Fault);
        Assert.DoesNotContain("lantern", other.ToString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(int.MaxValue, 3)]
    [InlineData(-1, 3)]
    [InlineData(SealCost.MostMemoryKiB + 1, 3)]
    [InlineData(SealCost.LeastMemoryKiB - 1, 3)]
    [InlineData(65_536, int.MaxValue)]
    [InlineData(65_536, -5)]
    [InlineData(65_536, SealCost.MostPasses + 1)]
    [InlineData(65_536, 1)]
    public void A_hostile_cost_is_refused_before_any_memory_is_taken(int memory, int passes)
    {
        byte[] hostile = [.. File];
        BinaryPrimitives.WriteInt32BigEndian(hostile.AsSpan(12), memory);
        BinaryPrimitives.WriteInt32BigEndian(hostile.AsSpan(16), passes);
        long before = GC.GetAllocatedBytesForCurrentThread();
        Assert.Equal(SealFaultCode.CostOutOfBounds, CodeOf(hostile));
        Assert.True(GC.GetAllocatedBytesForCurrentThread() - before < 1_000_000);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(2)]
    [InlineData(65_535)]
    public void Another_version_is_refused_and_none_is_rolled_back_to(int version)
    {
        byte[] other = [.. File];
        BinaryPrimitives.WriteUInt16BigEndian(other.AsSpan(8), (ushort)version);
        Assert.Equal(SealFaultCode.UnsupportedVersion, CodeOf(other));
    }

    [Fact]
    public void A_pack_is_no_answer_even_where_its_header_says_so()
    {
        byte[] relabelled = [.. File];
        relabelled[10] = (byte)SealKind.Answer;
        Assert.Equal(SealFaultCode.NotAPack, Assert.Throws<SealFaultException>(() => SealedFile.Open(SealKind.Answer, File, Words)).Fault.Code);
        Assert.Equal(SealFaultCode.NotOpened, Assert.Throws<SealFaultException>(() => SealedFile.Open(SealKind.Answer, relabelled, Words)).Fault.Code);
    }

    [Fact]
    public void A_bomb_that_grows_to_gigabytes_is_stopped_at_the_ceiling()
    {
        // Deflate writes about a thousandth of a run of zeros: 4 MB that would grow to 4 GB.
        using MemoryStream bomb = new();
        using (System.IO.Compression.DeflateStream deflate = new(bomb, System.IO.Compression.CompressionLevel.Fastest, leaveOpen: true))
        {
            byte[] zeros = new byte[1 << 20];
            for (int i = 0; i < 1024; i++)
            {
                deflate.Write(zeros);
            }
        }

        byte[] file = SealedFile.SealDeflated(SealKind.Pack, bomb.ToArray(), Words, SealCost.Least);
        long before = GC.GetAllocatedBytesForCurrentThread();
        Assert.Equal(SealFaultCode.TooLarge, CodeOf(file));
        Assert.True(GC.GetAllocatedBytesForCurrentThread() - before < 6L * SealedFile.MostContents);
    }

    [Fact]
    public void A_file_tells_little_of_its_length()
    {
        Assert.Equal(SealedFile.Seal(SealKind.Pack, new byte[1], Words, SealCost.Least).Length, SealedFile.Seal(SealKind.Pack, new byte[9_000], Words, SealCost.Least).Length);
        Assert.Equal([16_384, 16_384, 32_768, 67_108_864], new[] { 1, 16_384, 16_385, 60_000_000 }.Select(SealedFile.PaddedLength));
        Assert.Equal(SealFaultCode.TooLarge, Assert.Throws<SealFaultException>(() => SealedFile.Seal(SealKind.Pack, new byte[SealedFile.MostContents + 1], Words)).Fault.Code);
        Assert.Equal(SealFaultCode.TooLarge, Assert.Throws<SealFaultException>(() => SealedFile.PaddedLength((64 * 1024 * 1024) + 1)).Fault.Code);
    }

    [Fact]
    public void The_same_contents_sealed_twice_share_no_salt_nonce_or_byte_run()
    {
        byte[] other = SealedFile.Seal(SealKind.Pack, Contents, Words, SealCost.Least);
        Assert.NotEqual(File[20..36], other[20..36]);
        Assert.NotEqual(File[36..60], other[36..60]);
        Assert.True(File.Skip(100).Zip(other.Skip(100)).Count(static p => p.First == p.Second) < 200, "one byte in 256 is alike by chance: 64 of 16 400, sd 8");
    }

    [Theory]
    [InlineData("")]
    [InlineData("too short a one")]
    [InlineData("aaaaabbbbbaaaaabbbbb")]
    [InlineData("möwe über der stillen bucht")]
    [InlineData("               brief            ")]
    public void A_poor_passphrase_is_refused_and_not_repeated(string passphrase)
    {
        InputFault fault = Assert.Throws<InputFaultException>(() => SealedFile.Seal(SealKind.Pack, Contents, passphrase)).Faults[0];
        Assert.Equal((FaultCode.WrongLength, "passphrase"), (fault.Code, fault.Field));
        Assert.True(passphrase.Trim().Length == 0 || !fault.ToString().Contains(passphrase.Trim(), StringComparison.Ordinal));
    }

    private static SealFaultCode CodeOf(byte[] file) => Assert.Throws<SealFaultException>(() => SealedFile.Open(SealKind.Pack, file, Words)).Fault.Code;
}
