namespace Cavaxis.Dicom.Wire;

/// <summary>What the library asks of the worker: one byte, then the path of the file and a number.</summary>
internal enum WorkerRequest : byte
{
    /// <summary>All elements of a file but its pixels.</summary>
    Elements = 1,

    /// <summary>The decoded samples of the frame of that number.</summary>
    Frame = 2,

    /// <summary>The stored bytes of the fragment of that number, as they stand in the file.</summary>
    Fragment = 3,
}
