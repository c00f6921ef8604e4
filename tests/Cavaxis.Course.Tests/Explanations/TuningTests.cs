using Cavaxis.Course.Explanations.Knowledge;
using Xunit.Abstractions;

namespace Cavaxis.Course.Tests.Explanations;

public class TuningTests(ITestOutputHelper output)
{
    [Fact]
    public void Tuned_half()
    {
        System.Diagnostics.Stopwatch w = System.Diagnostics.Stopwatch.StartNew();
        IReadOnlyList<InventedCourse> courses = InventedCourses.Of(1000, 140);
        output.WriteLine($"{courses.Count} {w.Elapsed.TotalSeconds}");
        SuiteScore score = SuiteScore.Of(ExplanationKnowledge.BuiltIn.WithPriorOdds(static _ => 1), courses);
        output.WriteLine($"{w.Elapsed.TotalSeconds} avg signs {courses.Average(c => c.Window.Signs.Length)}");
        output.WriteLine(score.Table("tuned"));
        output.WriteLine(score.Shuffled(1).Table("shuffled")[..200]);
    }
}
