using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace Cavaxis.Circulation.Lanes;

/// <summary>
/// One patient. Exponential and logarithm go through the same vector routines as <see cref="EightLanes"/>, so that a
/// patient computed alone and the same patient computed in a cohort differ in nothing.
/// </summary>
/// <param name="Value">The number.</param>
internal readonly record struct OneLane(double Value) : ILane<OneLane>
{
    /// <inheritdoc/>
    public static int Count => 1;

    /// <inheritdoc/>
    public double this[int lane] => Value;

    /// <inheritdoc/>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static OneLane operator +(OneLane a, OneLane b) => new(a.Value + b.Value);

    /// <inheritdoc/>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static OneLane operator -(OneLane a, OneLane b) => new(a.Value - b.Value);

    /// <inheritdoc/>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static OneLane operator *(OneLane a, OneLane b) => new(a.Value * b.Value);

    /// <inheritdoc/>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static OneLane operator /(OneLane a, OneLane b) => new(a.Value / b.Value);

    /// <inheritdoc/>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static OneLane operator -(OneLane a) => new(-a.Value);

    /// <inheritdoc/>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static OneLane Of(double value) => new(value);

    /// <inheritdoc/>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static OneLane Load(ReadOnlySpan<double> values) => new(values[0]);

    /// <inheritdoc/>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static OneLane Min(OneLane a, OneLane b) => new(Math.Min(a.Value, b.Value));

    /// <inheritdoc/>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static OneLane Max(OneLane a, OneLane b) => new(Math.Max(a.Value, b.Value));

    /// <inheritdoc/>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static OneLane Abs(OneLane a) => new(Math.Abs(a.Value));

    /// <inheritdoc/>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static OneLane Sqrt(OneLane a) => new(Math.Sqrt(a.Value));

    /// <inheritdoc/>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static OneLane Exp(OneLane a) => new(Vector128.Exp(Vector128.CreateScalar(a.Value)).ToScalar());

    /// <inheritdoc/>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static OneLane Log(OneLane a) => new(Vector128.Log(Vector128.CreateScalar(a.Value)).ToScalar());

    /// <inheritdoc/>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static OneLane IfPositive(OneLane x, OneLane then, OneLane otherwise) => x.Value > 0 ? then : otherwise;
}
