using System.Diagnostics;
using System.Globalization;
using Cavaxis.Records.Chain;
using Cavaxis.Records.Engines;
using Cavaxis.Records.Events;
using Cavaxis.Records.Keeping;
using Cavaxis.Records.Store;
using Cavaxis.Records.Tests.Engines;

namespace Cavaxis.Records.Tests.Faults;

public sealed class KilledProcessTests : IDisposable
{
    private const int Events = 10_000;
    private const int Kills = 6;

    private readonly TemporaryFolder folder = new();

    public void Dispose() => folder.Dispose();

    /// <summary>Killed with SIGKILL after a random number of acknowledged requests and a random moment more, until all are written.</summary>
    [Fact]
    public async Task What_was_acknowledged_is_there_whenever_the_process_is_killed_and_the_chain_holds()
    {
        string file = folder.File("store.db");
        Random random = new(20310203);
        List<string> acknowledged = [];
        int killed = 0;
        for (int run = 0; run <= Kills; run++)
        {
            using Process writer = Writer.Start(file, Events, run);
            long until = run < Kills ? (run + 1) * Events / (Kills + 1) + random.Next(-300, 300) : long.MaxValue;
            while (await writer.StandardOutput.ReadLineAsync() is string line)
            {
                acknowledged.Add(line);
                if (Position(line) >= until)
                {
                    await Task.Delay(TimeSpan.FromMilliseconds(random.NextDouble() * 5));
                    writer.Kill(); // SIGKILL
                    killed++;
                    until = long.MaxValue;
                }
            }

            await writer.WaitForExitAsync();
            ChainReport report = await StoreVerifier.VerifyAsync(StoreAddress.Of(file), new ChainAnchor(Head(acknowledged[^1]), DateTimeOffset.UnixEpoch));
            Assert.True(report.IsWhole, $"{report}");
        }

        Assert.Equal(Kills, killed);
        using EventStore store = await EventStore.OpenAsync(StoreAddress.Of(file), new TickingClock());
        IReadOnlyList<RecordedEvent> all = (await store.ReadAllAsync(0, 2 * Events)).Events;
        Assert.Equal(Events, all.Count);
        Assert.All(acknowledged, line => Assert.Equal(Head(line).Hash, all[(int)Position(line) - 1].Hash));
        Assert.True(acknowledged.Count > Events / 20);
    }

    [Fact]
    public async Task Two_processes_on_one_file_take_turns_and_one_that_is_killed_does_not_stop_the_other()
    {
        string file = folder.File("shared.db");
        using (await TestStore.FilledAsync(StoreAddress.Of(file), 1))
        {
        }

        // Both write without end. When each has written beside the other one is killed, and the other when it has written on.
        const int Some = 10;
        using Process one = Writer.Start(file, int.MaxValue, 1);
        using Process two = Writer.Start(file, int.MaxValue, 2);
        List<string> first = [];
        List<string> second = [];
        int enough = int.MaxValue;
        await Task.WhenAll(ReadAsync(one, first), ReadAsync(two, second));

        Assert.True((await StoreVerifier.VerifyAsync(StoreAddress.Of(file))).IsWhole);
        using EventStore store = await EventStore.OpenAsync(StoreAddress.Of(file), new TickingClock());
        IReadOnlyList<RecordedEvent> all = (await store.ReadAllAsync(0, int.MaxValue)).Events;
        Assert.All(first.Concat(second), line => Assert.Equal(Head(line).Hash, all[(int)Position(line) - 1].Hash));
        Assert.Empty(first.Intersect(second));
        Assert.True(first.Count >= enough && second.Count >= Some);

        async Task ReadAsync(Process process, List<string> lines)
        {
            while (await process.StandardOutput.ReadLineAsync() is string line)
            {
                lock (file)
                {
                    lines.Add(line);
                    if (enough == int.MaxValue && first.Count >= Some && second.Count >= Some)
                    {
                        two.Kill();
                        enough = first.Count + Some;
                    }
                    else if (first.Count == enough)
                    {
                        one.Kill();
                    }
                }
            }

            await process.WaitForExitAsync();
        }
    }

    private static long Position(string line) => long.Parse(line.Split(' ')[0], CultureInfo.InvariantCulture);

    private static ChainHead Head(string line) => new(Position(line), EventHash.Parse(line.Split(' ')[1])!);
}
