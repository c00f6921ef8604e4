using Cavaxis.Reports.Drawings;

namespace Cavaxis.Reports.Documents;

/// <summary>Word, sign and colour of each kind of callout, the same in every format.</summary>
internal static class CalloutWords
{
    /// <summary>The word before the title.</summary>
    internal static string Word(CalloutKind kind) => kind switch
    {
        CalloutKind.Stop => "STOP",
        CalloutKind.Warning => "WARNING",
        CalloutKind.Caution => "CAUTION",
        _ => "NOTE",
    };

    /// <summary>The sign before the word.</summary>
    internal static string Sign(CalloutKind kind) => kind switch
    {
        CalloutKind.Stop => "■",
        CalloutKind.Warning => "▲",
        CalloutKind.Caution => "◆",
        _ => "●",
    };

    /// <summary>Colour of edge and word; at least 4.5 to 1 against white.</summary>
    internal static Colour Tone(CalloutKind kind) => kind switch
    {
        CalloutKind.Stop => Colour.Refused,
        CalloutKind.Warning => Colour.Return,
        CalloutKind.Caution => new Colour(0x7A, 0x5C, 0x00),
        _ => Colour.Drainage,
    };
}
