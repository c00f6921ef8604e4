using System.Globalization;
using System.Text;
using System.Text.Json;
using Cavaxis.Planning.Json;
using Cavaxis.Quantities.Faults;
using CsCheck;

namespace Cavaxis.Planning.Tests.Json;

public class PositionedJsonTests
{
    [Fact]
    public void Every_value_and_name_knows_its_line_and_column_in_characters()
    {
        PositionedValue root = Good("{\n  \"é😀\": [1,\r\n\ttrue, \"x\"],\n\"b\": {\"c\": null}}");

        Assert.Equal(new TextPlace(1, 1), root.Place);
        Assert.Equal(("é😀", new TextPlace(2, 3)), (root.Members[0].Name, root.Members[0].Place));
        PositionedValue list = root.Members[0].Value;
        Assert.Equal(new TextPlace(2, 9), list.Place);
        Assert.Equal([new(2, 10), new(3, 2), new(3, 8)], list.Items.Select(static i => i.Place));
        Assert.Equal(new TextPlace(4, 1), root.Members[1].Place);
        Assert.Equal(new TextPlace(4, 12), root.Members[1].Value.Members[0].Value.Place);
        Assert.Equal((1.0, true, "x"), (list.Items[0].Number, list.Items[1].Flag, list.Items[2].Text));
    }

    [Theory]
    [InlineData("", FaultCode.MalformedText, 1, 1)]
    [InlineData(" \n ", FaultCode.MalformedText, 1, 1)]
    [InlineData("{\n  \"a\": 1,\n}", FaultCode.MalformedText, 3, 1)]
    [InlineData("[1, 2,]", FaultCode.MalformedText, 1, 7)]
    [InlineData("{\"a\": 1 // x\n}", FaultCode.MalformedText, 1, 9)]
    [InlineData("/* x */ {}", FaultCode.MalformedText, 1, 1)]
    [InlineData("{\n\"a\": NaN}", FaultCode.OutOfRange, 2, 6)]
    [InlineData("{\"é\": -Infinity}", FaultCode.OutOfRange, 1, 7)]
    [InlineData("{\"a\": 012}", FaultCode.MalformedText, 1, 7)]
    [InlineData("{\"a\": +1}", FaultCode.MalformedText, 1, 7)]
    [InlineData("{\"a\": .5}", FaultCode.MalformedText, 1, 7)]
    [InlineData("{\"a\" 1}", FaultCode.MalformedText, 1, 6)]
    [InlineData("{\"a\": 1 \"b\": 2}", FaultCode.MalformedText, 1, 9)]
    [InlineData("{'a': 1}", FaultCode.MalformedText, 1, 2)]
    [InlineData("{\"a\": [1}", FaultCode.MalformedText, 1, 9)]
    [InlineData("{\"a\": right}", FaultCode.MalformedText, 1, 7)]
    [InlineData("{\"a\":\n 1", FaultCode.MalformedText, 2, 3)]
    [InlineData("{\"a\": 1}\n{}", FaultCode.MalformedText, 2, 1)]
    [InlineData("{\"a\": 1, \"b\": {\"a\": 2, \"a\": 3}}", FaultCode.DuplicateField, 1, 24)]
    [InlineData("{\"a\": \"\\ud800\"}", FaultCode.WrongEncoding, 1, 7)]
    [InlineData("[[[[[[[[[[[[[[[[\n[1]]]]]]]]]]]]]]]]]", FaultCode.NestedTooDeep, 2, 1)]
    public void Each_break_of_the_grammar_is_one_fault_at_its_place(string text, FaultCode code, int line, int column)
    {
        FaultLedger ledger = new("file");
        PositionedJson.Read(Encoding.UTF8.GetBytes(text), ledger);
        InputFault fault = Assert.Single(ledger.Sorted());
        Assert.Equal((code, line, column), (fault.Code, fault.Line, fault.Column));
        Assert.NotEmpty(fault.Remedy);
    }

    [Fact]
    public void A_syntax_fault_names_the_field_that_was_being_read()
    {
        FaultLedger ledger = new("file");
        PositionedJson.Read("""{"vessels":[{"side":"left"},{"side":"right","diameterMm":{"value":1..2}}]}"""u8, ledger);
        Assert.Equal("vessels[1].diameterMm.value", Assert.Single(ledger.Sorted()).Field);
    }

    [Fact]
    public void Sixteen_levels_are_read() => Good(new string('[', 16) + new string(']', 16));

    [Fact]
    public void The_place_of_a_wrong_byte_counts_characters()
    {
        FaultLedger ledger = new("file");
        Assert.Null(PositionedJson.Read([.. "{\n\"é\": \""u8, 0xFF, .. "\"}"u8], ledger));
        InputFault fault = Assert.Single(ledger.Sorted());
        Assert.Equal((FaultCode.WrongEncoding, "byte 0xFF", 2, 7), (fault.Code, fault.Value, fault.Line, fault.Column));
    }

