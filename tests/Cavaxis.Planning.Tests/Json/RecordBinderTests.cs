using System.Text;
using Cavaxis.Planning.Case;
using Cavaxis.Planning.Json;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Planning.Tests.Json;

public class RecordBinderTests
{
    private enum Colour
    {
        Unknown,
        DeepRed,
        Blue,
    }

    private sealed record Inner
    {
        [Number(0, 10, "mm", UsualSd = 0.5)]
        public Measurement? WidthMm { get; init; }
    }

    private sealed record Outer
    {
        [Number(1, 5, "1")]
        public required int Count { get; init; }

        [Number(0, 1, "mmol/L")]
        public double? Share { get; init; } = 0.25;

        [Text(5)]
        public string? Word { get; init; }

        public bool Sure { get; init; } = true;

        public Colour Colour { get; init; }

        public Colour? Other { get; init; }

        public Inner Inner { get; init; } = new();

        [Text(2)]
        public IReadOnlyList<Inner> Inners { get; init; } = [];

        [Text(3)]
        public IReadOnlyList<string> Names { get; init; } = [];
    }

    private sealed record WithoutBounds
    {
        public double Size { get; init; }
    }

    private sealed record WithAnUnreadableType
    {
        public DateTime When { get; init; }
    }

    [Fact]
    public void Values_given_replace_what_the_record_starts_with_and_the_rest_stays()
    {
        Outer outer = Bind("""{"count":2.0,"sure":false,"colour":"deepRed","other":"blue","inners":[{"widthMm":3},{"widthMm":{"value":4,"sd":0}}],"names":["a"]}""");

        Assert.Equal((2, 0.25, false, Colour.DeepRed, Colour.Blue), (outer.Count, outer.Share, outer.Sure, outer.Colour, outer.Other));
        Assert.Equal([new(3, 0.5, false), new(4, 0, true)], outer.Inners.Select(static i => i.WidthMm));
        Assert.Equal(["a"], outer.Names);
        Assert.Null(outer.Word);
    }

    [Fact]
    public void Unknown_leaves_an_optional_field_as_it_is() =>
        Assert.Equal(Bind("""{"count":1}""").Colour, Bind("""{"count":1,"other":"unknown","inner":"unknown","inners":"unknown"}""").Colour);

    [Theory]
    [InlineData("[]", FaultCode.WrongKind, "file", 1)]
    [InlineData("{}", FaultCode.MissingField, "count", 1)]
    [InlineData("""{"count":"unknown"}""", FaultCode.WrongKind, "count", 10)]
    [InlineData("""{"count":1.5}""", FaultCode.WrongKind, "count", 10)]
    [InlineData("""{"count":0}""", FaultCode.OutOfRange, "count", 10)]
    [InlineData("""{"count":1e999}""", FaultCode.OutOfRange, "count", 10)]
    [InlineData("""{"count":1,"share":true}""", FaultCode.WrongKind, "share", 20)]
    [InlineData("""{"count":1,"share":null}""", FaultCode.WrongKind, "share", 20)]
    [InlineData("""{"count":1,"share":1.01}""", FaultCode.OutOfRange, "share", 20)]
    [InlineData("""{"count":1,"word":5}""", FaultCode.WrongKind, "word", 19)]
    [InlineData("""{"count":1,"word":"sixsix"}""", FaultCode.WrongLength, "word", 19)]
    [InlineData("""{"count":1,"word":"a\u001bb"}""", FaultCode.WrongKind, "word", 19)]
    [InlineData("""{"count":1,"sure":"true"}""", FaultCode.WrongKind, "sure", 19)]
    [InlineData("""{"count":1,"colour":"DeepRed"}""", FaultCode.NotAChoice, "colour", 21)]
    [InlineData("""{"count":1,"colour":1}""", FaultCode.WrongKind, "colour", 21)]
    [InlineData("""{"count":1,"colour":"deepRed, blue"}""", FaultCode.NotAChoice, "colour", 21)]
    [InlineData("""{"count":1,"inner":[]}""", FaultCode.WrongKind, "inner", 20)]
    [InlineData("""{"count":1,"inner":{"widthMm":{"sd":1}}}""", FaultCode.MissingField, "inner.widthMm.value", 31)]
    [InlineData("""{"count":1,"inner":{"widthMm":{"value":11}}}""", FaultCode.OutOfRange, "inner.widthMm.value", 40)]
    [InlineData("""{"count":1,"inner":{"widthMm":{"value":1,"sd":-1}}}""", FaultCode.OutOfRange, "inner.widthMm.sd", 47)]
    [InlineData("""{"count":1,"inner":{"widthMm":{"value":1,"sd":2}}}""", FaultCode.Contradiction, "inner.widthMm.sd", 47)]
    [InlineData("""{"count":1,"inner":{"widthMm":{"value":1,"unit":2}}}""", FaultCode.UnknownField, "inner.widthMm.unit", 42)]
    [InlineData("""{"count":1,"inners":[{},{},{}]}""", FaultCode.WrongLength, "inners", 21)]
    [InlineData("""{"count":1,"inners":[{},3]}""", FaultCode.WrongKind, "inners[1]", 25)]
    [InlineData("""{"count":1,"inners":["unknown"]}""", FaultCode.WrongKind, "inners[0]", 22)]
    [InlineData("""{"count":1,"names":["a",""]}""", FaultCode.WrongLength, "names[1]", 25)]
    [InlineData("""{"count":1,"size":3}""", FaultCode.UnknownField, "size", 12)]
    public void Each_kind_of_fault_names_its_field_and_column(string text, FaultCode code, string field, int column)
    {
        InputFault fault = Assert.Single(Faults(text));
        Assert.Equal((code, field, 1, column), (fault.Code, fault.Field, fault.Line, fault.Column));
        Assert.All([fault.Value, fault.Accepted, fault.Remedy], Assert.NotEmpty);
    }

    [Fact]
    public void A_text_is_measured_in_characters_not_in_code_units() => Assert.Equal("😀😀😀😀😀", Bind("""{"count":1,"word":"😀😀😀😀😀"}""").Word);

    [Fact]
    public void A_record_that_cannot_be_read_is_a_fault_of_the_program_not_of_the_input()
    {
        Assert.Throws<InvalidOperationException>(static () => SchemaWriter.Input<WithoutBounds>("x"));
        Assert.Throws<InvalidOperationException>(static () => SchemaWriter.Input<WithAnUnreadableType>("x"));
    }

    private static Outer Bind(string text)
    {
        FaultLedger ledger = new("file");
        Outer outer = RecordBinder<Outer>.Bind(PositionedJson.Read(Encoding.UTF8.GetBytes(text), ledger)!, ledger);
        Assert.Empty(ledger.Sorted());
        return outer;
    }

    private static IReadOnlyList<InputFault> Faults(string text)
    {
        FaultLedger ledger = new("file");
        RecordBinder<Outer>.Bind(PositionedJson.Read(Encoding.UTF8.GetBytes(text), ledger)!, ledger);
        return ledger.Sorted();
    }
}
