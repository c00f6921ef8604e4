using Cavaxis.Planning.Case;
using Cavaxis.Quantities.Faults;
using CsCheck;

namespace Cavaxis.Planning.Tests.Case;

public class BrokenCaseTests
{
    private static readonly byte[][] Good = [.. RepositoryFolder.DemoFiles.Select(File.ReadAllBytes)];

    private static readonly Dictionary<string, byte[]> Broken =
        MutatedCases.All(RepositoryFolder.DemoFiles).ToDictionary(static m => m.Name, static m => m.Bytes, StringComparer.Ordinal);

    [Fact]
    public void Every_broken_file_is_refused_with_faults_that_can_be_mended()
    {
        Assert.True(Broken.Count >= 200, $"only {Broken.Count} broken files");
        List<string> wrong = [];
        foreach ((string name, byte[] bytes) in Broken)
        {
            try
            {
                CaseFileReader.Read(bytes, "case.json");
                wrong.Add($"{name}: accepted");
            }
            catch (InputFaultException e)
            {
                if (e.Faults.Count == 0 || !e.Faults.All(IsWhole))
                {
                    wrong.Add($"{name}: {e.Message}");
                }
            }
#pragma warning disable CA1031 // Any other exception is what this test looks for; it is collected, not hidden.
            catch (Exception e)
            {
                wrong.Add($"{name}: {e.GetType().Name} {e.Message}");
            }
#pragma warning restore CA1031
        }

        Assert.True(wrong.Count == 0, string.Join('\n', wrong.Take(40)));
    }

    [Fact]
    public void Faults_come_in_the_order_of_their_places_and_the_same_each_time()
    {
        foreach (byte[] bytes in Broken.Values.Where(static b => b.Length < 20_000))
        {
            IReadOnlyList<InputFault> faults = Assert.Throws<InputFaultException>(() => CaseFileReader.Read(bytes)).Faults;
            Assert.Equal(faults.OrderBy(static f => f.Line ?? 0).ThenBy(static f => f.Column ?? 0), faults);
            Assert.Equal(faults, Assert.Throws<InputFaultException>(() => CaseFileReader.Read(bytes)).Faults);
        }
    }

    [Fact]
    public void A_broken_file_gives_the_same_faults_as_a_stream()
    {
        foreach (byte[] bytes in Broken.Values.Where(static b => b.Length is > 0 and < 20_000))
        {
            using MemoryStream stream = new(bytes);
            Assert.Equal(
                Assert.Throws<InputFaultException>(() => CaseFileReader.Read(bytes, "case.json")).Faults,
                Assert.Throws<InputFaultException>(() => CaseFileReader.ReadStream(stream, "case.json")).Faults);
        }
    }

    [Fact]
    public void Reading_the_largest_broken_files_takes_bounded_memory()
    {
        foreach ((string name, byte[] bytes) in Broken.Where(static b => b.Value.Length > 900_000))
        {
            long before = GC.GetAllocatedBytesForCurrentThread();
            Assert.Throws<InputFaultException>(() => CaseFileReader.Read(bytes));
            long taken = GC.GetAllocatedBytesForCurrentThread() - before;
            Assert.True(taken < 16 * 1024 * 1024, $"{name} took {taken} bytes");
        }
    }

    [Fact]
    public void A_stream_of_100_MB_is_refused_after_the_limit_and_in_bounded_memory()
    {
        using EndlessStream stream = new(100_000_000);
        long before = GC.GetAllocatedBytesForCurrentThread();
        InputFaultException e = Assert.Throws<InputFaultException>(() => CaseFileReader.ReadStream(stream, "case.json"));
        long taken = GC.GetAllocatedBytesForCurrentThread() - before;

        Assert.True(taken < 16 * 1024 * 1024, $"{taken} bytes");
        Assert.Equal(CaseFileReader.LargestFileBytes + 1, stream.Position);
        InputFault fault = Assert.Single(e.Faults);
        Assert.Equal((FaultCode.FileTooLarge, "case.json"), (fault.Code, fault.Field));
    }

    [Fact]
    public void A_stream_that_breaks_is_an_unreadable_file()
    {
        using EndlessStream stream = new(1000) { BreaksAt = 500 };
        InputFault fault = Assert.Single(Assert.Throws<InputFaultException>(() => CaseFileReader.ReadStream(stream, "case.json")).Faults);
        Assert.Equal((FaultCode.UnreadableFile, "case.json"), (fault.Code, fault.Field));
    }

    // Some edits leave a good case (a digit for a digit); the others must give faults, and nothing may give anything else.
    [Fact]
    public void Any_edit_of_bytes_gives_a_case_or_faults() => Gen
        .Select(Gen.Int[0, Good.Length - 1], Gen.Int[0, 10_000], Gen.Int[0, 40], Gen.Byte.Array[0, 6])
        .Sample(static (file, at, removed, inserted) =>
        {
            byte[] good = Good[file];
            int from = at % good.Length;
            byte[] bytes = [.. good[..from], .. inserted, .. good[Math.Min(good.Length, from + removed)..]];
            try
            {
                return CaseFileReader.Read(bytes).CavaxisCase == CaseFile.CurrentVersion;
            }
            catch (InputFaultException e)
            {
                return e.Faults.Count > 0 && e.Faults.All(IsWhole);
            }
        }, iter: 5_000);

    private static bool IsWhole(InputFault fault) =>
        Enum.IsDefined(fault.Code) && fault.Field.Length > 0 && fault.Value.Length > 0 && fault.Accepted.Length > 0 && fault.Remedy.Length > 0
        && fault is not { Line: < 1 } and not { Column: < 1 } && !fault.ToString().Any(char.IsControl);
}
