using System.Globalization;
using System.Xml.Linq;

namespace Cavaxis.Bedside.Tests.Fhir;

/// <summary>
/// The list of units as its makers published it (version 1.9), which a general-purpose library carries inside it. That library's own reading of it needs a culture that
/// this program does not have, so the grammar is followed here: terms joined by '.' and '/', each an atom with an exponent, metric atoms with or without a prefix.
/// </summary>
public sealed class UcumList
{
    private readonly HashSet<string> prefixes;
    private readonly HashSet<string> atoms;
    private readonly HashSet<string> metric;

    private UcumList(XElement root)
    {
        XElement[] units = [.. root.Elements().Where(static e => e.Name.LocalName is "unit" or "base-unit")];
        prefixes = [.. root.Elements().Where(static e => e.Name.LocalName == "prefix").Select(static e => e.Attribute("Code")!.Value)];
        atoms = [.. units.Select(static e => e.Attribute("Code")!.Value)];
        metric = [.. units.Where(static e => e.Name.LocalName == "base-unit" || e.Attribute("isMetric")?.Value == "yes").Select(static e => e.Attribute("Code")!.Value)];
    }

    public static UcumList Load()
    {
        using Stream list = typeof(global::Fhir.Metrics.UCUM).Assembly.GetManifestResourceStream("Fhir.Metrics.Data.ucum-essence.xml")!;
        return new UcumList(XDocument.Load(list).Root!);
    }

    public int Count => atoms.Count;

    public bool Has(string unit) => unit.Split('/') is [string first, .. string[] below]
        && (first.Length == 0 ? below.Length > 0 : IsProduct(first)) && below.All(IsProduct);

    private bool IsProduct(string text) => text.Split('.').All(IsTerm);

    private bool IsTerm(string text)
    {
        string atom = text.TrimEnd([.. "0123456789"]).TrimEnd('-');
        return IsAtom(text) || (atom.Length > 0 && IsAtom(atom)) || int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out _);
    }

    private bool IsAtom(string text) => atoms.Contains(text) || prefixes.Any(p => text.StartsWith(p, StringComparison.Ordinal) && metric.Contains(text[p.Length..]));
}
