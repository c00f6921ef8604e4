using System.Diagnostics;
using Cavaxis.Planning.Insertion;

namespace Cavaxis.Cli.Output;

/// <summary>Runs work that may take more than a second and says so while it runs.</summary>
internal static class ProgressNote
{
    private static readonly TimeSpan FirstNote = TimeSpan.FromSeconds(1);

    /// <summary>Runs the work; after a second, and every second from then on, one line tells how long it has taken.</summary>
    /// <param name="output">Where the lines go.</param>
    /// <param name="what">What is being done.</param>
    /// <param name="work">The work.</param>
    /// <typeparam name="T">Its result.</typeparam>
    /// <returns>The result.</returns>
    public static T While<T>(CommandOutput output, string what, Func<T> work)
    {
        Stopwatch watch = Stopwatch.StartNew();
        using Timer timer = new(
            _ => output.Progress(FormattableString.Invariant($"{what} … {watch.Elapsed.TotalSeconds:F0} s")), null, FirstNote, FirstNote);
        return work();
    }

    /// <summary>The same for insertions, whose number is known: the line tells how many of them were followed.</summary>
    /// <param name="output">Where the lines go.</param>
    /// <param name="what">What is being done.</param>
    /// <param name="work">The work, which tells how far it is.</param>
    /// <typeparam name="T">Its result.</typeparam>
    /// <returns>The result.</returns>
    public static T While<T>(CommandOutput output, string what, Func<IProgress<InsertionProgress>, T> work)
    {
        LatestProgress latest = new();
        Stopwatch watch = Stopwatch.StartNew();
        using Timer timer = new(
            _ => output.Progress(FormattableString.Invariant($"{what} … {latest.Now.Done} of {latest.Now.All}, {watch.Elapsed.TotalSeconds:F0} s")), null, FirstNote, FirstNote);
        return work(latest);
    }

    /// <summary>The same for a known number of pieces: the line tells how many of them are done.</summary>
    /// <param name="output">Where the lines go.</param>
    /// <param name="what">What is being done.</param>
    /// <param name="all">How many pieces there are.</param>
    /// <param name="work">The work, which tells how many it has done.</param>
    /// <typeparam name="T">Its result.</typeparam>
    /// <returns>The result.</returns>
    public static T Counted<T>(CommandOutput output, string what, int all, Func<IProgress<int>, T> work)
    {
        CountedProgress counted = new();
        Stopwatch watch = Stopwatch.StartNew();
        using Timer timer = new(
            _ => output.Progress(FormattableString.Invariant($"{what} … {counted.Done} of {all}, {watch.Elapsed.TotalSeconds:F0} s")), null, FirstNote, FirstNote);
        return work(counted);
    }

    /// <summary>The same for work that tells which share of it is done.</summary>
    /// <param name="output">Where the lines go.</param>
    /// <param name="what">What is being done.</param>
    /// <param name="work">The work, which tells its share, 0 to 1.</param>
    /// <typeparam name="T">Its result.</typeparam>
    /// <returns>The result.</returns>
    public static T Shared<T>(CommandOutput output, string what, Func<IProgress<double>, T> work)
    {
        CountedProgress percent = new();
        Stopwatch watch = Stopwatch.StartNew();
        using Timer timer = new(
            _ => output.Progress(FormattableString.Invariant($"{what} … {percent.Done} %, {watch.Elapsed.TotalSeconds:F0} s")), null, FirstNote, FirstNote);
        return work(new ShareProgress(percent));
    }

    /// <summary>The same for work without a result.</summary>
    /// <param name="output">Where the lines go.</param>
    /// <param name="what">What is being done.</param>
    /// <param name="work">The work.</param>
    public static void While(CommandOutput output, string what, Action work) => While(output, what, () =>
    {
        work();
        return true;
    });
}
