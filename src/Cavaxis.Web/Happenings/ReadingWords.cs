using System.Globalization;
using Cavaxis.Course.Observations;
using Cavaxis.Web.Entry;

namespace Cavaxis.Web.Happenings;

/// <summary>A reading in words.</summary>
internal static class ReadingWords
{
    /// <summary>Name above a field; "pH" stays as it is written.</summary>
    public static string Label(QuantityDefinition one) =>
        one.Words.Length > 1 && char.IsUpper(one.Words[1]) ? one.Words : WordLabel.Capital(one.Words);

    /// <summary>Name, value with error, unit.</summary>
    public static string Of(Reading reading)
    {
        QuantityDefinition one = QuantityTable.Of(reading.Quantity);
        return string.Create(CultureInfo.InvariantCulture, $"{one.Words} {reading.Value:G4} ± {reading.Sd ?? one.UsualSd:G2}{(one.Unit == "1" ? string.Empty : " " + one.Unit)}");
    }
}
