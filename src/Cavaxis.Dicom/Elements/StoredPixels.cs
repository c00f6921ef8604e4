namespace Cavaxis.Dicom.Elements;

/// <summary>How pixels are stored in a file: the bytes themselves stay with the worker.</summary>
/// <param name="IsFragmented">True where they are compressed.</param>
/// <param name="Lengths">Bytes of each fragment; of the one piece where they are not compressed.</param>
internal sealed record StoredPixels(bool IsFragmented, IReadOnlyList<long> Lengths);
