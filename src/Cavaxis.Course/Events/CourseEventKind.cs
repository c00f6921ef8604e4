using Cavaxis.Planning.Json;

namespace Cavaxis.Course.Events;

/// <summary>A kind of event: its text in the record, its type, and how its particulars are read.</summary>
public sealed record CourseEventKind
{
    private readonly Func<PositionedValue, FaultLedger, CourseEvent> bind;

    private CourseEventKind(string text, Type type, string words, Func<PositionedValue, FaultLedger, CourseEvent> bind) =>
        (Text, Type, Words, this.bind) = (text, type, words, bind);

    /// <summary>Text in the record, such as <c>course.observed</c>.</summary>
    public string Text { get; }

    /// <summary>Type of the particulars.</summary>
    public Type Type { get; }

    /// <summary>What happened, in words for a heading.</summary>
    public string Words { get; }

    /// <summary>A kind.</summary>
    internal static CourseEventKind Of<T>(string text, string words)
        where T : CourseEvent =>
        new(text, typeof(T), words, static (root, ledger) => RecordBinder<T>.Bind(root, ledger));

    /// <summary>Fills the particulars.</summary>
    internal CourseEvent Bind(PositionedValue root, FaultLedger ledger) => bind(root, ledger);
}
