using System.Text;
using Cavaxis.Quantities.Faults;
using Cavaxis.Records.Chain;
using Cavaxis.Records.Events;
using CsCheck;

namespace Cavaxis.Records.Tests.Chain;

public class ChainTests
{
    /// <summary>
    /// The hash was computed outside this program with Python's hashlib from the equation in docs/models/records.md; the command stands there.
    /// </summary>
    [Fact]
    public void The_hash_of_an_event_is_that_which_the_documented_equation_gives_elsewhere()
    {
        EventRow row = EventRow.Next(
            new EventDraft(EventKind.Of("observation.saturation"), CanonicalJson.Of("""{"saturationPercent":71.5}"""), new DateTimeOffset(2031, 2, 3, 4, 0, 0, TimeSpan.Zero), 2),
            StreamName.Of("patient/p1"),
            3,
            Identifier.Of("anna"),
            new DateTimeOffset(2031, 2, 3, 4, 5, 6, 789, TimeSpan.Zero),
            new ChainHead(6, EventHash.Parse(new string('a', 64))!));
        Assert.Equal("85acd3d524924805a02b673e7a7f16b1cbbdb6ec8468f96076335e713839f5dc", Convert.ToHexStringLower(row.Hash));
    }

    [Fact]
    public void A_chain_that_no_one_touched_holds() => ChainRows.Any.Sample(static rows => Assert.Null(ChainRows.BreakOf(rows)));

    [Fact]
    public void Any_change_of_any_field_is_found_at_its_place() => Gen.Select(ChainRows.Any, Gen.Int[0, 1000], Gen.Int[0, 10], Gen.Int[0, 255]).Sample(static (rows, which, field, change) =>
    {
        int at = which % rows.Length;
        EventRow was = rows[at];
        byte[] flipped = Flip(field == 8 ? was.PreviousHash : field == 9 ? was.Hash : was.Payload, change);
        EventRow altered = field switch
        {
            0 => was with { Stream = "patient/p9" },
            1 => was with { Sequence = was.Sequence + 1 + change },
            2 => was with { Kind = "observation.pressure" },
            3 => was with { Payload = flipped },
            4 => was with { Who = "bea" },
            5 => was with { OccurredUs = was.OccurredUs + 1 + change },
            6 => was with { RecordedUs = was.RecordedUs - 1 - change },
            7 => was with { Corrects = (was.Corrects ?? 0) + 1 + change },
            8 => was with { PreviousHash = flipped },
            9 => was with { Hash = flipped },
            _ => was with { Payload = [.. was.Payload, (byte)' '] },
        };
        ChainBreak? found = ChainRows.BreakOf([.. rows[..at], altered, .. rows[(at + 1)..]]);
        Assert.Equal((at + 1, BreakKind.Altered), (found!.Position, found.Kind));
    });

    /// <summary>Found by flipping bits of files: nought and nothing give the same bytes to hash.</summary>
    [Fact]
    public void An_event_that_corrects_number_0_is_not_taken_for_one_that_corrects_none()
    {
        EventRow[] rows = ChainRows.Of([(1, 1), (1, 2)]);
        rows[1] = rows[1] with { Corrects = 0 };
        Assert.Equal(BreakKind.Altered, ChainRows.BreakOf(rows)!.Kind);
        Assert.False(rows[1].HoldsTogether);
    }

    [Fact]
    public void A_missing_event_is_found_at_its_place() => Gen.Select(ChainRows.Any.Where(static r => r.Length > 1), Gen.Int[0, 1000]).Sample(static (rows, which) =>
    {
        int at = which % (rows.Length - 1);
        ChainBreak? found = ChainRows.BreakOf(rows.Where((_, i) => i != at));
        Assert.Equal((at + 1, BreakKind.Missing), (found!.Position, found.Kind));
    });

    [Fact]
    public void Two_events_that_changed_places_are_found_at_the_first() => Gen.Select(ChainRows.Any.Where(static r => r.Length > 1), Gen.Int[0, 1000], Gen.Int[0, 1000], Gen.Bool).Sample(static (rows, a, b, rehashed) =>
    {
        int first = a % (rows.Length - 1);
        int second = first + 1 + (b % (rows.Length - first - 1));
        EventRow[] moved = [.. rows];
        moved[first] = rows[second] with { Position = first + 1 };
        moved[second] = rows[first] with { Position = second + 1 };
        if (rehashed)
        {
            moved[first] = moved[first] with { Hash = ChainEquation.HashOf(moved[first]) };
            moved[second] = moved[second] with { Hash = ChainEquation.HashOf(moved[second]) };
        }

        ChainBreak? found = ChainRows.BreakOf(moved);
        Assert.Equal((first + 1, rehashed ? BreakKind.Unlinked : BreakKind.Altered), (found!.Position, found.Kind));
    });

