namespace Cavaxis.Dicom.Worker;

/// <summary>Which fragments make a frame: the standard lets a frame be cut into several (PS3.5 A.4).</summary>
internal static class FragmentRun
{
    /// <summary>The run of a frame.</summary>
    /// <param name="fragments">How many fragments there are.</param>
    /// <param name="frames">How many frames are stated.</param>
    /// <param name="frame">The frame, from 0.</param>
    /// <param name="bytes">Bytes of a fragment.</param>
    /// <returns>First fragment and how many.</returns>
    /// <exception cref="WorkerFaultException">They cannot be told apart.</exception>
    public static (int First, int Count) Of(int fragments, int frames, int frame, Func<int, byte[]> bytes)
    {
        if (frame < 0 || frame >= frames || fragments < frames)
        {
            throw new WorkerFaultException("it holds fewer frames than it says");
        }

        if (fragments == frames)
        {
            return (frame, 1);
        }

        if (frames == 1)
        {
            return (0, fragments);
        }

        // A JPEG or JPEG-LS picture begins with FF D8, a JPEG 2000 codestream with FF 4F: what begins otherwise goes on with the last.
        int[] starts = [.. Enumerable.Range(0, fragments).Where(i => bytes(i) is [0xFF, 0xD8 or 0x4F, ..])];
        return starts.Length == frames
            ? (starts[frame], (frame + 1 < frames ? starts[frame + 1] : fragments) - starts[frame])
            : throw new WorkerFaultException("its pixels are cut into fragments that cannot be told apart into frames");
    }
}
