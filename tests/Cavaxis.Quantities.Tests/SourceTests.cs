namespace Cavaxis.Quantities.Tests;

public class SourceTests
{
    [Fact]
    public void Every_certainty_has_its_own_plain_words()
    {
        string[] words = [.. Enum.GetValues<Certainty>().Select(Source.InWords)];
        Assert.Equal(words.Length, words.Distinct(StringComparer.Ordinal).Count());
        Assert.All(words, word => Assert.False(string.IsNullOrWhiteSpace(word)));
    }

    [Fact]
    public void A_source_is_printed_with_its_certainty() =>
        Assert.Equal("Crane 410 (from memory)", new Source("Crane 410", Certainty.FromMemory).ToString());

    [Fact]
    public void What_is_no_certainty_is_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Source.InWords((Certainty)99));
}
