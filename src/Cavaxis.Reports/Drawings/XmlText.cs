using System.Text;

namespace Cavaxis.Reports.Drawings;

/// <summary>Escaping for XML and HTML, fit for element text and for quoted attributes alike.</summary>
internal static class XmlText
{
    /// <summary>The text with the five characters that have a meaning in markup replaced.</summary>
    /// <param name="text">Printable text.</param>
    /// <returns>Markup that shows the text.</returns>
    internal static string Escaped(string text)
    {
        var escaped = new StringBuilder(text.Length + 16);
        foreach (char c in text)
        {
            _ = c switch
            {
                '&' => escaped.Append("&amp;"),
                '<' => escaped.Append("&lt;"),
                '>' => escaped.Append("&gt;"),
                '"' => escaped.Append("&quot;"),
                '\'' => escaped.Append("&#39;"),
                _ => escaped.Append(c),
            };
        }

        return escaped.ToString();
    }
}
