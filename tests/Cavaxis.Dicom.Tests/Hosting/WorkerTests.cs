using System.Diagnostics;
using Cavaxis.Dicom.Hosting;
using Cavaxis.Dicom.Reading;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Dicom.Tests.Hosting;

public sealed class WorkerTests
{
    private static readonly string Good = Path.Combine(Places.Pydicom, "CT_small.dcm");

    [Theory]
    [InlineData("SEGV")]
    [InlineData("ABRT")]
    [InlineData("KILL")]
    public async Task A_native_crash_leaves_the_host_alive_and_the_next_file_is_read(string signal)
    {
        await using DicomReader reader = new();
        DicomFile file = await reader.ReadAsync(Good);
        await SignalAsync(reader, signal);

        // The worker ends as if native code had: the request that meets it fails by name, and no other.
        InputFaultException fault = await Assert.ThrowsAsync<InputFaultException>(() => reader.FrameAsync(file, 0));
        Assert.Equal(FaultCode.UnreadableFile, fault.Faults[0].Code);
        Assert.Contains("GDCM ended", fault.Faults[0].Value, StringComparison.Ordinal);
        Assert.Equal(128, (await reader.FrameAsync(file, 0)).Width);
        Assert.Equal(2, reader.Host.Starts);
    }

    [Fact]
    public async Task A_worker_that_hangs_is_stopped_at_the_limit_and_the_next_file_is_read()
    {
        await using DicomReader reader = new();
        DicomFile file = await reader.ReadAsync(Good);
        await using DicomReader hasty = new(ReadLimits.Usual with { Time = TimeSpan.FromMilliseconds(1) });
        InputFaultException fault = await Assert.ThrowsAsync<InputFaultException>(() => hasty.ReadAsync(Good));
        Assert.Contains("no answer within", fault.Faults[0].Value, StringComparison.Ordinal);
        Assert.Null(hasty.Host.ProcessId);
        Assert.Equal(128, (await reader.FrameAsync(file, 0)).Width);
    }

    [Fact]
    public async Task A_worker_without_memory_ends_as_a_fault()
    {
        await using DicomReader reader = new(ReadLimits.Usual with { AddressSpace = 64L << 20 });
        InputFaultException fault = await Assert.ThrowsAsync<InputFaultException>(() => reader.ReadAsync(Good));
        Assert.Equal(FaultCode.UnreadableFile, fault.Faults[0].Code);
    }

    [Fact]
    public async Task Without_GDCM_the_person_is_told_what_to_install()
    {
        string nowhere = Directory.CreateTempSubdirectory("cavaxis-nowhere-").FullName;
        await using DicomReader reader = new(bindingFolder: nowhere);
        InputFaultException fault = await Assert.ThrowsAsync<InputFaultException>(() => reader.ReadAsync(Good));
        Assert.Equal((FaultCode.NotFound, "gdcm-sharp.dll"), (fault.Faults[0].Code, fault.Faults[0].Field));
        Assert.Contains("libgdcm-cil", fault.Faults[0].Remedy, StringComparison.Ordinal);
        Directory.Delete(nowhere);
    }

    [Fact]
    public async Task A_file_that_is_too_long_missing_or_no_image_is_named()
    {
        await using DicomReader reader = new(ReadLimits.Usual with { FileLength = 1000 });
        Assert.Equal(FaultCode.FileTooLarge, (await Assert.ThrowsAsync<InputFaultException>(() => reader.ReadAsync(Good))).Faults[0].Code);
        Assert.Equal("(no such file)", (await Assert.ThrowsAsync<InputFaultException>(() => reader.ReadAsync(Good + "x"))).Faults[0].Value);
        string text = Path.GetTempFileName();
        await File.WriteAllTextAsync(text, "no image");
        Assert.Equal(FaultCode.MalformedText, (await Assert.ThrowsAsync<InputFaultException>(() => reader.ReadAsync(text))).Faults[0].Code);
        File.Delete(text);
    }

    // The file states 8192 bytes of pixels and ends 62 bytes early (pydicom refuses it too); GDCM fills the rest with zeros.
    [Fact]
    public async Task A_file_that_ends_before_its_pixels_is_refused()
    {
        await using DicomReader reader = new();
        InputFaultException fault = await Assert.ThrowsAsync<InputFaultException>(() => reader.ReadAsync(Path.Combine(Places.Pydicom, "MR_truncated.dcm")));
        Assert.Contains("ends before its pixels", fault.Faults[0].Value, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_frame_that_is_not_there_and_a_file_without_a_picture_are_named()
    {
        await using DicomReader reader = new();
        DicomFile file = await reader.ReadAsync(Good);
        Assert.Equal("frame", (await Assert.ThrowsAsync<InputFaultException>(() => reader.FrameAsync(file, 1))).Faults[0].Field);
        DicomFile report = await reader.ReadAsync(Path.Combine(Places.Pydicom, "test-SR.dcm"));
        Assert.Equal(0, report.FrameCount);
        Assert.Contains("no picture", (await Assert.ThrowsAsync<InputFaultException>(() => reader.FrameAsync(report, 0))).Faults[0].Value, StringComparison.Ordinal);
    }

    private static async Task SignalAsync(DicomReader reader, string signal)
    {
        using Process worker = Process.GetProcessById(reader.Host.ProcessId!.Value);

        // The runtime's handler takes the first signal of a kind that no instruction raised, and puts the default back: the second ends it.
        for (int n = 0; n < 50 && !worker.HasExited; n++)
        {
            using Process kill = Process.Start("/bin/kill", ["-s", signal, $"{worker.Id}"]);
            await kill.WaitForExitAsync();
            await Task.Delay(100);
        }

        Assert.True(worker.HasExited);
    }
}
