using System.Globalization;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Planning.Json;

/// <summary>
/// What one reading of an input has found: its faults, and where each value stands, so that checks between fields can
/// name a place and can leave alone what is faulty already.
/// </summary>
/// <param name="inputName">Name of the whole input, used where a fault concerns no single field.</param>
public sealed class FaultLedger(string inputName)
{
    /// <summary>Most faults that are listed one by one. A file of random fields must not fill the screen or the memory.</summary>
    public const int MostListed = 500;

    private readonly List<InputFault> _faults = [];
    private readonly Dictionary<string, TextPlace> _places = new(StringComparer.Ordinal);
    private readonly HashSet<string> _faulty = new(StringComparer.Ordinal);

    /// <summary>Name of the whole input.</summary>
    public string InputName { get; } = inputName;

    /// <summary>True when nothing wrong has been found so far.</summary>
    public bool IsClean => _faults.Count == 0;

    /// <summary>Where the value at a path stands; null when the input has no such value.</summary>
    /// <param name="path">Path such as <c>vessels[0].side</c>.</param>
    public TextPlace? PlaceOf(string path) => _places.TryGetValue(path, out TextPlace place) ? place : null;

    /// <summary>True when the input has a value at the path and neither it nor anything below it has a fault.</summary>
    /// <param name="path">Path such as <c>vessels[0].side</c>.</param>
    public bool IsSound(string path) => _places.ContainsKey(path) && !_faulty.Contains(path);

    /// <summary>Records a fault.</summary>
    /// <param name="code">Kind of fault.</param>
    /// <param name="path">Path of the field; empty for the whole input.</param>
    /// <param name="value">Value found.</param>
    /// <param name="accepted">What is accepted.</param>
    /// <param name="remedy">What to do.</param>
    /// <param name="place">Where, when known.</param>
    public void Add(FaultCode code, string path, string value, string accepted, string remedy, TextPlace? place)
    {
        string field = path.Length == 0 ? InputName : InputFault.Shown(path);
        string shown = value.Length == 0 ? "(nothing)" : value;
        _faults.Add(new InputFault(code, field, shown, accepted, remedy, place?.Line, place?.Column));
        for (string at = path; at.Length > 0 && _faulty.Add(at);)
        {
            int cut = Math.Max(at.LastIndexOf('.'), at.LastIndexOf('['));
            at = cut <= 0 ? string.Empty : at[..cut];
        }
    }

    /// <summary>All faults in the order of their places; those without a place come first.</summary>
    public IReadOnlyList<InputFault> Sorted()
    {
        List<InputFault> sorted = [.. _faults.OrderBy(static f => f.Line ?? 0).ThenBy(static f => f.Column ?? 0)];
        if (sorted.Count <= MostListed)
        {
            return sorted;
        }

        InputFault more = new(
            FaultCode.WrongLength,
            InputName,
            string.Create(CultureInfo.InvariantCulture, $"{sorted.Count} faults"),
            string.Create(CultureInfo.InvariantCulture, $"no faults; the first {MostListed} are listed"),
            "Mend the faults listed, then read the file again.");
        return [.. sorted.Take(MostListed), more];
    }

    internal void Place(string path, TextPlace place) => _places[path] = place;
}
