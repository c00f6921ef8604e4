using System.Globalization;

namespace Cavaxis.Records.Events;

/// <summary>Numbers as RFC 8785 section 3.2.2.3 writes them: the shortest digits that read back to the same double, laid out as ECMAScript does.</summary>
internal static class CanonicalNumber
{
    /// <summary>Writes a number.</summary>
    /// <param name="value">A finite number.</param>
    /// <returns>Its one text.</returns>
    public static string Of(double value)
    {
        if (value == 0)
        {
            return "0";
        }

        // "R" gives the shortest digits that read back to the same double, as 123.45 or 1.2E-07.
        string shortest = Math.Abs(value).ToString("R", CultureInfo.InvariantCulture);
        int e = shortest.IndexOf('E', StringComparison.Ordinal);
        string significand = e < 0 ? shortest : shortest[..e];
        int point = significand.IndexOf('.', StringComparison.Ordinal);
        int before = (point < 0 ? significand.Length : point) + (e < 0 ? 0 : int.Parse(shortest.AsSpan(e + 1), CultureInfo.InvariantCulture));
        string digits = significand.Replace(".", string.Empty, StringComparison.Ordinal);
        string leading = digits.TrimStart('0');
        return (value < 0 ? "-" : string.Empty) + LaidOut(leading.TrimEnd('0'), before - (digits.Length - leading.Length));
    }

    /// <summary>ECMA-262 Number::toString: digits and the place of the point counted from the first digit.</summary>
    private static string LaidOut(string digits, int point)
    {
        if (point is > 0 and <= 21)
        {
            return digits.Length <= point ? digits.PadRight(point, '0') : $"{digits[..point]}.{digits[point..]}";
        }

        if (point is > -6 and <= 0)
        {
            return $"0.{new string('0', -point)}{digits}";
        }

        string exponent = (point - 1).ToString("+0;-0", CultureInfo.InvariantCulture);
        return digits.Length == 1 ? $"{digits}e{exponent}" : $"{digits[..1]}.{digits[1..]}e{exponent}";
    }
}
