using Cavaxis.Validation;

namespace Cavaxis.Reference.Tests;

/// <summary>Every reference row, computed once for all tests.</summary>
internal static class ReferenceRows
{
    public static IReadOnlyList<ValidationRow> All { get; } = AllChecks.Rows();
}
