namespace Cavaxis.Bedside.Images;

/// <summary>An image or series that was taken in: it stands in the record and lies beside it.</summary>
/// <param name="Id">Its hash.</param>
/// <param name="Name">What it is, for people.</param>
/// <param name="MaskedPixels">Pixels of each frame that were blackened.</param>
public sealed record TakenImage(string Id, string Name, int MaskedPixels);
