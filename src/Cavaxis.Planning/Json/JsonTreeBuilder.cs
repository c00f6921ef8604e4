using System.Globalization;
using System.Text;
using System.Text.Json;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Planning.Json;

/// <summary>Builds the tree of one valid UTF-8 text; records what is wrong with it on the way.</summary>
internal ref struct JsonTreeBuilder
{
    // Longer than any known field, so that a longer name is unknown whatever follows.
    private const int LongestNameBytes = 120;

    private readonly ReadOnlySpan<byte> _utf8;
    private readonly FaultLedger _ledger;
    private readonly int _longestTextBytes;
    private Utf8JsonReader _reader;
    private PlaceCursor _cursor;
    private string _path = string.Empty;
    private int _values;
    private bool _stopped;

    public JsonTreeBuilder(ReadOnlySpan<byte> utf8, FaultLedger ledger, int longestTextBytes)
    {
        _longestTextBytes = longestTextBytes;
        _utf8 = utf8;
        _ledger = ledger;
        _cursor = new PlaceCursor(utf8);

        // The reader's own depth limit lies above ours, so that the fault is ours and names the field.
        _reader = new Utf8JsonReader(utf8, new JsonReaderOptions
        {
            CommentHandling = JsonCommentHandling.Disallow,
            AllowTrailingCommas = false,
            MaxDepth = PositionedJson.DeepestLevel * 2,
        });
    }

    public PositionedValue? Build()
    {
        try
        {
            _reader.Read();
            PositionedValue root = Value();
            if (!_stopped)
            {
                // Anything but white space after the outermost value throws here.
                _reader.Read();
            }

            return _stopped ? null : root;
        }
        catch (JsonException e)
        {
            SyntaxFault.Add(_utf8, Offset(e), _path, _ledger);
            return null;
        }
    }

    private readonly int Offset(JsonException e)
    {
        int start = 0;
        for (long line = 0; line < (e.LineNumber ?? 0); line++)
        {
            int feed = _utf8[start..].IndexOf((byte)'\n');
            if (feed < 0)
            {
                break;
            }

            start += feed + 1;
        }

        return (int)Math.Min(_utf8.Length, start + (e.BytePositionInLine ?? 0));
    }

    private PositionedValue Value()
    {
        TextPlace place = _cursor.At((int)_reader.TokenStartIndex);
        if (++_values > PositionedJson.MostValues)
        {
            Stop(
                FaultCode.WrongLength, "more values than that",
                string.Create(CultureInfo.InvariantCulture, $"at most {PositionedJson.MostValues} values in one file"),
                "Check that the right file was given.", place);
            return PositionedValue.OfNull(place);
        }

        return _reader.TokenType switch
        {
            JsonTokenType.StartObject => Nested(place) ? Object(place) : PositionedValue.OfNull(place),
            JsonTokenType.StartArray => Nested(place) ? List(place) : PositionedValue.OfNull(place),
            JsonTokenType.String => Text(place),
            JsonTokenType.Number => Number(place),
            JsonTokenType.True => PositionedValue.OfFlag(true, place),
            JsonTokenType.False => PositionedValue.OfFlag(false, place),
            _ => PositionedValue.OfNull(place),
        };
    }

    private bool Nested(TextPlace place)
    {
        if (_reader.CurrentDepth < PositionedJson.DeepestLevel)
        {
            return true;
        }

        Stop(
            FaultCode.NestedTooDeep, string.Create(CultureInfo.InvariantCulture, $"level {_reader.CurrentDepth + 1}"),
            string.Create(CultureInfo.InvariantCulture, $"at most {PositionedJson.DeepestLevel} levels"),
            "Remove the nesting; no field of a case needs it.", place);
        return false;
    }

    private PositionedValue Object(TextPlace place)
    {
        List<PositionedMember> members = [];
        Dictionary<string, TextPlace> seen = new(StringComparer.Ordinal);
        string above = _path;
        while (!_stopped && _reader.Read() && _reader.TokenType != JsonTokenType.EndObject)
        {
            TextPlace namePlace = _cursor.At((int)_reader.TokenStartIndex);
            string name = Name(namePlace);
            _path = above.Length == 0 ? name : $"{above}.{name}";
            _reader.Read();
            PositionedValue value = Value();
            if (_stopped)
            {
                break;
            }

            if (seen.TryAdd(name, namePlace))
            {
                members.Add(new PositionedMember(name, namePlace, value));
            }
            else
            {
                TextPlace first = seen[name];
                _ledger.Add(
                    FaultCode.DuplicateField, _path, value.Shown, "each field once",
                    string.Create(CultureInfo.InvariantCulture, $"Remove one of the two; the first stands in line {first.Line}, column {first.Column}."),
                    namePlace);
            }

            _path = above;
        }

        return PositionedValue.OfObject(members, place);
    }

    private PositionedValue List(TextPlace place)
    {
        List<PositionedValue> items = [];
        string above = _path;
        while (!_stopped && _reader.Read() && _reader.TokenType != JsonTokenType.EndArray)
        {
            _path = string.Create(CultureInfo.InvariantCulture, $"{above}[{items.Count}]");
            items.Add(Value());
            _path = _stopped ? _path : above;
        }

        return PositionedValue.OfList(items, place);
    }

    private readonly string Name(TextPlace place)
    {
        if (_reader.ValueSpan.Length > LongestNameBytes)
        {
            return Encoding.UTF8.GetString(_reader.ValueSpan[..LongestNameBytes]) + "…";
        }

        return Unescaped(_path, place) ?? Encoding.UTF8.GetString(_reader.ValueSpan);
    }

    private readonly PositionedValue Text(TextPlace place)
    {
        if (_reader.ValueSpan.Length > _longestTextBytes)
        {
            _ledger.Add(
                FaultCode.WrongLength, _path, $"\"{InputFault.Shown(Encoding.UTF8.GetString(_reader.ValueSpan[..200]))}\"",
                string.Create(CultureInfo.InvariantCulture, $"a text of at most {_longestTextBytes} bytes"),
                "Shorten the text.", place);
            return PositionedValue.OfText(string.Empty, place, faulty: true);
        }

        return Unescaped(_path, place) is string text
            ? PositionedValue.OfText(text, place, faulty: false)
            : PositionedValue.OfText(string.Empty, place, faulty: true);
    }

    private readonly string? Unescaped(string path, TextPlace place)
    {
        try
        {
            return _reader.GetString();
        }
        catch (InvalidOperationException)
        {
            // Half of a surrogate pair in \u escapes is valid JSON grammar but names no character (RFC 8259, section 8.2).
            _ledger.Add(
                FaultCode.WrongEncoding, path, $"\"{InputFault.Shown(Encoding.UTF8.GetString(_reader.ValueSpan))}\"",
                "whole characters; \\u escapes of surrogates come in pairs", "Write the character itself.", place);
            return null;
        }
    }

    private readonly PositionedValue Number(TextPlace place)
    {
        ReadOnlySpan<byte> written = _reader.ValueSpan;
        if (written.Length > PositionedJson.LongestNumber)
        {
            string shown = InputFault.Shown(Encoding.ASCII.GetString(written[..Math.Min(written.Length, 200)]));
            _ledger.Add(
                FaultCode.WrongLength, _path, shown,
                string.Create(CultureInfo.InvariantCulture, $"a number of at most {PositionedJson.LongestNumber} characters"),
                "Round the number.", place);
            return PositionedValue.OfNumber(0, shown, place, faulty: true);
        }

        string text = Encoding.ASCII.GetString(written);
        return PositionedValue.OfNumber(double.Parse(text, NumberStyles.Float, CultureInfo.InvariantCulture), text, place, faulty: false);
    }

    private void Stop(FaultCode code, string value, string accepted, string remedy, TextPlace place)
    {
        _stopped = true;
        _ledger.Add(code, _path, value, accepted, remedy, place);
    }
}
