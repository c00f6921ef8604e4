namespace Cavaxis.Imaging.Tests.Tomography;

/// <summary>
/// What was seen on axial pictures of the two open scans without any line drawn on them: reading A with a narrow window on the mean of three
/// slices, reading B with a wide window on single slices (in the liver a narrow one on the mean of five) and another crop, so that an edge was
/// measured twice against other ticks. One reader, so the two share whatever that reader takes for an edge.
/// </summary>
internal static class OpenScanReadings
{
    private const double Unseen = double.NaN;

    /// <summary>SVC to slice 57, right atrium (edges that can be told from its neighbours) to 82, IVC below.</summary>
    public static IReadOnlyList<SeenSlice> ChestA { get; } =
    [
        new(52, 104.2, 112.1, 127.6, 135.5), new(57, 104.4, 111.2, Unseen, 134.6), new(62, 103.2, 111.3, Unseen, 133.7), new(67, 102.2, 113, Unseen, 133.9),
        new(72, 101.3, Unseen, Unseen, 135), new(77, 99, 115, Unseen, 140), new(82, 99, 115, Unseen, 141), new(87, 101, 113.5, Unseen, 141),
        new(92, 99.8, 116.6, 131.3, 143.7), new(97, Unseen, 117.7, 133.2, 146.2), new(102, Unseen, 116.1, 135, 149), new(107, 102.3, 113.6, 137.7, 150.3),
        new(112, 101.5, 114.6, 137.5, 151.3), new(117, 101.7, 115.2, 138.6, 151.9), new(122, 101.4, 115.7, 138.6, 151.6), new(127, 102.4, 116.6, 139.5, 152),
    ];

    public static IReadOnlyList<SeenSlice> ChestB { get; } =
    [
        new(52, 104.7, 112.3, 128.2, 135.6), new(57, 103.7, 112, Unseen, 133.9), new(62, 103, 112.2, Unseen, 133.5), new(67, 102.7, 113.9, Unseen, 134.1),
        new(72, 100.9, 117.8, Unseen, 135.6), new(77, 100.2, 114.5, Unseen, 140), new(82, 99.5, 114, Unseen, 141), new(87, 100.6, 114.3, Unseen, 141.5),
        new(92, 99.7, 116.3, 131.7, 144), new(97, Unseen, 117.4, 133.2, 145.6), new(102, Unseen, 115.7, Unseen, 148), new(107, 102.2, 114.4, 137.3, 150.9),
        new(112, 101.4, 114.3, 137.4, 151.5), new(117, 101.5, 115.2, 138.1, 152), new(122, 102, 115.8, 139.2, 151), new(127, 102.4, 116.8, 139.6, 151.9),
    ];

    /// <summary>Right external iliac vein, at 46 to 49 with the artery on it (calcified in front at 43), alone at 61 and below.</summary>
    public static IReadOnlyList<SeenSlice> RightA { get; } =
    [
        new(46, 94.5, 102, 112.6, 123.3), new(49, 93.1, 101.6, 112.6, 121.5), new(52, 92.1, 101, 113.8, 119.6), new(55, 90.8, 96.8, 112, 117.4), new(58, 90.7, 96.2, 112, 116),
        new(61, 90.3, 95.5, 107, 114), new(64, 90, 94.3, 105, 112.4), new(67, 89.5, 94.7, 103.9, 110.1), new(70, 88.8, 92.9, 102.2, 108.5),
    ];

    public static IReadOnlyList<SeenSlice> RightB { get; } =
    [
        new(46, 93.7, 102, 112, 123.8), new(49, 92.9, 101.1, 112, 121.8), new(52, 92, 100, 113.1, 120), new(55, 90.6, 96.1, 112.5, 117.9), new(58, 90.6, 95.9, 112.5, 116.4),
        new(61, 90.3, 95.7, 107.3, 114.5), new(64, 90, 94.7, 104.5, 112.7), new(67, 89.3, 94.5, 103.6, 110.9), new(70, 88.4, 92.5, 101.8, 109.1),
    ];

    /// <summary>Left external iliac vein: behind the artery and apart from it at 46 to 52, touching it from 55 on.</summary>
    public static IReadOnlyList<SeenSlice> LeftA { get; } =
    [
        new(49, 149.7, 154, 117.4, 123.3), new(52, 150.6, 155.5, 113.6, 122.7), new(55, 151.5, 156.6, 112, 119.8), new(58, 151.7, 156.4, 112, 118.6),
        new(61, 152.3, 157.7, 109.5, 116), new(64, 152.2, 157.4, 106.8, 113.2), new(67, 151.9, 158, 103.1, 110.6), new(70, 152.9, 158.7, 102.3, 108.5),
    ];

    public static IReadOnlyList<SeenSlice> LeftB { get; } =
    [
        new(49, 150, 154.3, 117, 123.8), new(52, 150.6, 155.5, 115, 122.5), new(55, 151.4, 156.5, 113.4, 119.7), new(58, 151.6, 155.7, 112.9, 119),
        new(61, 152, 158.4, 109.5, 116.4), new(64, 152.3, 157.7, 106.8, 113.6), new(67, 153.8, 159.3, 104.5, 111.8), new(70, 152.7, 158.2, 102.3, 108.2),
    ];

    /// <summary>The mean of two readings of one slice.</summary>
    public static IReadOnlyList<SeenSlice> Mean(IReadOnlyList<SeenSlice> one, IReadOnlyList<SeenSlice> other) =>
        [.. one.Zip(other, static (a, b) => new SeenSlice(a.Slice, (a.Left + b.Left) / 2, (a.Right + b.Right) / 2, (a.Front + b.Front) / 2, (a.Back + b.Back) / 2))];
}