    [Fact]
    public void An_inserted_event_breaks_the_chain_there_or_just_behind() => Gen.Select(ChainRows.Any, Gen.Int[0, 1000]).Sample(static (rows, which) =>
    {
        int at = which % rows.Length;
        ChainHead before = at == 0 ? ChainHead.Empty : rows[at - 1].Head;
        EventRow inserted = EventRow.Next(Drafts.Observation(1), Drafts.Patient(8), 1, Drafts.Anna, new DateTimeOffset(2031, 1, 1, 0, 0, 0, TimeSpan.Zero), before);
        ChainBreak? found = ChainRows.BreakOf([.. rows[..at], inserted, .. rows[at..].Select(static r => r with { Position = r.Position + 1 })]);
        Assert.Equal((at + 2, BreakKind.Altered), (found!.Position, found.Kind));
    });

    [Fact]
    public void An_exchanged_event_that_holds_together_breaks_the_chain_behind_it() => Gen.Select(ChainRows.Any.Where(static r => r.Length > 1), Gen.Int[0, 1000]).Sample(static (rows, which) =>
    {
        int at = which % (rows.Length - 1);
        EventRow forged = rows[at] with { Who = "bea" };
        forged = forged with { Hash = ChainEquation.HashOf(forged) };
        ChainBreak? found = ChainRows.BreakOf([.. rows[..at], forged, .. rows[(at + 1)..]]);
        Assert.Equal((at + 2, BreakKind.Unlinked), (found!.Position, found.Kind));
    });

    [Fact]
    public void Numbers_of_a_stream_have_no_gap_even_where_all_hashes_hold()
    {
        EventRow[] rows = ChainRows.Of([(1, 1), (1, 2), (2, 3), (1, 4)]);
        ChainBreak? found = ChainRows.BreakOf(ChainRows.WrittenAnew(rows.Where(static (_, i) => i != 1)));
        Assert.Equal((3, BreakKind.OutOfSequence), (found!.Position, found.Kind));
    }

    [Fact]
    public void A_chain_written_anew_holds_but_does_not_pass_a_line_kept_elsewhere() => Gen.Select(ChainRows.Any, Gen.Int[0, 1000]).Sample(static (rows, which) =>
    {
        ChainAnchor anchor = ChainAnchor.Parse(new ChainAnchor(rows[^1].Head, new DateTimeOffset(2031, 1, 2, 0, 0, 0, TimeSpan.Zero)).Line);
        int at = which % rows.Length;
        EventRow[] anew = ChainRows.WrittenAnew([.. rows[..at], rows[at] with { Who = "bea" }, .. rows[(at + 1)..]]);
        Assert.Null(ChainRows.BreakOf(anew));
        Assert.Equal((rows.Length, BreakKind.NotTheAnchored), At(ChainRows.BreakOf(anew, anchor)));
        Assert.Null(ChainRows.BreakOf(rows, anchor));
        Assert.Equal((rows.Length, BreakKind.CutOff), At(ChainRows.BreakOf(rows[..^1], anchor)));

        static (long, BreakKind) At(ChainBreak? found) => (found!.Position, found.Kind);
    });

    /// <summary>Parts that run into each other would let two different events have the same hash.</summary>
    [Fact]
    public void Letters_that_move_from_one_part_to_the_next_change_the_hash()
    {
        EventRow one = ChainRows.Of([(1, 1)])[0] with { Stream = "patient/ab", Kind = "c.d", Who = "e" };
        EventRow[] others =
        [
            one with { Stream = "patient/a", Kind = "bc.d" },
            one with { Kind = "c.", Who = "de" },
            one with { Who = "e" + Encoding.UTF8.GetString(one.Payload), Payload = [] },
        ];
        Assert.All(others, other => Assert.NotEqual(ChainEquation.HashOf(one), ChainEquation.HashOf(other)));
    }

    [Theory]
    [InlineData("")]
    [InlineData("cavaxis-anchor-1 5 abc 2031-01-01T00:00:00Z")]
    [InlineData("cavaxis-anchor-1 -5 aaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaa 2031-01-01T00:00:00Z")]
    [InlineData("cavaxis-anchor-1 5 aaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaa yesterday")]
    public void A_line_that_is_no_anchor_is_refused(string line) =>
        Assert.Equal((FaultCode.MalformedText, "anchor"), Assert.Throws<InputFaultException>(() => ChainAnchor.Parse(line)).Faults.Select(static f => (f.Code, f.Field)).Single());

    private static byte[] Flip(byte[] bytes, int change)
    {
        byte[] flipped = [.. bytes];
        flipped[change % flipped.Length] ^= (byte)(1 << (change % 8));
        return flipped;
    }
}
