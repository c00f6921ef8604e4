using Cavaxis.Quantities.Faults;

namespace Cavaxis.Bedside.Courses;

/// <summary>An entry in the record that this program cannot read: of a later version, or written past it.</summary>
/// <param name="Sequence">Its number.</param>
/// <param name="Kind">Its kind.</param>
/// <param name="Corrects">Number of the entry that it puts right; that entry then stands here as it was before.</param>
/// <param name="Faults">What is wrong with it.</param>
public sealed record UnreadEntry(long Sequence, string Kind, long? Corrects, IReadOnlyList<InputFault> Faults);
