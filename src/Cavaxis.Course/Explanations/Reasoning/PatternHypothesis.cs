using Cavaxis.Course.Explanations.Knowledge;

namespace Cavaxis.Course.Explanations.Reasoning;

/// <summary>One form and size of a cause in one patient of the library, with what it expects of each sign.</summary>
internal sealed record PatternHypothesis
{
    /// <summary>Cause.</summary>
    public required CauseOfChange Cause { get; init; }

    /// <summary>Logarithm of its weight before any sign.</summary>
    public required double LogPrior { get; init; }

    /// <summary>Change expected of each sign, working scale, with what the settings did.</summary>
    public required double[] Change { get; init; }

    /// <summary>Spread of that change without the error of the readings, working scale.</summary>
    public required double[] Spread { get; init; }

    /// <summary>Level expected before, working scale, for signs without a reading before.</summary>
    public required double[] Level { get; init; }

    /// <summary>Spread of that level between patients, working scale.</summary>
    public required double[] LevelSpread { get; init; }

    /// <summary>Probability after the signs.</summary>
    public double Weight { get; init; }
}