    [Fact]
    public void A_text_of_the_greatest_size_is_read_and_one_byte_more_is_not()
    {
        byte[] bytes = new byte[PositionedJson.LargestBytes + 1];
        bytes.AsSpan().Fill((byte)' ');
        (bytes[0], bytes[1]) = ((byte)'[', (byte)']');
        FaultLedger clean = new("file");
        Assert.NotNull(PositionedJson.Read(bytes.AsSpan(0, PositionedJson.LargestBytes), clean));
        Assert.True(clean.IsClean);

        FaultLedger ledger = new("file");
        Assert.Null(PositionedJson.Read(bytes, ledger));
        Assert.Equal(FaultCode.FileTooLarge, Assert.Single(ledger.Sorted()).Code);
    }

    [Fact]
    public void Reading_goes_on_after_long_texts_long_numbers_and_names_given_twice()
    {
        FaultLedger ledger = new("file");
        string text = $$"""{"a":"{{new string('x', 40_000)}}","b":{{new string('1', 65)}},"c":1,"c":2,"d":3}""";
        PositionedValue root = PositionedJson.Read(Encoding.UTF8.GetBytes(text), ledger)!;

        Assert.Equal([FaultCode.WrongLength, FaultCode.WrongLength, FaultCode.DuplicateField], ledger.Sorted().Select(static f => f.Code));
        Assert.Equal(["a", "b", "c", "d"], root.Members.Select(static m => m.Name));
        Assert.Equal([true, true, false, false], root.Members.Select(static m => m.Value.IsFaulty));
        Assert.Equal(1, root.Members[2].Value.Number);
    }

    [Fact]
    public void Digits_beyond_a_double_read_as_infinite() =>
        Assert.Equal([double.PositiveInfinity, double.NegativeInfinity], Good("[1e999,-1e999]").Items.Select(static i => i.Number));

    // The oracle is the base library's own writer and reader.
    [Fact]
    public void Any_text_the_library_writes_is_read_back_as_the_library_reads_it() => Gen
        .Select(Gen.String[0, 20], Gen.Double.Array[0, 5], Gen.Bool)
        .Where(static (text, numbers, _) => !text.Any(char.IsSurrogate) && numbers.All(double.IsFinite))
        .Sample(static (text, numbers, flag) =>
        {
            string json = JsonSerializer.Serialize(new Dictionary<string, object> { ["text"] = text, ["numbers"] = numbers, ["flag"] = flag });
            PositionedValue root = Good(json);
            return root.Members[0].Value.Text == text
                && root.Members[1].Value.Items.Select(static i => i.Number).SequenceEqual(numbers)
                && root.Members[2].Value.Flag == flag;
        });

    // The oracle is the base library's reader: what it refuses is refused, what it takes is taken.
    [Fact]
    public void A_random_text_of_JSON_characters_is_taken_when_and_only_when_the_library_takes_it() => Gen
        .Char["{}[]:,\"10.-eE tfnul\n\\"].Array[0, 12]
        .Sample(static letters =>
        {
            string text = new(letters);
            FaultLedger ledger = new("file");
            PositionedValue? root = PositionedJson.Read(Encoding.UTF8.GetBytes(text), ledger);
            return Library(text) ? root is not null : root is null && ledger.Sorted().Count == 1;
        }, iter: 100_000);

    [Fact]
    public void The_place_of_a_syntax_fault_lies_inside_the_text() => Gen
        .Char["{}[]:,\"1.-e tn\n\té"].Array[1, 30]
        .Sample(static letters =>
        {
            string text = new(letters);
            FaultLedger ledger = new("file");
            PositionedJson.Read(Encoding.UTF8.GetBytes(text), ledger);
            string[] lines = text.Split('\n');
            return ledger.Sorted().All(f => f.Line >= 1 && f.Line <= lines.Length && f.Column >= 1 && f.Column <= lines[f.Line!.Value - 1].Length + 1);
        }, iter: 20_000);

    [Fact]
    public void Numbers_read_the_same_under_a_culture_with_a_decimal_comma()
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo comma = (CultureInfo)CultureInfo.InvariantCulture.Clone();
            comma.NumberFormat.NumberDecimalSeparator = ",";
            CultureInfo.CurrentCulture = comma;
            Assert.Equal(0.5, Good("[0.5]").Items[0].Number);
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    private static bool Library(string text)
    {
        try
        {
            using JsonDocument document = JsonDocument.Parse(text);
            return true;
        }
        catch (JsonException)
        {
            return false;
        }
    }

    private static PositionedValue Good(string text)
    {
        FaultLedger ledger = new("file");
        PositionedValue? root = PositionedJson.Read(Encoding.UTF8.GetBytes(text), ledger);
        Assert.Empty(ledger.Sorted());
        return Assert.IsType<PositionedValue>(root);
    }
}
