using System.Globalization;
using Cavaxis.Bedside.Programmes;
using Cavaxis.Course.Outcomes;

namespace Cavaxis.Web.Pages.Outcomes;

/// <summary>Plain words for the outcomes of a programme.</summary>
internal static class OutcomeWords
{
    /// <summary>The share, such as "23 %".</summary>
    public static string Share(OutcomeShare share) => share.Known == 0 ? "not known" : string.Create(CultureInfo.InvariantCulture, $"{100.0 * share.Events / share.Known:0} %");

    /// <summary>Its 95 % interval, such as "8 to 48 %".</summary>
    public static string Interval(OutcomeShare share) => share is { Low95: double low, High95: double high } ? string.Create(CultureInfo.InvariantCulture, $"{100 * low:0} to {100 * high:0} %") : string.Empty;

    /// <summary>The counts, such as "3 of 13".</summary>
    public static string Count(OutcomeShare share) => string.Create(CultureInfo.InvariantCulture, $"{share.Events} of {share.Known}");

    /// <summary>Of how many it is not known.</summary>
    public static string Unknown(OutcomeShare share) => share.Unknown == 0 ? string.Empty : string.Create(CultureInfo.InvariantCulture, $"not known of {share.Unknown}");

    /// <summary>What is said of counts that are too few; nothing where they are not.</summary>
    public static string Few(OutcomeShare share) => !share.IsSmall ? string.Empty : share.Known == 0 ? "▲ No case" : "▲ Few cases: not fit for a comparison";

    /// <summary>A kind of support.</summary>
    public static string Of(SupportKind kind) => kind switch
    {
        SupportKind.VenoVenous => "Veno-venous",
        SupportKind.VenoArterial => "Veno-arterial",
        SupportKind.Resuscitation => "Veno-arterial, begun during resuscitation",
        SupportKind.VenoArterialVenous => "Veno-arterio-venous",
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "Not a kind."),
    };

    /// <summary>Who is not counted, and why; empty where everyone is.</summary>
    public static IReadOnlyList<string> LeftOut(ProgrammeReading reading)
    {
        List<string> words = [];
        Add(reading.LeftOut(LeftOutReason.OnSupport), "on support now");
        Add(reading.LeftOut(LeftOutReason.NotBegun), "without a start of support in the record");
        Add(reading.LeftOut(LeftOutReason.NoAge), "whose age cannot be read, because the case has faults");
        return words;

        void Add(int count, string why)
        {
            if (count > 0)
            {
                words.Add(string.Create(CultureInfo.InvariantCulture, $"{count} {why}"));
            }
        }
    }
}
