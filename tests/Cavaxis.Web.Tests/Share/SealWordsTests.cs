using Cavaxis.Bedside.DeIdentification;
using Cavaxis.Bedside.Sealing;
using Cavaxis.Web.Pages.Share;

namespace Cavaxis.Web.Tests.Share;

public class SealWordsTests
{
    public static TheoryData<SealFaultCode> Codes => [.. Enum.GetValues<SealFaultCode>()];

    [Theory]
    [MemberData(nameof(Codes))]
    public void Each_refusal_says_in_whole_sentences_what_is_wrong_and_what_to_do(SealFaultCode code)
    {
        string words = SealWords.Of(new SealFault(code, "found this", "the right file", "Do that."));
        Assert.True(words.Split(". ").Length >= 2, words);
        Assert.EndsWith(".", words, StringComparison.Ordinal);
        Assert.DoesNotContain("safe", words, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain(code.ToString(), words, StringComparison.Ordinal);
        Assert.Matches("Choose|choose|Ask|ask|sent again|Do that|Check|made it", words);
    }

    [Fact]
    public void No_two_refusals_have_the_same_words() =>
        Assert.Equal(Enum.GetValues<SealFaultCode>().Length, Enum.GetValues<SealFaultCode>().Select(static c => SealWords.Of(new SealFault(c, "a", "b", "c"))).Distinct().Count());

    [Fact]
    public void What_was_taken_out_is_grouped_by_reason_and_field_and_every_place_counts_once()
    {
        TakenOut[] all =
        [
            .. Enumerable.Range(1, 20).Select(static i => new TakenOut($"entry {i}/readings/2/remark", "a text that no one confirmed")),
            new("entry 3/confirmedBy", "names or points to someone"), new("entry 3/readings/1/remark", "a text that no one confirmed"), new("elsewhere", "a long number"),
        ];
        IReadOnlyList<TakenOutGroup> groups = TakenOutGroup.Of(all);
        Assert.Equal(all.Length, groups.Sum(static g => g.Count));
        Assert.Equal(new TakenOutGroup("a text that no one confirmed", "readings/…/remark", 21, "1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12 and 8 more"), groups[0]);
        Assert.Contains(new TakenOutGroup("names or points to someone", "confirmedBy", 1, "3"), groups);
        Assert.Contains(new TakenOutGroup("a long number", "elsewhere", 1, string.Empty), groups);
        Assert.Empty(TakenOutGroup.Of([]));
    }
}
