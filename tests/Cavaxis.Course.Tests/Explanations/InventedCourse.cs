using Cavaxis.Course.Explanations.Knowledge;
using Cavaxis.Course.Explanations.Trends;

namespace Cavaxis.Course.Tests.Explanations;

/// <summary>An invented course with its true causes, first the main one, and what could have been read too.</summary>
public sealed record InventedCourse(int Seed, TrendWindow Window, IReadOnlyList<CauseOfChange> Causes, bool Misled, IReadOnlyList<ObservedSign> Unread)
{
    public CauseOfChange Main => Causes[0];
}
