using Cavaxis.Records.Chain;
using CsCheck;

namespace Cavaxis.Records.Tests.Chain;

/// <summary>Chains of invented events.</summary>
internal static class ChainRows
{
    private static readonly DateTimeOffset Start = new(2031, 1, 1, 0, 0, 0, TimeSpan.Zero);

    /// <summary>A chain of so many events over up to four patients.</summary>
    public static EventRow[] Of(IReadOnlyList<(int Patient, int Value)> values)
    {
        ChainHead head = ChainHead.Empty;
        Dictionary<int, long> versions = [];
        List<EventRow> rows = [];
        foreach ((int patient, int value) in values)
        {
            long sequence = versions[patient] = versions.GetValueOrDefault(patient) + 1;
            rows.Add(EventRow.Next(
                Drafts.Observation(value, corrects: value % 5 == 0 && sequence > 1 ? sequence - 1 : null), Drafts.Patient(patient), sequence, Drafts.Anna, Start.AddSeconds(rows.Count), head));
            head = rows[^1].Head;
        }

        return [.. rows];
    }

    /// <summary>Chains of 1 to 30 events.</summary>
    public static Gen<EventRow[]> Any { get; } = Gen.Select(Gen.Int[0, 3], Gen.Int[0, 100]).Array[1, 30].Select(static values => Of(values));

    /// <summary>The first break of rows as they lie; null where the chain holds.</summary>
    public static ChainBreak? BreakOf(IEnumerable<EventRow> rows, ChainAnchor? anchor = null)
    {
        ChainWalk walk = new(anchor);
        foreach (EventRow row in rows)
        {
            if (!walk.Take(row))
            {
                break;
            }
        }

        walk.End();
        return walk.Break;
    }

    /// <summary>The same chain written anew from a place on, as someone who holds the whole file can do.</summary>
    public static EventRow[] WrittenAnew(IEnumerable<EventRow> rows)
    {
        ChainHead head = ChainHead.Empty;
        List<EventRow> anew = [];
        foreach (EventRow row in rows)
        {
            EventRow next = row with { Position = head.Position + 1, PreviousHash = head.Hash.Bytes.ToArray() };
            anew.Add(next with { Hash = ChainEquation.HashOf(next) });
            head = anew[^1].Head;
        }

        return [.. anew];
    }
}
