namespace Cavaxis.Dicom.Tests.Oracle;

/// <summary>What pydicom reads in one file; the fields of oracle.py.</summary>
public sealed record OracleFile
{
    public required string Path { get; init; }

    public string? Unread { get; init; }

    public string? Undecoded { get; init; }

    public string Sha256 { get; init; } = string.Empty;

    public string TransferSyntax { get; init; } = string.Empty;

    public int Rows { get; init; }

    public int Columns { get; init; }

    public int Frames { get; init; }

    public string Modality { get; init; } = string.Empty;

    public double[]? PixelSpacing { get; init; }

    public double? FrameTime { get; init; }

    public double[]? Position { get; init; }

    public double[]? Orientation { get; init; }

    public double? Slope { get; init; }

    public double? Intercept { get; init; }

    public double[][] Regions { get; init; } = [];

    public OracleShown[] Written { get; init; } = [];

    /// <summary>Where its frames lie.</summary>
    public string Prefix { get; init; } = string.Empty;

    public string Name => System.IO.Path.GetFileName(Path);

    /// <summary>Stored values of a frame.</summary>
    public long[] Stored(int frame) => [.. File.ReadAllBytes($"{Prefix}{frame}.raw").Chunk(8).Select(static b => BitConverter.ToInt64(b))];

    /// <summary>The frame in colours.</summary>
    public byte[] Shown(int frame) => File.ReadAllBytes($"{Prefix}{frame}.rgb");
}
