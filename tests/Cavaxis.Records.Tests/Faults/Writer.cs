using System.Diagnostics;
using System.Globalization;
using Cavaxis.Records.Engines;
using Cavaxis.Records.Faults;
using Cavaxis.Records.Store;

namespace Cavaxis.Records.Tests.Faults;

/// <summary>A process of its own that appends events, one to nineteen at a time, and prints the place and hash of the last of each acknowledged request.</summary>
internal static class Writer
{
    /// <summary>Writes until the store has so many events. Ends with 0, or with 3 after a fault whose code it printed.</summary>
    public static async Task<int> RunAsync(string store, string events, string seed)
    {
        int wanted = int.Parse(events, CultureInfo.InvariantCulture);
        Random random = new(int.Parse(seed, CultureInfo.InvariantCulture));
        using EventStore opened = await EventStore.OpenAsync(StoreAddress.Of(store), TimeProvider.System);
        await using Stream output = Console.OpenStandardOutput();
        try
        {
            for (long done = (await opened.HeadAsync()).Position; done < wanted;)
            {
                int some = (int)Math.Min(random.Next(1, 20), wanted - done);
                Appended kept = (Appended)await opened.AppendAsync(new AppendRequest(
                    Drafts.Patient(random.Next(5)), null, Drafts.Anna, [.. Enumerable.Range(0, some).Select(_ => Drafts.Observation(random.Next(100)))]));
                done = kept.Events[^1].Position;
                await output.WriteAsync(System.Text.Encoding.ASCII.GetBytes(string.Create(CultureInfo.InvariantCulture, $"{done} {kept.Events[^1].Hash.Hex}\n")));
                await output.FlushAsync();
            }

            return 0;
        }
        catch (StoreFaultException refused)
        {
            Console.WriteLine(refused.Fault.Code);
            return 3;
        }
    }

    /// <summary>Starts it.</summary>
    /// <param name="store">Setting of the store.</param>
    /// <param name="events">So many events in all.</param>
    /// <param name="seed">Of its chance.</param>
    /// <param name="largestFileKiB">No file may grow larger, as on a disk without room; null for no bound.</param>
    public static Process Start(string store, int events, int seed, int? largestFileKiB = null)
    {
        string[] words = ["exec", typeof(Writer).Assembly.Location, "write", store, events.ToString(CultureInfo.InvariantCulture), seed.ToString(CultureInfo.InvariantCulture)];
        ProcessStartInfo start = new() { FileName = "dotnet", RedirectStandardOutput = true };
        if (largestFileKiB is int largest)
        {
            // Without the first the system would end the process; it is to get an error instead, as from a full disk.
            start.FileName = "bash";
            start.ArgumentList.Add("-c");
            start.ArgumentList.Add(string.Create(CultureInfo.InvariantCulture, $"trap '' XFSZ; ulimit -f {largest}; exec dotnet \"$@\""));
            start.ArgumentList.Add("bash");
            start.Environment["DOTNET_EnableWriteXorExecute"] = "0"; // It maps its code through a file that the bound would hit.
        }

        Array.ForEach(words, start.ArgumentList.Add);
        return Process.Start(start)!;
    }
}
