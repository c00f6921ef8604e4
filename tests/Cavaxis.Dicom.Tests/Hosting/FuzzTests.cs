using Cavaxis.Dicom.Hosting;
using Cavaxis.Dicom.Reading;
using Cavaxis.Dicom.Tests.Oracle;
using Cavaxis.Quantities.Faults;
using Xunit.Abstractions;

namespace Cavaxis.Dicom.Tests.Hosting;

public sealed class FuzzTests(OracleRun oracle, ITestOutputHelper told) : IClassFixture<OracleRun>
{
    private const int Files = 300;

    private static readonly string[] Bases =
    [
        "explicit", "implicit", "big", "deflated", "rle16", "rlergb", "j2k8", "j2kloop", "jpeg-lossless", "jpeg-baseline-colour", "jpegls-words", "palette16", "loop", "ybr422", "jpeg-extended",
    ];

    [Fact]
    public async Task Three_hundred_damaged_files_each_give_a_result_or_a_typed_fault_and_the_host_lives()
    {
        ReadLimits limits = ReadLimits.Usual with { Time = TimeSpan.FromSeconds(20), AddressSpace = 3L << 30 };
        await using DicomReader reader = new(limits);
        Random random = new(20261128);
        (int read, int refused, int ended) = (0, 0, 0);
        string path = Path.Combine(oracle.Scratch, "damaged.dcm");
        for (int i = 0; i < Files; i++)
        {
            byte[] bytes = await File.ReadAllBytesAsync(Path.Combine(oracle.Made, Bases[i % Bases.Length] + ".dcm"));
            await File.WriteAllBytesAsync(path, Damaged(bytes, random));
            try
            {
                DicomFile file = await reader.ReadAsync(path);
                for (int f = 0; f < Math.Min(file.FrameCount, 3); f++)
                {
                    _ = await reader.FrameAsync(file, f);
                }

                read++;
            }
            catch (InputFaultException fault)
            {
                Assert.NotEmpty(fault.Faults[0].Remedy);
                refused++;
                ended += fault.Faults[0].Value.Contains("GDCM ended", StringComparison.Ordinal) ? 1 : 0;
            }

            if (reader.Host.ProcessId is int id)
            {
                Assert.InRange(PeakKilobytes(id), 1, limits.AddressSpace / 1024);
            }
        }

        told.WriteLine($"{read} read, {refused} refused, {ended} of them ended the worker");
        Assert.Equal(Files, read + refused);
        Assert.True(refused > 50 && read > 20, $"{read} read, {refused} refused, {ended} of them ended the worker");

        // A worker is started once and once more after each that ended: never for a file that was only refused.
        Assert.InRange(reader.Host.Starts, 1, ended + 1);
        DicomFile good = await reader.ReadAsync(Path.Combine(oracle.Made, "explicit.dcm"));
        Assert.Equal(64, (await reader.FrameAsync(good, 0)).Width);
    }

    /// <summary>Cuts the file, changes bytes of its header, writes large lengths, or garbles its pixels.</summary>
    private static byte[] Damaged(byte[] bytes, Random random)
    {
        int kind = random.Next(5);
        if (kind == 0)
        {
            return bytes[..random.Next(1, bytes.Length)];
        }

        // The head of the file ends about here; pixels lie in the last part.
        (int from, int to) = kind == 4 ? (bytes.Length / 2, bytes.Length) : (128, Math.Min(bytes.Length, 1500));
        for (int n = random.Next(1, kind == 4 ? 40 : 6); n > 0; n--)
        {
            int at = random.Next(from, to - 4);
            switch (kind)
            {
                case 1:
                    bytes[at] = (byte)random.Next(256);
                    break;
                case 2:
                    BitConverter.TryWriteBytes(bytes.AsSpan(at), random.Next(3) switch { 0 => uint.MaxValue, 1 => 0x7FFF_FFF0u, _ => (uint)random.Next() });
                    break;
                case 3:
                    BitConverter.TryWriteBytes(bytes.AsSpan(at), (ushort)random.Next(65536));
                    break;
                default:
                    bytes[at] ^= (byte)(1 << random.Next(8));
                    break;
            }
        }

        return bytes;
    }

    private static long PeakKilobytes(int process)
    {
        string? line = File.Exists($"/proc/{process}/status") ? File.ReadLines($"/proc/{process}/status").FirstOrDefault(static l => l.StartsWith("VmHWM:", StringComparison.Ordinal)) : null;
        return line is null ? 1 : long.Parse(line.Split(' ', StringSplitOptions.RemoveEmptyEntries)[1], System.Globalization.CultureInfo.InvariantCulture);
    }
}
