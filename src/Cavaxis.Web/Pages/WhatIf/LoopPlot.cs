using System.Globalization;
using System.Text;
using Cavaxis.Circulation.Signals;

namespace Cavaxis.Web.Pages.WhatIf;

/// <summary>Geometry of the drawing of pressure-volume loops: from volumes and pressures to the square of the picture.</summary>
internal sealed class LoopPlot
{
    /// <summary>Left edge of the plot.</summary>
    public const double Left = 46;

    /// <summary>Upper edge.</summary>
    public const double Top = 14;

    /// <summary>Width of the plot.</summary>
    public const double Width = 262;

    /// <summary>Height of the plot.</summary>
    public const double Height = 190;

    private readonly WaveScale volume;
    private readonly WaveScale pressure;

    private LoopPlot(WaveScale volume, WaveScale pressure) => (this.volume, this.pressure) = (volume, pressure);

    /// <summary>Marks of the volume axis.</summary>
    public IReadOnlyList<(double At, string Text)> VolumeMarks => [.. Ends(volume).Select(v => (X(v), Text(v)))];

    /// <summary>Marks of the pressure axis.</summary>
    public IReadOnlyList<(double At, string Text)> PressureMarks => [.. Ends(pressure).Select(p => (Y(p), Text(p)))];

    /// <summary>Numbers from which a script finds the place of a point: lowest volume, pixels per mL, lowest pressure, pixels per mmHg.</summary>
    public string Place => string.Create(CultureInfo.InvariantCulture, $"{volume.Low} {Width / (volume.High - volume.Low)} {pressure.Low} {Height / (pressure.High - pressure.Low)}");

    /// <summary>A plot that holds some breaths.</summary>
    /// <param name="breaths">The breaths, at least one.</param>
    public static LoopPlot Around(IReadOnlyList<BreathRecord> breaths) => new(
        Axis(breaths, Signal.LeftVentricularVolume, "mL"), Axis(breaths, Signal.LeftVentricularPressure, "mmHg"));

    /// <summary>The path of a breath.</summary>
    /// <param name="breath">The breath.</param>
    /// <returns>A closed path.</returns>
    public string Path(BreathRecord breath)
    {
        StringBuilder path = new();
        ReadOnlySpan<double> v = breath[Signal.LeftVentricularVolume];
        ReadOnlySpan<double> p = breath[Signal.LeftVentricularPressure];
        for (int i = 0; i < v.Length; i++)
        {
            path.Append(CultureInfo.InvariantCulture, $"{(i == 0 ? 'M' : 'L')}{X(v[i]):F1} {Y(p[i]):F1}");
        }

        return path.Append('Z').ToString();
    }

    private static WaveScale Axis(IReadOnlyList<BreathRecord> breaths, Signal signal, string unit) =>
        WaveScale.Of(signal.ToString(), unit, breaths.Min(b => b.Lowest(signal)), breaths.Max(b => b.Highest(signal)));

    private static IEnumerable<double> Ends(WaveScale scale) => [scale.Low, (scale.Low + scale.High) / 2, scale.High];

    private static string Text(double value) => value.ToString("0.#", CultureInfo.InvariantCulture).Replace('-', '−');

    private double X(double v) => Left + (Width * (v - volume.Low) / (volume.High - volume.Low));

    private double Y(double p) => Top + (Height * (pressure.High - p) / (pressure.High - pressure.Low));
}
