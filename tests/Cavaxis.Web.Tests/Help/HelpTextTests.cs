using System.Text.RegularExpressions;
using Cavaxis.Web.Help;

namespace Cavaxis.Web.Tests.Help;

public partial class HelpTextTests
{
    public static TheoryData<string> Keys => [.. HelpText.All().Select(static e => e.Key)];

    [Theory]
    [MemberData(nameof(Keys))]
    public void Each_explanation_has_words_equation_and_source_and_stands_on_its_model_page(string key)
    {
        HelpEntry entry = HelpText.Of(key);
        Assert.True(entry.Title.Length > 3 && entry.Explanation.Length > 20 && entry.Equation.Length > 3 && entry.Source.Length > 10);
        string? page = HelpText.Model(entry.Page);
        Assert.NotNull(page);
        Assert.Contains(Joined(entry.Quote), Joined(page), StringComparison.Ordinal);
    }

    [Fact]
    public void Each_key_stands_once() => Assert.Equal(HelpText.All().Count, HelpText.All().Select(static e => e.Key).Distinct().Count());

    [Fact]
    public void Each_answer_on_the_pages_has_a_term_and_each_term_an_explanation()
    {
        string[] pages = Directory.GetFiles(Path.Combine(RepositoryFolder.Root, "src", "Cavaxis.Web"), "*.razor", SearchOption.AllDirectories);
        string[] answers = [.. pages.SelectMany(static p => Answer().Matches(File.ReadAllText(p)).Select(static m => m.Value))];
        Assert.True(answers.Length >= 2);
        Assert.All(answers, static a => Assert.Contains(" Term=\"", Joined(a), StringComparison.Ordinal));
        string[] terms = [.. pages.SelectMany(static p => Term().Matches(File.ReadAllText(p)).SelectMany(static m => Literal().Matches(m.Value)).Select(static m => m.Groups[1].Value))];
        Assert.Contains("assumed-inputs", terms);
        Assert.All(terms, static t => Assert.Equal(t, HelpText.Of(t).Key));
    }

    [Fact]
    public void A_number_without_explanation_is_found() => Assert.Throws<KeyNotFoundException>(static () => HelpText.Of("nothing"));

    [Fact]
    public void The_help_promises_nothing() => Assert.All(HelpText.All(), static e => Assert.DoesNotMatch(Promise(), $"{e.Explanation} {e.Title}"));

    private static string Joined(string text) => Blank().Replace(text, " ");

    [GeneratedRegex(@"<AnswerPanel\b[^/]*?/>", RegexOptions.Singleline)]
    private static partial Regex Answer();

    [GeneratedRegex("""\bTerm="(@\([^\n]*?\)"|[a-z-]+")""")]
    private static partial Regex Term();

    [GeneratedRegex("\"([a-z]+(-[a-z]+)*)\"")]
    private static partial Regex Literal();

    [GeneratedRegex(@"\bsafe\b", RegexOptions.IgnoreCase)]
    private static partial Regex Promise();

    [GeneratedRegex(@"\s+")]
    private static partial Regex Blank();
}
