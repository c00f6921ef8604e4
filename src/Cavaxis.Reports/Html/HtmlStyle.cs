using System.Globalization;
using System.Text;
using Cavaxis.Reports.Documents;
using Cavaxis.Reports.Drawings;

namespace Cavaxis.Reports.Html;

/// <summary>The style sheet of a report page: screen in light and dark, and A4 paper.</summary>
internal static class HtmlStyle
{
    private const string Screen = """
        :root { color-scheme: light dark; --ink: #1c2430; --muted: #55606e; --paper: #ffffff; --panel: #f3f6fa; --edge: #c9d0d8;
          --stop: #9b1b30; --warning: #b84400; --caution: #7a5c00; --note: #005a96; }
        @media screen and (prefers-color-scheme: dark) { :root { --ink: #e7ebf1; --muted: #a9b4c2; --paper: #12171f; --panel: #1c2430;
          --edge: #46505e; --stop: #ff9aa8; --warning: #ffb07a; --caution: #f0d060; --note: #8cc8ff; } figure svg { box-shadow: 0 0 0 2mm #fff; margin: 2mm 0 4mm; } }
        * { box-sizing: border-box; }
        body { margin: 0; background: var(--paper); color: var(--ink); line-height: 1.45; overflow-wrap: anywhere;
          font-family: "DejaVu Sans", Verdana, "Segoe UI", Helvetica, Arial, sans-serif; font-size: 0.95rem; }
        main, footer { max-width: 190mm; margin: 0 auto; padding: 0 1rem; }
        h1 { font-size: 1.7rem; line-height: 1.2; margin: 1.2rem 0 0.2rem; }
        h2 { font-size: 1.3rem; margin: 2rem 0 0.5rem; border-bottom: 1px solid var(--edge); padding-bottom: 0.2rem; }
        h3 { font-size: 1.08rem; margin: 1.4rem 0 0.4rem; }
        h4 { font-size: 0.95rem; margin: 1.1rem 0 0.3rem; }
        p { margin: 0.5rem 0; }
        li { margin: 0.25rem 0; }
        .subtitle, figcaption, footer { color: var(--muted); }
        .banner { border-bottom: 3px double var(--warning); background: var(--panel); padding: 0.6rem max(1rem, calc(50% - 94mm)); }
        .callout { border: 1px solid var(--edge); border-left: 6px solid var(--tone); background: var(--panel);
          padding: 0.5rem 0.9rem; margin: 0.8rem 0; }
        .callout p { margin: 0.2rem 0; }
        .callout-title { font-weight: bold; }
        .sign { color: var(--tone); margin-right: 0.4rem; white-space: nowrap; }
        .stop { --tone: var(--stop); border-left-style: solid; }
        .warning { --tone: var(--warning); border-left-style: solid; }
        .caution { --tone: var(--caution); border-left-style: double; }
        .note { --tone: var(--note); border-left-style: dotted; }
        .table { overflow-x: auto; margin: 1rem 0; }
        table { border-collapse: collapse; width: 100%; font-size: 0.86rem; overflow-wrap: normal; font-variant-numeric: tabular-nums; }
        caption { text-align: left; font-weight: bold; padding: 0.3rem 0; }
        th, td { text-align: left; vertical-align: top; padding: 0.3rem 0.5rem; border-bottom: 1px solid var(--edge); }
        thead th { border-bottom: 2px solid var(--ink); background: var(--panel); vertical-align: bottom; }
        tbody th { font-weight: bold; min-width: 7em; }
        .right { text-align: right; }
        .centre { text-align: center; }
        figure { margin: 1.2rem 0; }
        figure svg { display: block; max-width: 100%; height: auto; }
        figcaption { font-size: 0.86rem; margin-top: 0.4rem; }
        footer { border-top: 1px solid var(--edge); margin-top: 2rem; font-size: 0.8rem; }

        """;

    private const string Paper = """
        @media print {
          body { font-size: 9.5pt; }
          main { max-width: none; padding: 0; }
          footer { display: none; }
          h1, h2, h3, h4 { break-after: avoid; }
          thead { display: table-header-group; }
          tr, .callout, figure { break-inside: avoid; }
          thead { break-after: avoid; }
          tbody tr:first-child { break-before: avoid; }
          h2 { margin-top: 1rem; }
          figure { margin: 0.4rem 0; }
          .table { overflow: visible; }
          .page-break { break-before: page; }
          .banner, .callout, thead th { print-color-adjust: exact; -webkit-print-color-adjust: exact; }
          .banner { padding: 0 0 6pt; background: none; }
        }

        """;

    private const string Alone = """
        .paper { display: none; }
        @page { size: A4; margin: 0; }
        @media print {
          body { background: none; }
          .banner, main, footer { display: none; }
          .paper { display: block; height: 297mm; overflow: hidden; }
          .paper svg { display: block; width: 210mm; height: 297mm; }
        }

        """;

    /// <summary>The sheet of a report that paper shows as one drawn page: the screen shows its parts, paper the drawing.</summary>
    internal static string OnePage => Screen + Alone;

    /// <summary>The whole sheet.</summary>
    /// <param name="cautionText">Printed at the foot of every page.</param>
    /// <returns>CSS text.</returns>
    internal static string Sheet(string cautionText)
    {
        string foot = "font-family: \"DejaVu Sans\", Verdana, Arial, sans-serif; font-size: 7pt; color: #55606e; border-top: 0.5pt solid #55606e; vertical-align: top; padding-top: 2mm;";
        string page = $$"""
            @page { size: A4; margin: 15mm 18mm 22mm 18mm;
              @bottom-left { content: {{Quoted(cautionText)}}; width: 82%; text-align: left; {{foot}} }
              @bottom-right { content: "page " counter(page) " of " counter(pages); width: 18%; text-align: right; {{foot}} } }

            """;
        return Screen + Paper + page;
    }

    /// <summary>Class name of a kind of callout.</summary>
    internal static string ClassOf(CalloutKind kind) => kind switch
    {
        CalloutKind.Stop => "stop",
        CalloutKind.Warning => "warning",
        CalloutKind.Caution => "caution",
        _ => "note",
    };

    /// <summary>A CSS string in which everything but letters, digits, spaces and plain points is written by its number.</summary>
    private static string Quoted(string text)
    {
        var quoted = new StringBuilder("\"");
        foreach (Rune rune in PrintableText.OneLine(text).EnumerateRunes())
        {
            _ = rune.IsAscii && (char.IsAsciiLetterOrDigit((char)rune.Value) || rune.Value is ' ' or '.' or ',')
                ? quoted.Append((char)rune.Value)
                : quoted.Append(CultureInfo.InvariantCulture, $"\\{rune.Value:x6}");
        }

        return quoted.Append('"').ToString();
    }
}
