using System.Reflection;
using Cavaxis.Web.Questions;
using Microsoft.AspNetCore.Components;

namespace Cavaxis.Web.Tests.Questions;

public class QuestionTests
{
    [Fact]
    public void Each_question_has_its_own_key_words_and_letter()
    {
        Assert.Equal(Question.All.Count, Question.All.Select(static q => q.Key).Distinct().Count());
        Assert.Equal(Question.All.Count, Question.All.Select(static q => q.Words).Distinct().Count());
        Assert.Equal(Question.All.Count, Question.All.Select(static q => q.Letter).Distinct().Count());
        Assert.All(Question.All, static q => Assert.EndsWith(q.Key == "paper" ? "paper" : "?", q.Words, StringComparison.Ordinal));
    }

    [Fact]
    public void Each_question_has_a_page_and_each_page_of_a_patient_has_a_question()
    {
        string[] pages = [.. typeof(Question).Assembly.GetTypes()
            .SelectMany(static t => t.GetCustomAttributes<RouteAttribute>()).Select(static r => r.Template)
            .Where(static r => r.StartsWith("/patient/{Id}/", StringComparison.Ordinal))
            .Select(static r => string.Join('/', r.Split('/')[..4])).Distinct() // What a page shows in particular stands below its own address.
            .Order(StringComparer.Ordinal)];
        Assert.Equal(Question.All.Select(static q => "/" + q.Address("{Id}")).Order(StringComparer.Ordinal), pages);
    }

    [Fact]
    public void A_key_that_is_none_gives_no_question()
    {
        Assert.Null(Question.Of("nothing"));
        Assert.Null(Question.Of(null));
        Assert.Equal("know", Question.Of("know")!.Key);
    }
}
