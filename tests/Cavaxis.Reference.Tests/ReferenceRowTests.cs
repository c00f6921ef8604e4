using Cavaxis.Quantities;
using Cavaxis.Validation;

namespace Cavaxis.Reference.Tests;

public class ReferenceRowTests
{
    public static TheoryData<string> Names => new(ReferenceRows.All.Select(Name));

    [Theory]
    [MemberData(nameof(Names))]
    public void The_row_holds(string name)
    {
        ValidationRow row = ReferenceRows.All.First(r => Name(r) == name);
        Assert.True(row.AsStated, FormattableString.Invariant(
            $"expected {ValidationDocument.Expected(row)} {row.Unit}, got {row.Got:G9}, {row.Tolerance} {row.Bound:G3}; {row.Source}; {row.Note}"));
    }

    [Fact]
    public void No_two_rows_hold_the_same_check_against_the_same_source() =>
        Assert.Equal(ReferenceRows.All.Count, ReferenceRows.All.Select(Name).Distinct(StringComparer.Ordinal).Count());

    [Fact]
    public void Every_row_names_its_source_and_how_far_it_was_opened() => Assert.All(ReferenceRows.All, row =>
    {
        Assert.True(Enum.IsDefined(row.Source.Certainty), Name(row));
        Assert.True(row.Source.Citation.Trim().Length > 5 && row.Check.Trim().Length > 5 && row.Unit.Length > 0, Name(row));
    });

    [Fact]
    public void Every_bound_is_one_that_a_wrong_value_can_miss() => Assert.All(ReferenceRows.All, row =>
    {
        Assert.True(double.IsFinite(row.Expected) && double.IsFinite(row.Bound) && row.Bound >= 0, Name(row));
        Assert.True(row.Tolerance is not Tolerance.Relative || row.Bound < 1, Name(row));
    });

    [Theory]
    [InlineData("Blood", 40)]
    [InlineData("Devices", 20)]
    [InlineData("Anatomy", 15)]
    [InlineData("Planning", 15)]
    [InlineData("Mechanics", 70)]
    [InlineData("Course", 80)]
    [InlineData("Arteries", 15)]
    public void Every_room_has_its_rows(string room, int least) =>
        Assert.True(ReferenceRows.All.Count(row => row.Room == room) >= least, $"{room} has {ReferenceRows.All.Count(row => row.Room == room)}.");

    [Fact]
    public void A_wrong_value_fails_every_row() => Assert.All(ReferenceRows.All, row =>
    {
        double off = Math.Max(row.Bound, row.Bound * Math.Abs(row.Expected)) + Math.Max(1e-6, 1e-6 * Math.Abs(row.Expected));
        Assert.False((row with { Got = double.NaN }).Passes, Name(row));
        Assert.False((row with { Got = double.PositiveInfinity }).Passes, Name(row));
        if (row.Tolerance != Tolerance.AtMost)
        {
            Assert.False((row with { Got = row.Expected - off }).Passes, Name(row));
        }

        if (row.Tolerance != Tolerance.AtLeast)
        {
            Assert.False((row with { Got = row.Expected + off }).Passes, Name(row));
        }
    });

    [Fact]
    public void The_rows_are_the_same_at_every_call()
    {
        IReadOnlyList<ValidationRow> again = AllChecks.Rows();
        Assert.Equal(ReferenceRows.All, again);
    }

    [Fact]
    public void The_document_shows_a_row_that_fails()
    {
        ValidationRow wrong = new(
            "Test", "one is | two", new Source("by hand", Certainty.ClosedForm), 2, 1, "1", Tolerance.Absolute, 0.1);
        string text = ValidationDocument.Write([wrong, wrong with { Check = "two is two", Got = 2 }]);
        Assert.Contains("1 of 2 rows hold", text, StringComparison.Ordinal);
        Assert.Contains("| one is \\| two | by hand (closed form) | 2 | 1 | 1 | ± 0.1 | NO |", text, StringComparison.Ordinal);
    }

    /// <summary>One check may be held against two sources; check and source together name a row.</summary>
    private static string Name(ValidationRow row) => $"{row.Room}: {row.Check} [{row.Source.Citation}]";
}
