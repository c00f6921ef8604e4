namespace Cavaxis.Web.Desk;

/// <summary>Passes on at once, on the thread that tells it, how far work is; what the framework offers would post it to another thread.</summary>
/// <typeparam name="T">What is told.</typeparam>
/// <param name="to">Takes it.</param>
internal sealed class Told<T>(Action<T> to) : IProgress<T>
{
    /// <inheritdoc/>
    public void Report(T value) => to(value);
}
