using Cavaxis.Course.Events;

namespace Cavaxis.Bedside.Images;

/// <summary>An image of a patient as the record tells it.</summary>
/// <param name="Id">Its hash.</param>
/// <param name="Entry">The entry with which it was taken in.</param>
/// <param name="IsThere">False where the record names it but it does not lie beside the record.</param>
public sealed record ListedImage(string Id, Logged<ImagingDone> Entry, bool IsThere);
