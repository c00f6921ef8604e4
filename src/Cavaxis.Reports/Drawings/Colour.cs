using System.Globalization;

namespace Cavaxis.Reports.Drawings;

/// <summary>An opaque screen colour (sRGB).</summary>
/// <param name="Red">Red, 0 to 255.</param>
/// <param name="Green">Green, 0 to 255.</param>
/// <param name="Blue">Blue, 0 to 255.</param>
public readonly record struct Colour(byte Red, byte Green, byte Blue)
{
    /// <summary>Main lines and text.</summary>
    public static Colour Ink { get; } = new(0x1C, 0x24, 0x30);

    /// <summary>Secondary lines and text; still 4.5 to 1 against white.</summary>
    public static Colour Muted { get; } = new(0x55, 0x60, 0x6E);

    /// <summary>Grid lines and other faint help.</summary>
    public static Colour Faint { get; } = new(0xC9, 0xD0, 0xD8);

    /// <summary>The paper.</summary>
    public static Colour Paper { get; } = new(0xFF, 0xFF, 0xFF);

    /// <summary>Vessel wall.</summary>
    public static Colour Wall { get; } = new(0x5B, 0x6B, 0x86);

    /// <summary>Lumen of a vein.</summary>
    public static Colour Lumen { get; } = new(0xE4, 0xEA, 0xF4);

    /// <summary>Blood on its way to the pump; the blue of the Okabe–Ito set that colour-blind people can tell apart.</summary>
    public static Colour Drainage { get; } = new(0x00, 0x5A, 0x96);

    /// <summary>Blood on its way back to the patient; the vermilion of the same set, darkened for print.</summary>
    public static Colour Return { get; } = new(0xB8, 0x44, 0x00);

    /// <summary>A fulfilled condition; the bluish green of the same set, darkened for print.</summary>
    public static Colour Accepted { get; } = new(0x00, 0x70, 0x52);

    /// <summary>A broken condition.</summary>
    public static Colour Refused { get; } = new(0x9B, 0x1B, 0x30);

    /// <summary>Six colours that can be told apart without full colour vision, for series in charts.</summary>
    public static IReadOnlyList<Colour> Series { get; } =
    [
        Drainage, Return, Accepted, new(0x7A, 0x3E, 0x8F), new(0x8A, 0x6A, 0x00), new(0x3A, 0x3F, 0x4A),
    ];

    /// <summary>The colour as <c>#rrggbb</c>.</summary>
    /// <returns>The code.</returns>
    public string ToHex() => string.Create(CultureInfo.InvariantCulture, $"#{Red:x2}{Green:x2}{Blue:x2}");
}
