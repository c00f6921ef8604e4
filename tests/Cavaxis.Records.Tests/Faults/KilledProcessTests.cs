using System.Diagnostics;
using System.Globalization;
using Cavaxis.Records.Chain;
using Cavaxis.Records.Engines;
using Cavaxis.Records.Events;
using Cavaxis.Records.Keeping;
using Cavaxis.Records.Store;

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

    private static long Position(string line) => long.Parse(line.Split(' ')[0], CultureInfo.InvariantCulture);

    private static ChainHead Head(string line) => new(Position(line), EventHash.Parse(line.Split(' ')[1])!);
}
