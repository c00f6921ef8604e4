using Cavaxis.Quantities;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Course.GasExchange;

/// <summary>
/// Area of one passage of an indicator: trapezoids over a straight baseline through the mean before and the mean after the passage. The area is
/// linear in the signal, so the error from the noise of the baseline is exact for independent noise.
/// </summary>
public static class DilutionCurve
{
    /// <summary>Fewest points of baseline on each side.</summary>
    public const int FewestBaselinePoints = 3;

    /// <summary>Area under one passage.</summary>
    /// <param name="timeS">Times, s, rising.</param>
    /// <param name="signal">Signal at those times, in any unit.</param>
    /// <param name="window">Where the passage lies.</param>
    /// <returns>Area, unit of the signal times s, with the error from the noise of the baseline.</returns>
    /// <exception cref="InputFaultException">Times do not rise, a number is not finite, or there is too little curve or baseline.</exception>
    public static Estimate Area(ReadOnlySpan<double> timeS, ReadOnlySpan<double> signal, DilutionWindow window)
    {
        Check(timeS, signal, window);
        int first = 0;
        while (timeS[first] < window.FromS)
        {
            first++;
        }

        int last = timeS.Length - 1;
        while (timeS[last] > window.ToS)
        {
            last--;
        }

        int after = timeS.Length - 1 - last;
        if (first < FewestBaselinePoints || after < FewestBaselinePoints || last - first < 2)
        {
            throw new InputFaultException(new InputFault(
                FaultCode.TooFewPoints, "window", FormattableString.Invariant($"{first} before, {Math.Max(0, last - first + 1)} inside, {after} after"),
                FormattableString.Invariant($"at least {FewestBaselinePoints} points before, 3 inside and {FewestBaselinePoints} after the passage"), "Record a longer curve or narrow the passage."));
        }

        double timeBefore = Mean(timeS[..first]);
        double timeAfter = Mean(timeS[(last + 1)..]);

        // Area = Σ weight·signal: trapezoids inside, minus what each baseline point adds to the line under them.
        double[] weights = new double[timeS.Length];
        double toBefore = 0;
        double toAfter = 0;
        for (int i = first; i < last; i++)
        {
            double width = timeS[i + 1] - timeS[i];
            weights[i] += width / 2;
            weights[i + 1] += width / 2;
            double share = (((timeS[i] + timeS[i + 1]) / 2) - timeBefore) / (timeAfter - timeBefore);
            toBefore += width * (1 - share);
            toAfter += width * share;
        }

        for (int i = 0; i < timeS.Length; i++)
        {
            weights[i] -= i < first ? toBefore / first : i > last ? toAfter / after : 0;
        }

        double area = 0;
        double squares = 0;
        for (int i = 0; i < weights.Length; i++)
        {
            area += weights[i] * signal[i];
            squares += weights[i] * weights[i];
        }

        double noise = Math.Sqrt((Squares(signal[..first]) + Squares(signal[(last + 1)..])) / (first + after - 2));
        return Estimate.Normal(area, noise * Math.Sqrt(squares), Origin.Calculated);
    }

    private static void Check(ReadOnlySpan<double> timeS, ReadOnlySpan<double> signal, DilutionWindow window)
    {
        if (timeS.Length != signal.Length || timeS.Length < (2 * FewestBaselinePoints) + 3)
        {
            throw new InputFaultException(new InputFault(
                FaultCode.TooFewPoints, "signal", FormattableString.Invariant($"{signal.Length} values at {timeS.Length} times"), "as many values as times, at least 9", "Record the whole curve."));
        }

        for (int i = 0; i < timeS.Length; i++)
        {
            if (!double.IsFinite(timeS[i]) || !double.IsFinite(signal[i]) || (i > 0 && timeS[i] <= timeS[i - 1]))
            {
                throw new InputFaultException(new InputFault(
                    FaultCode.OutOfRange, FormattableString.Invariant($"timeS[{i}]"), FormattableString.Invariant($"{timeS[i]:G6}, signal {signal[i]:G6}"), "finite signals at rising finite times", "Mend or leave out the point."));
            }
        }

        if (!(window.FromS < window.ToS) || !(window.FromS <= timeS[^1]) || !(window.ToS >= timeS[0]))
        {
            throw new InputFaultException(new InputFault(
                FaultCode.Contradiction, "window", FormattableString.Invariant($"{window.FromS:G6} to {window.ToS:G6} s"), FormattableString.Invariant($"a passage within {timeS[0]:G6} to {timeS[^1]:G6} s"), "Mark start and end of the passage on the curve."));
        }
    }

    private static double Mean(ReadOnlySpan<double> values)
    {
        double sum = 0;
        foreach (double value in values)
        {
            sum += value;
        }

        return sum / values.Length;
    }

    private static double Squares(ReadOnlySpan<double> values)
    {
        double mean = Mean(values);
        double sum = 0;
        foreach (double value in values)
        {
            sum += (value - mean) * (value - mean);
        }

        return sum;
    }
}
