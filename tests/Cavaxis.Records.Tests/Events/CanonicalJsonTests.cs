using System.Globalization;
using System.Text;
using System.Text.Json;
using Cavaxis.Quantities.Faults;
using Cavaxis.Records.Events;
using CsCheck;

namespace Cavaxis.Records.Tests.Events;

public class CanonicalJsonTests
{
    private static readonly JsonSerializerOptions Indented = new() { WriteIndented = true };

    // RFC 8785 appendix B: all finite rows (seen second hand, in four public implementations that agree).
    [Theory]
    [InlineData("0000000000000000", "0")]
    [InlineData("8000000000000000", "0")]
    [InlineData("0000000000000001", "5e-324")]
    [InlineData("8000000000000001", "-5e-324")]
    [InlineData("7fefffffffffffff", "1.7976931348623157e+308")]
    [InlineData("ffefffffffffffff", "-1.7976931348623157e+308")]
    [InlineData("4340000000000000", "9007199254740992")]
    [InlineData("c340000000000000", "-9007199254740992")]
    [InlineData("4430000000000000", "295147905179352830000")]
    [InlineData("44b52d02c7e14af5", "9.999999999999997e+22")]
    [InlineData("44b52d02c7e14af6", "1e+23")]
    [InlineData("44b52d02c7e14af7", "1.0000000000000001e+23")]
    [InlineData("444b1ae4d6e2ef4e", "999999999999999700000")]
    [InlineData("444b1ae4d6e2ef4f", "999999999999999900000")]
    [InlineData("444b1ae4d6e2ef50", "1e+21")]
    [InlineData("3eb0c6f7a0b5ed8c", "9.999999999999997e-7")]
    [InlineData("3eb0c6f7a0b5ed8d", "0.000001")]
    [InlineData("41b3de4355555553", "333333333.3333332")]
    [InlineData("41b3de4355555554", "333333333.33333325")]
    [InlineData("41b3de4355555555", "333333333.3333333")]
    [InlineData("41b3de4355555556", "333333333.3333334")]
    [InlineData("41b3de4355555557", "333333333.33333343")]
    [InlineData("becbf647612f3696", "-0.0000033333333333333333")]
    [InlineData("43143ff3c1cb0959", "1424953923781206.2")]
    public void A_number_has_the_text_of_RFC_8785(string bits, string text) =>
        Assert.Equal(text, CanonicalNumber.Of(BitConverter.UInt64BitsToDouble(ulong.Parse(bits, NumberStyles.HexNumber, CultureInfo.InvariantCulture))));

    [Fact]
    public void A_number_has_the_text_that_an_ECMAScript_engine_gives_it()
    {
        string[] rows = [.. File.ReadLines(Path.Combine(AppContext.BaseDirectory, "Events", "ecmascript-numbers.txt")).Where(static l => l[0] != '#')];
        Assert.Equal(500, rows.Length);
        Assert.All(rows, row => A_number_has_the_text_of_RFC_8785(row[..16], row[17..]));
    }

    // RFC 8785 sections 3.2.2 and 3.2.3: sample objects (the first with its bytes; seen in the reference repository of the RFC's author).
    [Fact]
    public void The_samples_of_RFC_8785_come_out_as_printed_there()
    {
        const string Numbers = """{"numbers":[1E30,4.50,6,2e-3,0.000000000000000000000000001],"escaping":"\u20ac$\u000F\u000aA'\u0042\u0022\u005c\\\"\/","other":[null,true,false]}""";
        const string Bytes = "7b22657363617069 6e67223a22e282ac 245c75303030665c 6e4127425c225c5c 5c5c5c222f222c22 6e756d62657273 223a5b31652b3330 2c342e352c362c30 2e3030322c31652d 32375d2c226f74 686572223a5b6e75 6c6c2c747275652c 66616c73655d7d";
        Assert.Equal(Bytes.Replace(" ", string.Empty, StringComparison.Ordinal), Convert.ToHexStringLower(CanonicalJson.Of(Numbers).Bytes.Span));

        const string Names = """{"\u20ac":"Euro Sign","\r":"Carriage Return","\ufb33":"Hebrew Letter Dalet With Dagesh","1":"One","\ud83d\ude00":"Emoji: Grinning Face","\u0080":"Control","\u00f6":"Latin Small Letter O With Diaeresis"}""";
        using JsonDocument ordered = JsonDocument.Parse(CanonicalJson.Of(Names).Bytes);
        Assert.Equal(
            ["Carriage Return", "One", "Control", "Latin Small Letter O With Diaeresis", "Euro Sign", "Emoji: Grinning Face", "Hebrew Letter Dalet With Dagesh"],
            ordered.RootElement.EnumerateObject().Select(static p => p.Value.GetString()));
    }

