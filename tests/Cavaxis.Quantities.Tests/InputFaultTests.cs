using System.Globalization;
using Cavaxis.Quantities.Faults;
using CsCheck;

namespace Cavaxis.Quantities.Tests;

public class InputFaultTests
{
    private static readonly UnicodeCategory[] Disturbing =
    [
        UnicodeCategory.Control, UnicodeCategory.Format, UnicodeCategory.LineSeparator, UnicodeCategory.ParagraphSeparator,
        UnicodeCategory.Surrogate,
    ];

    [Theory]
    [InlineData("plain text", "plain text")]
    [InlineData("", "")]
    [InlineData("a\nb\tc", "a?b?c")]
    [InlineData("\u001b[31mred", "?[31mred")]
    [InlineData("abc\u202Efdp.exe", "abc?fdp.exe")]
    [InlineData("a\u2066b\u2069c", "a?b?c")]
    [InlineData("zero\u200Bwidth\uFEFF", "zero?width?")]
    [InlineData("one\u2028two\u2029three", "one?two?three")]
    [InlineData("soft\u00ADhyphen", "soft?hyphen")]
    [InlineData("naïve Größe 血", "naïve Größe 血")]
    public void A_shown_value_keeps_letters_and_loses_what_disturbs(string found, string shown) =>
        Assert.Equal(shown, InputFault.Shown(found));

    [Fact]
    public void A_shown_value_is_short_and_never_holds_a_disturbing_character() => Gen.Char.Array[0, 200].Sample(letters =>
    {
        string shown = InputFault.Shown(new string(letters));
        return shown.Length <= InputFault.LongestShownValue + 1
            && shown.Length == Math.Min(letters.Length, InputFault.LongestShownValue + 1)
            && !shown.Any(letter => Disturbing.Contains(char.GetUnicodeCategory(letter)));
    });

    [Fact]
    public void A_long_value_ends_in_an_ellipsis()
    {
        string shown = InputFault.Shown(new string('x', 500));
        Assert.Equal(new string('x', InputFault.LongestShownValue) + "…", shown);
    }

    [Fact]
    public void A_value_cut_in_the_middle_of_a_pair_leaves_no_half_character() =>
        Assert.DoesNotContain(InputFault.Shown(new string('x', 59) + "\U0001F600" + "tail"), char.IsSurrogate);

    [Fact]
    public void A_fault_is_one_line_with_place_field_value_range_and_remedy()
    {
        InputFault fault = new(FaultCode.OutOfRange, "patient.heightCm", "20", "40 to 230 cm", "Give the height in centimetres.", 3, 18);
        Assert.Equal("line 3, column 18: patient.heightCm is 20; accepted: 40 to 230 cm. Give the height in centimetres.", fault.ToString());
        Assert.Equal("patient.heightCm is 20; accepted: 40 to 230 cm. Give the height in centimetres.", (fault with { Line = null }).ToString());
    }

    [Fact]
    public void An_exception_carries_every_fault_and_tells_them_line_by_line()
    {
        InputFault one = new(FaultCode.OutOfRange, "a", "1", "2", "Three.");
        InputFault two = new(FaultCode.NotFound, "b", "4", "5", "Six.");
        InputFaultException exception = new([one, two]);
        Assert.Equal([one, two], exception.Faults);
        Assert.Equal($"{one}{Environment.NewLine}{two}", exception.Message);
    }

    [Fact]
    public void Every_fault_code_has_its_own_number_and_name()
    {
        FaultCode[] codes = Enum.GetValues<FaultCode>();
        Assert.Equal(codes.Length, codes.Select(code => (int)code).Distinct().Count());
        Assert.Equal(codes.Length, Enum.GetNames<FaultCode>().Distinct(StringComparer.OrdinalIgnoreCase).Count());
    }
}
