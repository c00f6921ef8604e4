using Cavaxis.Web.Downloads;

namespace Cavaxis.Web.Tests.Downloads;

public class FileTrayTests
{
    private readonly MovedClock clock = new();

    [Fact]
    public void A_file_is_there_for_whoever_made_it_under_its_own_name_until_its_time_is_over()
    {
        FileTray tray = new(clock);
        (string ticket, string name) = Parts(tray.Put("lena", "question.pack", "application/octet-stream", [1, 2, 3]));
        Assert.Equal([1, 2, 3], tray.Find(ticket, name, "lena")!.Bytes);
        Assert.Null(tray.Find(ticket, name, "rita"));
        Assert.Null(tray.Find(ticket, "other.pack", "lena"));
        Assert.Null(tray.Find(new string('0', 32), name, "lena"));
        clock.Now += FileTray.Waits;
        Assert.Null(tray.Find(ticket, name, "lena"));
    }

    [Fact]
    public void Two_files_have_different_addresses_and_one_that_is_taken_away_is_gone()
    {
        FileTray tray = new(clock);
        (string first, string second) = (tray.Put("lena", "a", "x/y", [1]), tray.Put("lena", "a", "x/y", [2]));
        Assert.NotEqual(first, second);
        tray.Remove(first);
        Assert.Null(tray.Find(Parts(first).Ticket, "a", "lena"));
        Assert.NotNull(tray.Find(Parts(second).Ticket, "a", "lena"));
    }

    [Fact]
    public void The_files_of_one_person_never_fill_the_memory_and_push_out_no_one_elses()
    {
        FileTray tray = new(clock);
        string others = tray.Put("rita", "a", "x/y", [1]);
        string[] all = [.. Enumerable.Range(0, 4).Select(_ =>
        {
            clock.Now += TimeSpan.FromSeconds(1);
            return tray.Put("lena", "a", "x/y", new byte[60 * 1024 * 1024]);
        })];
        Assert.Equal([false, false, true, true], all.Select(a => tray.Find(Parts(a).Ticket, "a", "lena") is not null));
        Assert.NotNull(tray.Find(Parts(others).Ticket, "a", "rita"));
    }

    private static (string Ticket, string Name) Parts(string address)
    {
        string[] parts = address.Split('/');
        Assert.Equal(("report", "kept", 32), (parts[0], parts[1], parts[2].Length));
        return (parts[2], parts[3]);
    }

    private sealed class MovedClock : TimeProvider
    {
        public DateTimeOffset Now { get; set; } = new(2031, 2, 3, 4, 5, 6, TimeSpan.Zero);

        public override DateTimeOffset GetUtcNow() => Now;
    }
}
