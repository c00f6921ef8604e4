using System.Globalization;
using Cavaxis.Reports.Drawings;

namespace Cavaxis.Reports.AxisDrawings;

/// <summary>Numbers of the axis in words.</summary>
internal static class AxisWords
{
    /// <summary>A position with its interval, such as "3.1 cm below SCAJ (2.2–4.0)".</summary>
    internal static string Position(Spread z, string zero)
    {
        if (z.Median == 0 && z.Low == 0 && z.High == 0)
        {
            return "zero of the ruler";
        }

        string side = z.Median < 0 ? "above" : "below";
        string head = $"{Cm(Math.Abs(z.Median))} cm {side} {PrintableText.OneLine(zero)}";
        return z.Low == z.High ? head
            : z.Low < 0 && z.High > 0 ? $"{head} ({Cm(-z.Low)} above to {Cm(z.High)} below)"
            : $"{head} ({Cm(Math.Min(Math.Abs(z.Low), Math.Abs(z.High)))}–{Cm(Math.Max(Math.Abs(z.Low), Math.Abs(z.High)))})";
    }

    /// <summary>What the zone says of a port.</summary>
    internal static string Verdict(PortZone zone)
    {
        string likely = zone.Probability is double p
            ? string.Create(CultureInfo.InvariantCulture, $", {Math.Round(p * 100):0} % inside")
            : string.Empty;
        return $"{(zone.Acceptable ? "✓ zone met" : "✗ zone not met")}{likely}";
    }

    /// <summary>Where a port looks.</summary>
    internal static string Facing(PortFacing facing) => facing switch
    {
        PortFacing.AllRound => "holes all round",
        PortFacing.End => "end hole",
        PortFacing.TowardTricuspid => "faces the tricuspid valve",
        PortFacing.AwayFromTricuspid => "faces away from the valve",
        _ => "facing not known",
    };

    /// <summary>A diameter, and its interval on a line of its own.</summary>
    internal static IEnumerable<string> Diameter(Spread d)
    {
        yield return string.Create(CultureInfo.InvariantCulture, $"Ø {d.Median:0.#} mm");
        if (d.Low < d.High)
        {
            yield return string.Create(CultureInfo.InvariantCulture, $"({d.Low:0.#}–{d.High:0.#})");
        }
    }

    private static string Cm(double mm) => Math.Round(mm / 10, 1, MidpointRounding.AwayFromZero).ToString("0.0", CultureInfo.InvariantCulture);
}
