using Cavaxis.Course.Explanations.Knowledge;
using Cavaxis.Course.Explanations.Trends;

namespace Cavaxis.Course.Tests.Explanations;

/// <summary>An invented course with its true causes, first the main one.</summary>
public sealed record InventedCourse(int Seed, TrendWindow Window, IReadOnlyList<CauseOfChange> Causes, bool Misled, string Patient)
{
    public CauseOfChange Main => Causes[0];
}
