using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace Cavaxis.Circulation.Lanes;

/// <summary>
/// Eight patients side by side. Where the processor has no registers of that width the runtime works in halves; the result is
/// the same.
/// </summary>
/// <param name="Values">The numbers.</param>
internal readonly record struct EightLanes(Vector512<double> Values) : ILane<EightLanes>
{
    /// <inheritdoc/>
    public static int Count => Vector512<double>.Count;

    /// <inheritdoc/>
    public double this[int lane] => Values.GetElement(lane);

    /// <inheritdoc/>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static EightLanes operator +(EightLanes a, EightLanes b) => new(a.Values + b.Values);

    /// <inheritdoc/>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static EightLanes operator -(EightLanes a, EightLanes b) => new(a.Values - b.Values);

    /// <inheritdoc/>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static EightLanes operator *(EightLanes a, EightLanes b) => new(a.Values * b.Values);

    /// <inheritdoc/>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static EightLanes operator /(EightLanes a, EightLanes b) => new(a.Values / b.Values);

    /// <inheritdoc/>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static EightLanes operator -(EightLanes a) => new(-a.Values);

    /// <inheritdoc/>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static EightLanes Of(double value) => new(Vector512.Create(value));

    /// <inheritdoc/>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static EightLanes Load(ReadOnlySpan<double> values) => new(Vector512.Create(values));

    /// <inheritdoc/>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static EightLanes Min(EightLanes a, EightLanes b) => new(Vector512.Min(a.Values, b.Values));

    /// <inheritdoc/>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static EightLanes Max(EightLanes a, EightLanes b) => new(Vector512.Max(a.Values, b.Values));

    /// <inheritdoc/>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static EightLanes Abs(EightLanes a) => new(Vector512.Abs(a.Values));

    /// <inheritdoc/>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static EightLanes Sqrt(EightLanes a) => new(Vector512.Sqrt(a.Values));

    /// <inheritdoc/>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static EightLanes Exp(EightLanes a) => new(Vector512.Create(Vector256.Exp(a.Values.GetLower()), Vector256.Exp(a.Values.GetUpper())));

    /// <inheritdoc/>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static EightLanes Log(EightLanes a) => new(Vector512.Create(Vector256.Log(a.Values.GetLower()), Vector256.Log(a.Values.GetUpper())));

    /// <inheritdoc/>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static EightLanes IfPositive(EightLanes x, EightLanes then, EightLanes otherwise) =>
        new(Vector512.ConditionalSelect(Vector512.GreaterThan(x.Values, Vector512<double>.Zero), then.Values, otherwise.Values));
}
