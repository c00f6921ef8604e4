namespace Cavaxis.Dicom.Hosting;

/// <summary>What one request to the worker may take, so that no file can take down the program that asks.</summary>
/// <param name="Time">Longest answer.</param>
/// <param name="AddressSpace">Most memory that the worker may map, bytes; the kernel refuses more (Linux).</param>
/// <param name="Heap">Most memory of its managed part, bytes.</param>
/// <param name="FileLength">Longest file that is opened, bytes.</param>
public sealed record ReadLimits(TimeSpan Time, long AddressSpace, long Heap, long FileLength)
{
    /// <summary>60 s, 4 GB with 640 MB of them managed, files up to 1 GB.</summary>
    public static ReadLimits Usual { get; } = new(TimeSpan.FromSeconds(60), 4L << 30, 640L << 20, 1L << 30);
}
