namespace Cavaxis.Cli.Output;

/// <summary>Takes the share of work that is done, 0 to 1, and passes it on as whole percent.</summary>
/// <param name="percent">Takes the percent.</param>
internal sealed class ShareProgress(IProgress<int> percent) : IProgress<double>
{
    /// <inheritdoc/>
    public void Report(double value) => percent.Report((int)(100 * Math.Clamp(value, 0, 1)));
}
