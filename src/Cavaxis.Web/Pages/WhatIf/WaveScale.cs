namespace Cavaxis.Web.Pages.WhatIf;

/// <summary>The vertical scale of a strip.</summary>
/// <param name="Words">Name of the strip.</param>
/// <param name="Unit">Unit.</param>
/// <param name="Low">Lower end.</param>
/// <param name="High">Upper end.</param>
public sealed record WaveScale(string Words, string Unit, double Low, double High)
{
    private static readonly double[] Marks = [1, 2, 5, 10];

    /// <summary>A scale with round ends around values. A signal that hardly moves is not drawn as if it did.</summary>
    /// <param name="words">Name of the strip.</param>
    /// <param name="unit">Unit.</param>
    /// <param name="lowest">Lowest value.</param>
    /// <param name="highest">Highest value.</param>
    public static WaveScale Of(string words, string unit, double lowest, double highest)
    {
        double span = Math.Max(highest - lowest, unit == "L/min" ? 0.5 : 4);
        double step = Nice(span / 4);
        double low = step * Math.Floor(lowest / step);
        double high = step * Math.Ceiling(highest / step);
        while (high - low < span - (1e-9 * span))
        {
            high += step;
        }

        return new WaveScale(words, unit, low, high);
    }

    private static double Nice(double value)
    {
        double power = Math.Pow(10, Math.Floor(Math.Log10(value)));
        return power * Marks.First(m => m * power >= value * (1 - 1e-9));
    }
}
