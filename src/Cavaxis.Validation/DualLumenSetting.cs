using Cavaxis.Anatomy.Axis;

namespace Cavaxis.Validation;

/// <summary>One assumption about how the dual-lumen cannula is used, for which the curve over height is computed.</summary>
/// <param name="Name">In words.</param>
/// <param name="Entry">Height of the skin entry on the neck.</param>
/// <param name="PublishedTip">True for the published tip zone of 30 to 50 mm inside the IVC; false for the built-in 30 to 80 mm.</param>
public sealed record DualLumenSetting(string Name, NeckEntry Entry, bool PublishedTip)
{
    /// <summary>Low on the neck, built-in zone: how large cannulae are placed by common practice.</summary>
    public static DualLumenSetting Low { get; } = new("low entry, tip 30 to 80 mm", NeckEntry.LowNeck, false);

    /// <summary>Middle of the neck, built-in zone.</summary>
    public static DualLumenSetting Mid { get; } = new("mid-neck entry, tip 30 to 80 mm", NeckEntry.MidNeck, false);

    /// <summary>Entry not said, built-in zone.</summary>
    public static DualLumenSetting Unknown { get; } = new("entry not said, tip 30 to 80 mm", NeckEntry.Unknown, false);

    /// <summary>Low on the neck, published zone.</summary>
    public static DualLumenSetting LowPublished { get; } = new("low entry, tip 30 to 50 mm", NeckEntry.LowNeck, true);

    /// <summary>Middle of the neck, published zone.</summary>
    public static DualLumenSetting MidPublished { get; } = new("mid-neck entry, tip 30 to 50 mm", NeckEntry.MidNeck, true);

    /// <summary>All, in the order of the document's columns.</summary>
    public static IReadOnlyList<DualLumenSetting> All { get; } = [Low, Mid, Unknown, LowPublished, MidPublished];
}
