namespace Cavaxis.Circulation.Lanes;

/// <summary>
/// A number for one patient, or a row of numbers for several patients side by side. The equations are written once against this
/// interface; the compiler makes one version for a single patient and one for a row, so that both do the same arithmetic.
/// </summary>
/// <typeparam name="T">The implementing type.</typeparam>
internal interface ILane<T>
    where T : unmanaged, ILane<T>
{
    /// <summary>How many patients stand side by side.</summary>
    static abstract int Count { get; }

    /// <summary>The number of one patient.</summary>
    /// <param name="lane">Which one, from zero.</param>
    double this[int lane] { get; }

    /// <summary>The same number for every patient.</summary>
    static abstract T Of(double value);

    /// <summary>One number for each patient.</summary>
    static abstract T Load(ReadOnlySpan<double> values);

    /// <summary>Sum.</summary>
    static abstract T operator +(T a, T b);

    /// <summary>Difference.</summary>
    static abstract T operator -(T a, T b);

    /// <summary>Product.</summary>
    static abstract T operator *(T a, T b);

    /// <summary>Quotient.</summary>
    static abstract T operator /(T a, T b);

    /// <summary>Negation.</summary>
    static abstract T operator -(T a);

    /// <summary>Smaller number.</summary>
    static abstract T Min(T a, T b);

    /// <summary>Larger number.</summary>
    static abstract T Max(T a, T b);

    /// <summary>Magnitude.</summary>
    static abstract T Abs(T a);

    /// <summary>Square root.</summary>
    static abstract T Sqrt(T a);

    /// <summary>Exponential.</summary>
    static abstract T Exp(T a);

    /// <summary>Natural logarithm.</summary>
    static abstract T Log(T a);

    /// <summary>The second number where the first is above zero, else the third.</summary>
    static abstract T IfPositive(T x, T then, T otherwise);
}