    [Fact]
    public void Any_number_reads_back_as_itself_and_no_text_is_longer_than_the_frameworks() => Gen.Double.Where(double.IsFinite).Sample(static value =>
    {
        string text = CanonicalNumber.Of(value);
        Assert.Equal(value == 0 ? 0 : value, double.Parse(text, CultureInfo.InvariantCulture));
        int digits = text.Split('e')[0].Count(char.IsAsciiDigit);
        Assert.True(digits <= 25, text);
    });

    [Fact]
    public void The_form_of_the_form_is_itself_and_the_order_of_names_and_blanks_do_not_count()
    {
        Gen<string> word = Gen.String[Gen.Char.Where(static c => !char.IsSurrogate(c)), 0, 8];
        Gen.Dictionary(word, Gen.OneOf(word.Select(static w => (object?)w), Gen.Double[-1e9, 1e9].Select(static d => (object?)d), Gen.Bool.Select(static b => (object?)b), Gen.Const((object?)null)))[0, 6].Sample(static members =>
        {
            CanonicalJson one = CanonicalJson.Of(JsonSerializer.Serialize(members));
            CanonicalJson other = CanonicalJson.Of(JsonSerializer.Serialize(members.Reverse().ToDictionary(), Indented));
            Assert.Equal(one, other);
            Assert.Equal(one.GetHashCode(), other.GetHashCode());
            Assert.Equal(one.Text, CanonicalJson.Of(one.Bytes).Text);
            Assert.Equal(one, CanonicalJson.Kept(one.Bytes.ToArray()));
        });
    }

    [Theory]
    [InlineData("[1]", FaultCode.WrongKind)]
    [InlineData("", FaultCode.MalformedText)]
    [InlineData("{\"a\":1,}", FaultCode.MalformedText)]
    [InlineData("{\"a\":1}{}", FaultCode.MalformedText)]
    [InlineData("{\"a\":1,\"a\":2}", FaultCode.MalformedText)]
    [InlineData("{\"a\":1,\"\\u0061\":2}", FaultCode.MalformedText)]
    [InlineData("{\"a\":NaN}", FaultCode.MalformedText)]
    [InlineData("{\"a\":1e400}", FaultCode.OutOfRange)]
    [InlineData("{\"a\":9007199254740993}", FaultCode.OutOfRange)]
    [InlineData("{\"a\":-123456789012345678901}", FaultCode.OutOfRange)]
    [InlineData("{\"a\":\"\\ud800\"}", FaultCode.WrongEncoding)]
    [InlineData("{\"\\udc00\":1}", FaultCode.WrongEncoding)]
    public void What_would_not_be_kept_as_it_was_given_is_refused(string text, FaultCode code)
    {
        InputFaultException refused = Assert.Throws<InputFaultException>(() => CanonicalJson.Of(text));
        Assert.Equal((code, "payload"), (refused.Faults[0].Code, refused.Faults[0].Field));
    }

    [Fact]
    public void Too_deep_too_large_or_half_a_character_is_refused()
    {
        string deep = string.Concat(Enumerable.Repeat("{\"a\":", 65)) + "1" + new string('}', 65);
        Assert.Equal(FaultCode.MalformedText, Assert.Throws<InputFaultException>(() => CanonicalJson.Of(deep)).Faults[0].Code);
        string large = $"{{\"a\":\"{new string('x', CanonicalJson.LargestBytes)}\"}}";
        Assert.Equal(FaultCode.FileTooLarge, Assert.Throws<InputFaultException>(() => CanonicalJson.Of(large)).Faults[0].Code);
        Assert.Equal(FaultCode.WrongEncoding, Assert.Throws<InputFaultException>(() => CanonicalJson.Of("{\"a\":\"\ud800\"}")).Faults[0].Code);
        Assert.Equal(FaultCode.MalformedText, Assert.Throws<InputFaultException>(() => CanonicalJson.Of(new byte[] { (byte)'{', 0xff, (byte)'}' })).Faults[0].Code);
    }

    [Fact]
    public void No_bytes_break_the_reader() => Gen.Byte.Array[0, 60].Sample(static bytes =>
    {
        try
        {
            Assert.Equal((byte)'{', CanonicalJson.Of(bytes).Bytes.Span[0]);
        }
        catch (InputFaultException refused)
        {
            Assert.NotEmpty(refused.Faults);
        }
    });

    [Fact]
    public void Bytes_that_are_not_in_the_one_form_are_not_taken_for_it() =>
        Assert.All(["{ }", "{\"b\":1,\"a\":2}", "{\"a\":1.0}", "[]", "x"], static text => Assert.Null(CanonicalJson.Kept(Encoding.UTF8.GetBytes(text))));
}
