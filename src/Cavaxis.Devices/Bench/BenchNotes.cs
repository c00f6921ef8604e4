using System.Globalization;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Devices.Bench;

/// <summary>The <c># key [unit]: value</c> lines at the head of a bench file.</summary>
internal sealed class BenchNotes
{
    private static readonly string[] Keys =
    [
        "id", "description", "family", "like", "lumen", "outer diameter", "insertable length", "inner diameter",
        "temperature", "density", "viscosity", "largest wire", "source", "hole",
    ];

    private readonly Dictionary<string, Note> single = new(StringComparer.Ordinal);
    private readonly List<Note> holes = [];
    private readonly List<InputFault> faults;

    private BenchNotes(List<InputFault> faults) => this.faults = faults;

    /// <summary>Lines that describe holes.</summary>
    internal IReadOnlyList<Note> Holes => holes;

    /// <summary>Reads the notes; a note line without a colon is a plain remark and is passed over.</summary>
    internal static BenchNotes Read(string text, List<InputFault> faults)
    {
        BenchNotes notes = new(faults);
        int line = 0;
        foreach (ReadOnlySpan<char> raw in text.AsSpan().EnumerateLines())
        {
            line++;
            if (raw.Length == 0 || raw[0] != '#')
            {
                continue;
            }

            ReadOnlySpan<char> trimmed = raw.Trim();

            int colon = trimmed.IndexOf(':');
            if (colon > 0)
            {
                notes.Add(trimmed[1..colon].Trim().ToString(), trimmed[(colon + 1)..].Trim().ToString(), line);
            }
        }

        return notes;
    }

    /// <summary>Whether a note is there.</summary>
    internal bool Has(string key) => single.ContainsKey(key);

    /// <summary>The note, or null with a fault when it has to be there.</summary>
    internal Note? Find(string key, bool required)
    {
        if (single.TryGetValue(key, out Note? note))
        {
            return note;
        }

        if (required)
        {
            faults.Add(new InputFault(FaultCode.MissingField, key, "(nothing)", $"a line '# {key}: …'", "Add the line at the head of the file."));
        }

        return null;
    }

    /// <summary>A text, or null.</summary>
    internal string? Text(string key, int longest, bool required)
    {
        if (Find(key, required) is not { } note)
        {
            return null;
        }

        if (note.Value.Length == 0 || note.Value.Length > longest || note.Value.Any(c => char.IsControl(c) || char.IsSurrogate(c)))
        {
            Fault(FaultCode.WrongLength, note, string.Create(CultureInfo.InvariantCulture, $"a text of 1 to {longest} printable characters"), "Shorten or fill in the text.");
            return null;
        }

        return note.Value;
    }

    /// <summary>A number with a unit, converted, or null.</summary>
    internal double? Number(string key, Func<string, double?> factor, double low, double high, string unitName, bool required)
    {
        if (Find(key, required) is not { } note)
        {
            return null;
        }

        if (factor(note.Unit) is not double scale)
        {
            Fault(FaultCode.NotAChoice, note with { Value = note.Unit.Length == 0 ? "(no unit)" : note.Unit }, $"a unit in square brackets, such as [{unitName}]", "Write the unit behind the name.");
            return null;
        }

        string accepted = string.Create(CultureInfo.InvariantCulture, $"a number from {low:G6} to {high:G6} {unitName}");
        if (!double.TryParse(note.Value, NumberStyles.Float, CultureInfo.InvariantCulture, out double value))
        {
            Fault(FaultCode.WrongKind, note, accepted, "Write a bare number with a decimal point.");
            return null;
        }

        value *= scale;
        if (!(value >= low && value <= high))
        {
            Fault(FaultCode.OutOfRange, note, accepted, "Check the value and its unit.");
            return null;
        }

        return value;
    }

    /// <summary>One of the words of an enumeration, in camel case, or null.</summary>
    internal T? Choice<T>(string key, bool required)
        where T : struct, Enum
    {
        if (Find(key, required) is not { } note)
        {
            return null;
        }

        foreach (T value in Enum.GetValues<T>())
        {
            if (Catalogue.JsonFields.Word(value) == note.Value)
            {
                return value;
            }
        }

        Fault(FaultCode.NotAChoice, note, $"one of {string.Join(", ", Enum.GetValues<T>().Select(Catalogue.JsonFields.Word))}", "Choose one of the words.");
        return null;
    }

    /// <summary>Notes a fault at a note's line.</summary>
    internal void Fault(FaultCode code, Note note, string accepted, string remedy) => faults.Add(new InputFault(
        code, note.Key, note.Value.Length == 0 ? "(nothing)" : InputFault.Shown(note.Value), accepted, remedy, note.Line, 1));

    private void Add(string name, string value, int line)
    {
        string key = name;
        string unit = string.Empty;
        int bracket = name.IndexOf('[', StringComparison.Ordinal);
        if (bracket >= 0 && name.EndsWith(']'))
        {
            key = name[..bracket].Trim();
            unit = name[(bracket + 1)..^1].Trim();
        }

        Note note = new(key, unit, value, line);
        if (!Keys.Contains(key))
        {
            faults.Add(new InputFault(
                FaultCode.UnknownField, InputFault.Shown(key), InputFault.Shown(value), $"one of {string.Join(", ", Keys)}",
                "Correct the name, or leave out the colon to make the line a remark.", line, 1));
        }
        else if (key == "hole")
        {
            holes.Add(note);
        }
        else if (!single.TryAdd(key, note))
        {
            Fault(FaultCode.DuplicateField, note, "each line once", "Take one of the two out.");
        }
    }

    /// <summary>One note line.</summary>
    internal sealed record Note(string Key, string Unit, string Value, int Line);
}
