namespace Cavaxis.Cli.ImageVerbs;

/// <summary>What <c>image measure</c> found.</summary>
/// <param name="FileSha256">SHA-256 of the file.</param>
/// <param name="Columns">Columns of the image.</param>
/// <param name="Rows">Rows of the image.</param>
/// <param name="Frames">Frames of the file.</param>
/// <param name="Frame">Frame measured on, from 1.</param>
/// <param name="Regions">Its regions, judged.</param>
/// <param name="Measurements">What was measured.</param>
/// <param name="Breath">A vein over the breath; null where that was not asked.</param>
public sealed record MeasureSheet(
    string FileSha256, int Columns, int Rows, int Frames, int Frame, IReadOnlyList<RegionRow> Regions, IReadOnlyList<MeasurementRow> Measurements, BreathRow? Breath);
