namespace Cavaxis.Arteries.Boundaries;

/// <summary>Blood whose tracers do not change.</summary>
/// <param name="concentrations">One for each tracer.</param>
public sealed class ConstantBlood(params double[] concentrations) : ITracerSource
{
    private readonly double[] values = [.. concentrations];

    /// <inheritdoc/>
    public double Concentration(int tracer, double time) => values[tracer];
}
