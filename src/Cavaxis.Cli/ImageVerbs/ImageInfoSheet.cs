namespace Cavaxis.Cli.ImageVerbs;

/// <summary>What <c>image info</c> tells.</summary>
/// <param name="Images">Images that are no slices of a series.</param>
/// <param name="Series">The slices of a folder as one volume; null where there are none.</param>
/// <param name="LeftOut">Files that could not be read.</param>
public sealed record ImageInfoSheet(IReadOnlyList<ImageSheet> Images, SeriesSheet? Series, IReadOnlyList<LeftOutFile> LeftOut);
