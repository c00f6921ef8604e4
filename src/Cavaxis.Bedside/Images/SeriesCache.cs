using Cavaxis.Dicom.Series;

namespace Cavaxis.Bedside.Images;

/// <summary>
/// Series of tomography as they were last read, shared by all windows: a series is read once, however many look at it, and the memory for all is bounded.
/// They are found by their hash alone, so whoever asks must have been granted the image before.
/// </summary>
/// <param name="mostBytes">Memory for voxels; the series read last stays even where it alone is larger.</param>
public sealed class SeriesCache(long mostBytes = SeriesCache.UsualBytes)
{
    /// <summary>Room for two series of 512 × 512 × 600 voxels.</summary>
    public const long UsualBytes = 2L * 512 * 512 * 600 * sizeof(short);

    private readonly Lock turn = new();
    private readonly LinkedList<(string Id, Task<ScanSeries> Series)> latest = [];

    /// <summary>The series of a hash: the one that is held, else read now. Windows that ask at the same time wait for one reading.</summary>
    /// <param name="id">Its hash.</param>
    /// <param name="read">Reads it.</param>
    /// <returns>The series.</returns>
    public async Task<ScanSeries> GetAsync(string id, Func<Task<ScanSeries>> read)
    {
        ArgumentNullException.ThrowIfNull(id);
        ArgumentNullException.ThrowIfNull(read);
        Task<ScanSeries> reading;
        lock (turn)
        {
            reading = Take(id)?.Series ?? Task.Run(read);
            latest.AddFirst((id, reading));
        }

        try
        {
            ScanSeries series = await reading;
            Trim();
            return series;
        }
        catch
        {
            // What failed is not kept: the next who asks tries again.
            lock (turn)
            {
                if (latest.FirstOrDefault(e => e.Id == id).Series == reading)
                {
                    Take(id);
                }
            }

            throw;
        }
    }

    /// <summary>Bytes of the voxels that are held.</summary>
    public long HeldBytes
    {
        get
        {
            lock (turn)
            {
                return latest.Sum(static e => BytesOf(e.Series));
            }
        }
    }

    private static long BytesOf(Task<ScanSeries> series) =>
        series.IsCompletedSuccessfully ? (long)series.Result.Volume.Columns * series.Result.Volume.Rows * series.Result.Volume.Slices * sizeof(short) : 0;

    private (string Id, Task<ScanSeries> Series)? Take(string id)
    {
        for (LinkedListNode<(string Id, Task<ScanSeries> Series)>? node = latest.First; node is not null; node = node.Next)
        {
            if (node.Value.Id == id)
            {
                latest.Remove(node);
                return node.Value;
            }
        }

        return null;
    }

    private void Trim()
    {
        lock (turn)
        {
            while (latest.Count > 1 && latest.Sum(static e => BytesOf(e.Series)) > mostBytes)
            {
                latest.RemoveLast();
            }
        }
    }
}
